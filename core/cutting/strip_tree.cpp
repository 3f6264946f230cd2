// The cut tree of a strip choice: the slits first, then each strip by its table.

#include <algorithm>

#include "cutting/strip_search.h"
#include "cutting/strips.h"
#include "cutting/tree_builder.h"

namespace foldyard {

namespace {

// A strip that is cut for panels, where it lies from side to side.
struct Segment {
  Span span;
  const CutTable* table;
  int place;
  bool flip;
};

struct Three {
  Strip left, middle, right;
  Length middle_start;
};

// The ways a strip may be that the folds size and that is slit there.
std::vector<Sized> slit_strips(const CutTable* table, Length size, Length slit_at, int v) {
  std::vector<Sized> list = forced_strips(table, slit_at, v);
  for (Sized& s : list) s.size = size;
  if (size != slit_at) list.push_back({size, slit_at, Strip{}});
  return list;
}

// The strips whose total is the choice's cell: the search's own combinations.
Three strips_of(const StripTables& tables, const StripChoice& choice, std::int64_t slit, int v) {
  for (const Sized& left : slit_strips(tables.left, choice.left, choice.left_slit, v))
    for (const Sized& right : slit_strips(tables.right, choice.right, choice.right_slit, v)) {
      const StripsAt at(*choice.layout, left, right, slit);
      for (const Sized& middle : forced_strips(tables.middle, at.middle, v)) {
        const Length size = middle.strip.exact ? middle.size : middle.size - Length::units(1);
        if (total(at, left.strip, middle.strip, size, right.strip) == choice.cell)
          return {left.strip, middle.strip, right.strip, at.start};
      }
    }
  return {};
}

// The place whose cell a strip stands for.
int place_of(const CutTable& table, const Strip& strip, int v) {
  if (strip.exact) return strip.place;
  int place = 0;
  while (!(table.at(place, v) == strip.cell)) ++place;
  return place;
}

void add_segment(std::vector<Segment>& segments, const CutTable* table, const Strip& strip, int v,
                 Length from, bool from_far) {
  if (!table || !strip.is_used()) return;
  const int place = place_of(*table, strip, v);
  const Length size = table->across()[place];
  const Span span = from_far ? Span{from - size, from} : Span{from, from + size};
  segments.push_back({span, table, place, from_far});
}

void mirror(std::vector<Segment>& segments, Length whole) {
  for (Segment& s : segments) {
    s.span = {whole - s.span.to, whole - s.span.from};
    s.flip = !s.flip;
  }
  std::reverse(segments.begin(), segments.end());
}

CutTree slit_and_fill(const std::vector<Segment>& segments, Rect whole, const TableSet& tables, int v) {
  TreeBuilder builder(&tables.shapes());
  int node = builder.add(whole);
  Length at;
  for (const Segment& s : segments) {
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
  const StripTables three = strip_tables(tables, layout.shares(), end_to_end, copies);
  const Length height = tables.along(end_to_end)[v];
  const Three strips = strips_of(three, choice, tables.aim().cut(height.units()), v);
  const Length whole = layout.folded(choice.left, choice.right);
  std::vector<Segment> segments;
  add_segment(segments, three.left, strips.left, v, Length(), false);
  add_segment(segments, three.middle, strips.middle, v, strips.middle_start, false);
  add_segment(segments, three.right, strips.right, v, whole, true);
  if (layout.lies_mirrored()) mirror(segments, whole);
  return slit_and_fill(segments, {{Length(), whole}, {Length(), height}}, tables, v);
}

}  // namespace foldyard
