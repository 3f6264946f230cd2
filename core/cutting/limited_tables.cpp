#include "cutting/limited_tables.h"

#include <algorithm>

#include "cutting/limited_rows.h"

namespace foldyard::limited {

namespace {

using Row = std::vector<std::int32_t>;

// Lets every place of the row begin with a part of this width and gain, any
// number of times; in blocks no longer than the part, which do not overlap.
void chain(Row& row, int width, std::int32_t gain) {
  const int n = static_cast<int>(row.size());
  for (int start = width; start < n; start += width)
    raise_to(&row[start], &row[start - width], gain, std::min(width, n - start));
}

void make_rising(Row& row) {
  for (std::size_t i = 1; i < row.size(); ++i) row[i] = std::max(row[i], row[i - 1]);
}

}  // namespace

std::int64_t Prices::given_back(const Cloth& cloth) const {
  std::int64_t sum = 0;
  for (std::size_t p = 0; p < panel.size(); ++p) sum += panel[p] * cloth.limits[p];
  return sum;
}

InsideTable::InsideTable(const Cloth& cloth, const Prices& prices, Stop stop)
    : cloth_(cloth), prices_(prices), stop_(stop) {
  rows_[kLoose].assign(cloth.along.count(), Row(cloth.width + 1, 0));
  if (cloth.root == kJoint) rows_[kJoint] = rows_[kLoose];
  for (int row = 0; row < cloth.along.count(); ++row) {
    fill_loose(row);
    if (cloth.root == kJoint) fill_joint(row);
    if (is_set(stop_)) return;
  }
  finished_ = true;
}

// What the row below has, the shapes of this very height, and two rows stacked.
void InsideTable::start_row(Rim rim, int row) {
  Row& r = rows_[rim][row];
  if (row > 0) r = rows_[rim][row - 1];
  const int height = cloth_.along.list[row];
  for (const UnitShape& s : cloth_.shapes)
    if (s.rim == rim && s.along == height)
      r[s.across] = std::max(r[s.across], static_cast<std::int32_t>(prices_.priced(s)));
  for (int low = 0; low < row && 2 * cloth_.along.list[low] <= height; ++low) {
    if (low % kRowsBetweenLooks == 0 && is_set(stop_)) return;
    const int high = cloth_.along.floor[height - cloth_.along.list[low]];
    if (high >= 0)
      raise_to_sum(r.data(), rows_[rim][low].data(), rows_[rim][high].data(), cloth_.width + 1);
  }
  make_rising(r);
}

void InsideTable::fill_loose(int row) {
  start_row(kLoose, row);
  Row& r = rows_[kLoose][row];
  std::int32_t before = 0;  // the most of narrower places, chained
  for (int width : cloth_.across[kLoose].list) {
    if (r[width] > before) chain(r, width, r[width]);
    before = std::max(before, r[width]);
  }
  make_rising(r);
}

void InsideTable::fill_joint(int row) {
  start_row(kJoint, row);
  Row& r = rows_[kJoint][row];
  const Row& loose = rows_[kLoose][row];
  const Row first = r;
  std::int32_t before = -1;
  for (int width : cloth_.across[kJoint].list) {
    if (first[width] <= before) continue;
    raise_to(&r[width], loose.data(), first[width], cloth_.width + 1 - width);
    before = first[width];
  }
  make_rising(r);
}

namespace {

struct Open {
  Rim rim;
  int width;
  int height;
};

}  // namespace

std::vector<std::int64_t> InsideTable::copies_used() const {
  std::vector<std::int64_t> used(cloth_.limits.size(), 0);
  std::vector<Open> open{{cloth_.root, cloth_.width, cloth_.height}};
  const auto take = [&](const Open& o, std::int32_t gain) {
    for (const UnitShape& s : cloth_.shapes)
      if (s.rim == o.rim && s.across <= o.width && s.along <= o.height && prices_.priced(s) == gain)
        return used[s.panel] += s.uses, true;
    return false;
  };
  const auto part = [&](Open low, Open high, std::int32_t gain) {
    if (most(low.rim, low.width, low.height) + most(high.rim, high.width, high.height) != gain)
      return false;
    open.push_back(low);
    open.push_back(high);
    return true;
  };
  const auto part_anywhere = [&](const Open& o, std::int32_t gain) {
    for (int x : cloth_.across[o.rim].list)
      if (x < o.width && part({o.rim, x, o.height}, {kLoose, o.width - x, o.height}, gain)) return;
    for (int y : cloth_.along.list)
      if (y < o.height && part({o.rim, o.width, y}, {o.rim, o.width, o.height - y}, gain)) return;
  };
  while (!open.empty()) {
    Open o = open.back();
    open.pop_back();
    const int x = cloth_.across[o.rim].floor[o.width], y = cloth_.along.floor[o.height];
    if (x < 0 || y < 0) continue;
    o.width = cloth_.across[o.rim].list[x];
    o.height = cloth_.along.list[y];
    const std::int32_t gain = most(o.rim, o.width, o.height);
    if (gain > 0 && !take(o, gain)) part_anywhere(o, gain);
  }
  return used;
}

AroundTable::AroundTable(const Cloth& cloth, const InsideTable& inside, Stop stop)
    : cloth_(cloth), inside_(inside), stop_(stop) {
  rows_[kLoose].assign(cloth.along.count(), Row(cloth.width + 1, kNever));
  if (cloth.root == kJoint) {
    rows_[kJoint] = rows_[kLoose];
    fill(kJoint);
  }
  fill(kLoose);
  finished_ = !is_set(stop_);
}

// From the largest build down: nothing more; or as a larger build of the same
// kind; or with something beside, above, or (loose) between it and the joint.
void AroundTable::fill(Rim rim) {
  for (int y = cloth_.along.count() - 1; y >= 0 && !is_set(stop_); --y) {
    start_row(rim, y);
    Row& row = rows_[rim][y];
    const std::vector<int>& widths = cloth_.across[rim].list;
    for (int x = static_cast<int>(widths.size()) - 1; x >= 0; --x) {
      if (x % kRowsBetweenLooks == 0 && is_set(stop_)) return;
      const int next = x + 1 < static_cast<int>(widths.size()) ? widths[x + 1] : -1;
      std::int32_t best = std::max(row[widths[x]], beside(rim, widths[x], y));
      if (next >= 0) best = std::max(best, row[next]);
      if (rim != cloth_.root) best = std::max(best, joined(widths[x], y));
      std::fill(row.begin() + (x > 0 ? widths[x - 1] + 1 : 0), row.begin() + widths[x] + 1, best);
    }
  }
}

// What the row above has, and anything stacked on top.
void AroundTable::start_row(Rim rim, int y) {
  Row& row = rows_[rim][y];
  const int ny = cloth_.along.count();
  const std::vector<int>& widths = cloth_.across[rim].list;
  if (rim == cloth_.root && !widths.empty()) std::fill(row.begin(), row.begin() + widths.back() + 1, 0);
  if (y + 1 < ny) raise_to(row.data(), rows_[rim][y + 1].data(), 0, cloth_.width + 1);
  for (int more = 0; more < ny; ++more) {
    if (more % kRowsBetweenLooks == 0 && is_set(stop_)) return;
    const int place = cloth_.along.ceil(cloth_.along.list[y] + cloth_.along.list[more]);
    if (place < 0) break;
    raise_to_sum(row.data(), inside_.row(rim, more).data(), rows_[rim][place].data(), cloth_.width + 1);
  }
}

std::int32_t AroundTable::beside(Rim rim, int width, int y) const {
  return most_of_sum(inside_.row(kLoose, y).data() + 1, rows_[rim][y].data() + width + 1, cloth_.width - width);
}

// A loose build with a build at the joint on its left, or with the fold opened.
std::int32_t AroundTable::joined(int width, int y) const {
  const Row &joint = inside_.row(kJoint, y), &wider = rows_[kJoint][y];
  std::int32_t best = kNever;
  for (int left : cloth_.across[kJoint].list) {
    if (left + width > cloth_.width) break;
    best = std::max(best, joint[left] + wider[left + width]);
  }
  return best;
}

}  // namespace foldyard::limited
