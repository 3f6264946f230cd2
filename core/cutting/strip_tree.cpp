// The cut tree of a strip choice: the slits first, then each strip by its table.

#include <algorithm>

#include "cutting/strip_search.h"
#include "cutting/strips.h"
#include "cutting/tree_builder.h"

namespace foldyard {

namespace {

// A strip that is cut for panels, where it lies from side to side.
struct CutSegment {
  Span span;
  const CutTable* table;
  int place;
  bool flip;
};

const CutTable* table_of(TableSet& tables, int plies, bool joint, bool end_to_end, std::int64_t copies) {
  return plies ? &tables.table({joint, end_to_end, copies * plies}) : nullptr;
}

// A strip of this size, used so; from its near rim, or for a right one its far rim.
void add_segment(std::vector<CutSegment>& segments, const CutTable* table, StripUse use, Length size,
                 int v, Length from, bool from_far) {
  if (!table || use == StripUse::none) return;
  const int floor = table->across().floor_index(size);
  const int place = use == StripUse::exact ? floor : table->best_place_across(floor, v);
  if (table->value(place, v) <= 0) return;
  const Length width = table->across()[place];
  const Span span = from_far ? Span{from - width, from} : Span{from, from + width};
  segments.push_back({span, table, place, from_far});
}

void mirror(std::vector<CutSegment>& segments, Length whole) {
  for (CutSegment& s : segments) {
    s.span = {whole - s.span.to, whole - s.span.from};
    s.flip = !s.flip;
  }
  std::reverse(segments.begin(), segments.end());
}

CutTree slit_and_fill(const std::vector<CutSegment>& segments, Rect whole, const TableSet& tables, int v) {
  TreeBuilder builder(&tables.shapes());
  int node = builder.add(whole);
  Length at;
  for (const CutSegment& s : segments) {
    if (s.span.from > at) node = builder.cut(node, Direction::along, s.span.from).second;
    int strip = node;
    if (s.span.to < whole.across.to)
      std::tie(strip, node) = builder.cut(node, Direction::along, s.span.to);
    builder.fill(strip, *s.table, s.place, v, s.flip);
    at = s.span.to;
  }
  return builder.take_tree();
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
  const Length height = tables.along(end_to_end)[v];
  std::vector<CutSegment> segments;
  add_segment(segments, table(shares.left_pairs, true), choice.left.use, choice.left.slit_at, v,
              Length(), false);
  add_segment(segments, table(shares.plies, false), choice.middle_use, at.middle, v, at.start, false);
  add_segment(segments, table(shares.right_pairs, true), choice.right.use, choice.right.slit_at, v,
              at.whole, true);
  if (layout.lies_mirrored()) mirror(segments, at.whole);
  return slit_and_fill(segments, {{Length(), at.whole}, {Length(), height}}, tables, v);
}

}  // namespace foldyard
