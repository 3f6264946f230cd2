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
  if (!table) return {{size, Strip{}}};
  const int x = table->across().floor_index(size);
  if (x < 0) return {{size, Strip{}}};
  std::vector<Sized> list{{size, narrower_strip(*table, x, v)}};
  if (table->across()[x] == size) list.push_back({size, exact_strip(*table, x, v)});
  return list;
}

int slits(const StripsAt& at, const Strip& left, const Strip& middle, Length middle_size,
          const Strip& right) {
  const Length whole = at.layout->folded(at.left, at.right);
  int count = 0;
  if (left.is_used() && !(left.exact && at.left == whole)) ++count;
  if (right.is_used()) ++count;
  if (middle.is_used()) {
    const Length start = at.layout->middle_start(at.left);
    const Length end = start + middle_size;
    if (start > Length() && !(left.is_used() && left.exact && start == at.left)) ++count;
    const bool shared = right.is_used() && right.exact && end == whole - at.right;
    if (end < whole && !shared) ++count;
  }
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
