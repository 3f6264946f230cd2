#include "cutting/strip_search.h"

#include "cutting/row_ops.h"
#include "cutting/strip_positions.h"

namespace foldyard {

namespace {

// One layout, with the columns that its strips are made of.
template <class V>
class Positions {
 public:
  Positions(TableSet& tables, const FoldLayout& layout, bool end_to_end, std::int64_t copies)
      : layout_(layout), left_(source(tables, layout.shares().left_pairs, true, end_to_end, copies)),
        middle_(source(tables, layout.shares().plies, false, end_to_end, copies)),
        right_(source(tables, layout.shares().right_pairs, true, end_to_end, copies)),
        lefts_(left_, tables.fold_trim(), layout.goes_under_left()),
        rights_(right_, tables.fold_trim(), layout.goes_under_right()) {}

  // visit(at, use of the middle, columns of the three; null where not used)
  template <class Visit>
  void visit_all(Visit visit) const {
    visit_positions(layout_, lefts_, rights_,
                    [&](const StripsAt& at, const StripOption<V>& left, const StripOption<V>& right) {
      const int x = middle_.floor(at.middle);
      if (x < 0) return visit(at, StripUse::none, left.column, nullptr, right.column);
      visit(at, StripUse::narrower, left.column, middle_.columns->upto(x), right.column);
      if ((*middle_.places)[x] == at.middle)
        visit(at, StripUse::exact, left.column, middle_.columns->exact(x), right.column);
      visit(at, StripUse::none, left.column, nullptr, right.column);
    });
  }

 private:
  static StripSource<V> source(TableSet& tables, int plies, bool joint, bool end_to_end,
                               std::int64_t copies) {
    if (plies == 0) return {};
    return {&tables.across(joint), &tables.columns<V>({joint, end_to_end, copies}, plies)};
  }

  const FoldLayout& layout_;
  StripSource<V> left_, middle_, right_;
  StripOptions<V> lefts_, rights_;
};

constexpr int kMostSlits = 4;

// Adds strips up at all lengths at once.
template <class V>
class Adder {
 public:
  Adder(const TableSet& tables, bool end_to_end, std::vector<V>& best)
      : best_(best), none_(best.size(), 0) {
    for (const int v : tables.lengths(end_to_end))
      slit_.push_back(tables.packing().cut<V>(tables.along(end_to_end)[v]));
  }

  void add(const V* left, const V* middle, const V* right, int slits) {
    const V* low = with_slits(left ? left : none_.data(), slits);
    rows::raise_to_sum(best_.data(), low, middle ? middle : none_.data(), right ? right : none_.data(),
                       static_cast<int>(best_.size()));
  }

 private:
  // The left column less so many slits; kept while the left strip stays.
  const V* with_slits(const V* left, int slits) {
    if (left != left_) {
      left_ = left;
      for (std::vector<V>& column : less_) column.clear();
    }
    std::vector<V>& column = less_[slits];
    if (column.empty())
      for (std::size_t i = 0; i < best_.size(); ++i) column.push_back(left[i] - slits * slit_[i]);
    return column.data();
  }

  std::vector<V>& best_;
  std::vector<V> none_, slit_;
  const V* left_ = nullptr;
  std::vector<V> less_[kMostSlits + 1];
};

}  // namespace

StripSearch::StripSearch(TableSet& tables, const Layouts& layouts, bool end_to_end, std::int64_t copies)
    : tables_(tables), layouts_(layouts), end_to_end_(end_to_end), copies_(copies),
      cells_(tables.along(end_to_end).size()) {
  if (tables.lengths(end_to_end).empty()) return;
  tables.packing().is_wide() ? search<Wide>() : search<std::int64_t>();
  const std::vector<int>& lengths = tables.lengths(end_to_end);
  const bool worth_first = tables.aim().worth_first;
  for (std::size_t i = 0; i < lengths.size(); ++i)
    cells_[lengths[i]] = worth_first ? tables.packing().unpack(values_[i])
                                     : Cell{static_cast<std::int64_t>(values_[i]), 0};
}

template <class V>
void StripSearch::search() {
  std::vector<V> best(tables_.lengths(end_to_end_).size(), 0);
  Adder<V> adder(tables_, end_to_end_, best);
  for (const auto& layout : layouts_) {
    if (tables_.is_cancelled()) break;
    const Positions<V> positions(tables_, *layout, end_to_end_, copies_);
    if (tables_.is_cancelled()) break;  // its tables may be unfinished, and reading them takes long
    positions.visit_all([&](const StripsAt& at, StripUse middle, const V* a, const V* b, const V* c) {
      if (!tables_.is_cancelled()) adder.add(a, b, c, at.slits(middle));
    });
  }
  values_.assign(best.begin(), best.end());
}

StripChoice StripSearch::choice(int v) const {
  if (cells_[v].gain <= 0) return {};
  return tables_.packing().is_wide() ? find<Wide>(v) : find<std::int64_t>(v);
}

// The first position that gives what is best at v.
template <class V>
StripChoice StripSearch::find(int v) const {
  const std::vector<int>& lengths = tables_.lengths(end_to_end_);
  const std::size_t i = std::lower_bound(lengths.begin(), lengths.end(), v) - lengths.begin();
  const V wanted = static_cast<V>(values_[i]);
  const V slit = tables_.packing().cut<V>(tables_.along(end_to_end_)[v]);
  StripChoice found;
  for (const auto& layout : layouts_) {
    const Positions<V> positions(tables_, *layout, end_to_end_, copies_);
    positions.visit_all([&](const StripsAt& at, StripUse middle, const V* a, const V* b, const V* c) {
      if (found.layout) return;
      const V sum = (a ? a[i] : 0) + (b ? b[i] : 0) + (c ? c[i] : 0) - slit * at.slits(middle);
      if (sum == wanted) found = {layout.get(), at.left, at.right, middle, cells_[v]};
    });
    if (found.layout) break;
  }
  return found;
}

std::vector<StripChoice> strip_choices(TableSet& tables, const Layouts& layouts, bool end_to_end,
                                       std::int64_t copies) {
  const StripSearch search(tables, layouts, end_to_end, copies);
  std::vector<StripChoice> choices;
  for (int v = 0; v < tables.along(end_to_end).size(); ++v) choices.push_back(search.choice(v));
  return choices;
}

}  // namespace foldyard
