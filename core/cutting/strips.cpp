#include "cutting/strips.h"

namespace foldyard {

StripTables strip_tables(TableSet& tables, const FoldLayout::Shares& shares, bool end_to_end,
                         std::int64_t copies) {
  StripTables result;
  if (shares.left_pairs) result.left = &tables.table({true, end_to_end, copies * shares.left_pairs});
  if (shares.plies) result.middle = &tables.table({false, end_to_end, copies * shares.plies});
  if (shares.right_pairs)
    result.right = &tables.table({true, end_to_end, copies * shares.right_pairs});
  return result;
}

std::vector<Sized> forced_strips(const CutTable* table, Length size, int v) {
  const int x = table ? table->across().floor_index(size) : -1;
  if (x < 0) return {{size, size, Strip{}}};
  std::vector<Sized> list{{size, size, narrower_strip(*table, x, v)}};
  if (table->across()[x] == size) list.push_back({size, size, exact_strip(*table, x, v)});
  return list;
}

StripsAt::StripsAt(const FoldLayout& l, const Sized& left, const Sized& right, std::int64_t cost)
    : layout(&l), left_slit(left.slit_at), right_slit(right.slit_at),
      whole(l.folded(left.size, right.size)), start(l.middle_start(left.size)),
      middle(l.middle(left.size, right.size)), slit(cost) {
  if (l.goes_under_left()) {
    start = left.slit_at;
    middle += left.size - left.slit_at;
  }
  if (l.goes_under_right()) middle += right.size - right.slit_at;
}

int slits(const StripsAt& at, const Strip& left, const Strip& middle, Length middle_size,
          const Strip& right) {
  const bool left_ends_at_slit = left.is_used() && left.exact;
  const bool right_ends_at_slit = right.is_used() && right.exact;
  const bool meet = left_ends_at_slit && right_ends_at_slit && at.left_slit + at.right_slit == at.whole;
  int count = 0;
  if (left.is_used() && !(left.exact && at.left_slit == at.whole)) ++count;
  if (right.is_used() && !meet) ++count;
  if (!middle.is_used()) return count;
  const Length end = at.start + middle_size;
  if (at.start > Length() && !(left_ends_at_slit && at.start == at.left_slit)) ++count;
  if (end < at.whole && !(right_ends_at_slit && end == at.whole - at.right_slit)) ++count;
  return count;
}

Cell total(const StripsAt& at, const Strip& left, const Strip& middle, Length middle_size,
           const Strip& right) {
  const FoldLayout::Shares& s = at.layout->shares();
  return {left.cell.gain * s.left_pairs + middle.cell.gain * s.plies +
              right.cell.gain * s.right_pairs,
          left.cell.cost + middle.cell.cost + right.cell.cost +
              at.slit * slits(at, left, middle, middle_size, right)};
}

}  // namespace foldyard
