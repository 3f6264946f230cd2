#include "cutting/limited_grown.h"

namespace foldyard::limited {

GrownBuilds::GrownBuilds(const Cloth& cloth, const Counting& counting) : cloth_(cloth), counting_(counting) {
  rows_[kLoose].resize(cloth.along.count());
  if (cloth.root == kJoint) rows_[kJoint].resize(cloth.along.count());
}

void GrownBuilds::add(const Build& b, int index) {
  Row& row = rows_[b.rim][cloth_.along.index[b.height]];
  if (row.most.empty()) {
    row.most.assign(cloth_.width + 1, AroundTable::kNever);
    row.class_at.assign(cloth_.width + 1, -1);
  }
  int& at = row.class_at[b.width];
  if (at < 0) {
    at = static_cast<int>(classes_.size());
    classes_.push_back({b.width, b.height, b.rim, 0, {}, {}});
  }
  SizeClass& k = classes_[at];
  const auto place = std::upper_bound(k.builds.begin(), k.builds.end(), b.priced,
                                      [](std::int64_t priced, const auto& e) { return priced > e.priced; });
  const auto words = (place - k.builds.begin()) * counting_.words();
  k.builds.insert(place, {b.priced, b.gain, index});
  k.copies.insert(k.copies.begin() + words, b.copies.begin(), b.copies.begin() + counting_.words());
  k.most_gain = std::max(k.most_gain, b.gain);
  row.most[b.width] = static_cast<std::int32_t>(k.builds.front().priced);
}

bool GrownBuilds::is_covered(const Build& b) const {
  const Row* row = this->row(b.rim, cloth_.along.index[b.height]);
  const int at = row ? row->class_at[b.width] : -1;
  if (at < 0) return false;
  const SizeClass& k = classes_[at];
  const std::uint64_t* copies = k.copies.data();
  for (const SizeClass::Entry& e : k.builds) {
    if (e.priced < b.priced) return false;
    if (counting_.covers(copies, b.copies.data())) return true;
    copies += counting_.words();
  }
  return false;
}

}  // namespace foldyard::limited
