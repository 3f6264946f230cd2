// The cut tree of a strip choice: the slits first, then each strip by its table.

#include "cutting/laid_strips.h"
#include "cutting/strip_search.h"
#include "cutting/strips.h"

namespace foldyard {

namespace {

const CutTable* table_of(TableSet& tables, int plies, bool joint, bool end_to_end, std::int64_t copies) {
  return plies ? &tables.table({joint, end_to_end, copies * plies}) : nullptr;
}

// A strip of this size, used so; from its near rim, or for a right one its far rim.
void add_strip(LaidStrips& strips, const CutTable* table, StripUse use, Length size, int v, Length from,
               bool from_far) {
  if (!table || use == StripUse::none) return;
  const int floor = table->across().floor_index(size);
  const int place = use == StripUse::exact ? floor : table->best_place_across(floor, v);
  if (table->value(place, v) <= 0) return;
  strips.add(from, table->across()[place], from_far,
             [=](TreeBuilder& builder, int node, bool flip) { builder.fill(node, *table, place, v, flip); });
}

}  // namespace

CutTree strip_tree(TableSet& tables, const StripChoice& choice, bool end_to_end,
                   std::int64_t copies, int v) {
  const FoldLayout& layout = *choice.layout;
  const FoldLayout::Shares& shares = layout.shares();
  const auto table = [&](int plies, bool joint) {
    return table_of(tables, plies, joint, end_to_end, copies);
  };
  const StripsAt at(layout, choice.left, choice.right);
  LaidStrips strips(at.whole);
  add_strip(strips, table(shares.left_pairs, true), choice.left.use, choice.left.slit_at, v, Length(), false);
  add_strip(strips, table(shares.plies, false), choice.middle_use, at.middle, v, at.start, false);
  add_strip(strips, table(shares.right_pairs, true), choice.right.use, choice.right.slit_at, v, at.whole, true);
  if (layout.lies_mirrored()) strips.mirror();
  return strips.tree(tables.along(end_to_end)[v], TreeBuilder(&tables.shapes()));
}

}  // namespace foldyard
