#pragma once

// All positions that the strips of one layout may have, as columns to add up.
// Internal to the strip search.
//
// visit_positions calls visit(StripsAt, left, right) for each left and right
// strip that fit, with the columns of what they give.

#include <algorithm>

#include "cutting/strip_columns.h"
#include "cutting/strips.h"

namespace foldyard {

// What a kind of strip may give; null where the layout has none.
template <class V>
struct StripSource {
  const Grid* places = nullptr;
  const StripColumns<V>* columns = nullptr;
  int floor(Length size) const { return places ? places->floor_index(size) : -1; }
};

template <class V>
struct StripOption {
  SizedStrip strip;
  const V* column = nullptr;  // null: not used
};

template <class V>
class StripOptions {
 public:
  StripOptions(const StripSource<V>& source, Length trim, bool goes_under)
      : source_(source), trim_(trim), goes_under_(goes_under) {
    if (!source.places) return;
    for (int x = 0; x < source.places->size(); ++x)
      if (const V* column = source.columns->full(x)) {
        const Length size = (*source.places)[x];
        full_.push_back({{size, size, StripUse::exact}, column});
      }
  }

  // For a strip between these sizes.
  template <class Visit>
  void visit(SizeRange range, Visit visit_one) const {
    goes_under_ ? visit_least_under(range.least, visit_one) : visit_least(range.least, visit_one);
    for (const StripOption<V>& full : full_)
      if (range.least < full.strip.size && full.strip.size <= range.most) visit_one(full);
  }

 private:
  template <class Visit>
  void visit_least(Length least, Visit visit_one) const {
    visit_one({{least, least, StripUse::none}, nullptr});
    const int x = source_.floor(least);
    if (x < 0) return;
    visit_one({{least, least, StripUse::narrower}, source_.columns->upto(x)});
    if ((*source_.places)[x] == least)
      visit_one({{least, least, StripUse::exact}, source_.columns->exact(x)});
  }

  // Where the middle goes on under a strip of the least size, that may be slit at
  // any place, or only to open the fold; a larger one never so, as then the fold
  // might lie nearer.
  template <class Visit>
  void visit_least_under(Length least, Visit visit_one) const {
    visit_one({{least, std::min(trim_, least), StripUse::none}, nullptr});
    for (const StripOption<V>& full : full_)
      if (full.strip.size <= least)
        visit_one({{least, full.strip.size, StripUse::exact}, full.column});
  }

  StripSource<V> source_;
  Length trim_;
  bool goes_under_;
  std::vector<StripOption<V>> full_;
};

template <class V, class Visit>
void visit_positions(const FoldLayout& layout, const StripOptions<V>& lefts, const StripOptions<V>& rights,
                     Visit visit) {
  const SizeRange left_range = layout.left();
  if (left_range.most < left_range.least) return;
  lefts.visit(left_range, [&](const StripOption<V>& left) {
    const SizeRange right_range = layout.right(left.strip.size);
    if (right_range.most < right_range.least) return;
    rights.visit(right_range, [&](const StripOption<V>& right) {
      const StripsAt at(layout, left.strip, right.strip);
      if (at.middle >= Length()) visit(at, left, right);
    });
  });
}

}  // namespace foldyard
