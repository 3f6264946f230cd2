// What must hold for cloth folded anywhere, and between folded and open cloth.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <numeric>

#include "cutting/strip_search.h"
#include "fold/fold_map.h"
#include "laws/any_job.h"

namespace foldyard {
namespace {

using test::any_size;

// Cloth folded at any lines in any order of its legs.
struct AnyFold {
  Length width;
  std::vector<Length> lines;
  std::vector<int> levels;

  AxisMap map() const { return AxisMap(width, lines, levels); }
  AnyFold mirrored() const {
    AnyFold other{width, {}, {levels.rbegin(), levels.rend()}};
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) other.lines.push_back(width - *line);
    return other;
  }
};

AnyFold any_fold() {
  AnyFold fold;
  int at = 0;
  for (int n = *rc::gen::inRange(0, 6); n > 0; --n)
    fold.lines.push_back(Length::units(at += *rc::gen::inRange(1, 50)));
  fold.width = Length::units(at + *rc::gen::inRange(1, 50));
  std::vector<int> levels(fold.lines.size() + 1);
  std::iota(levels.begin(), levels.end(), 0);
  for (std::size_t i = levels.size(); i > 1; --i)
    std::swap(levels[i - 1], levels[*rc::gen::inRange<std::size_t>(0, i)]);
  fold.levels = levels;
  return fold;
}

// The folded axis in up to five spans.
std::vector<Span> any_partition(Length size) {
  std::vector<Length> ends{Length(), size};
  for (int n = *rc::gen::inRange(0, 5); n > 0; --n)
    ends.push_back(Length::units(*rc::gen::inRange<std::int64_t>(0, size.units() + 1)));
  std::sort(ends.begin(), ends.end());
  std::vector<Span> spans;
  for (std::size_t i = 1; i < ends.size(); ++i) spans.push_back({ends[i - 1], ends[i]});
  return spans;
}

std::vector<Span> sorted(std::vector<Span> spans) {
  std::sort(spans.begin(), spans.end(), [](Span a, Span b) { return a.from < b.from; });
  return spans;
}

RC_GTEST_PROP(Unfolding, CoversTheClothOnce, ()) {
  const AnyFold fold = any_fold();
  const AxisMap map = fold.map();
  std::vector<Span> all;
  for (const Span span : any_partition(map.folded_size())) {
    const std::vector<Span> places = map.places_of(span);
    all.insert(all.end(), places.begin(), places.end());
  }
  Length end;
  for (const Span place : sorted(all)) {
    RC_ASSERT(place.from == end);
    end = place.to;
  }
  RC_ASSERT(end == fold.width);
}

RC_GTEST_PROP(Unfolding, FindsEveryPlaceWhereItWasFolded, ()) {
  const AnyFold fold = any_fold();
  const AxisMap map = fold.map();
  const Length x = Length::units(*rc::gen::inRange<std::int64_t>(0, fold.width.units() + 1));
  const Length u = map.fold(x);
  RC_ASSERT(Length() <= u);
  RC_ASSERT(u <= map.folded_size());
  for (const Span span : any_partition(map.folded_size())) {
    const auto places = map.places_of(span);
    const bool found = std::any_of(places.begin(), places.end(),
                                   [&](Span p) { return p.from <= x && x <= p.to; });
    if (span.from < u && u < span.to) RC_ASSERT(found);
    if (u < span.from || span.to < u) RC_ASSERT(!found);
  }
}

RC_GTEST_PROP(MirroredCloth, GivesTheSameFromEveryFoldedStrip, ()) {
  const AnyFold fold = any_fold();
  const AxisMap map = fold.map(), other = fold.mirrored().map();
  RC_ASSERT(map.folded_size() == other.folded_size());
  for (const Span span : any_partition(map.folded_size())) {
    std::vector<Span> mirrored;
    for (const Span p : map.places_of(span)) mirrored.push_back({fold.width - p.to, fold.width - p.from});
    const Span there{map.folded_size() - span.to, map.folded_size() - span.from};
    RC_ASSERT(sorted(mirrored) == other.places_of(there));
  }
}

// The most gain of one length of at most `height` flat, from choices in
// ascending order of height.
std::int64_t most_up_to(const Grid& heights, const std::vector<StripChoice>& choices, Length height) {
  std::int64_t most = 0;
  for (int v = 0; v < heights.size() && heights[v] <= height; ++v)
    most = std::max(most, choices[static_cast<std::size_t>(v)].cell.gain);
  return most;
}

RC_GTEST_PROP(OpenCloth, GivesNoLessThanTheSameLengthFolded, ()) {
  const Job job = *test::any_job();
  const Fabric& fabric = job.rolls[0].fabric;
  std::vector<Shape> shapes = shapes_of(job.panels, fabric);
  for (Shape& s : shapes) s.gain = job.panels[static_cast<std::size_t>(s.panel)].worth.parts();
  const TableLimits limits{fabric.usable_width(), job.table.length, job.losses.fold_trim};
  TableSet tables(shapes, {}, limits);
  const FoldLimits fold_limits{tables.fold_trim(), tables.least_flap(), fabric.width};
  const auto open = strip_choices(tables, layouts_of({}, fabric, fold_limits), false, 1);
  for (const FoldWay& way : all_ways(6)) {
    RC_LOG() << way_key(way) << "\n";
    const auto folded =
        strip_choices(tables, layouts_of(way, fabric, fold_limits), way.end_to_end, 1);
    const Grid& heights = tables.along(way.end_to_end);
    for (int v = 0; v < heights.size(); ++v) {
      const Length flat = heights[v] * (way.end_to_end ? 2 : 1);
      if (flat > job.table.length) break;
      RC_ASSERT(folded[static_cast<std::size_t>(v)].cell.gain <=
                most_up_to(tables.along(false), open, flat));
    }
  }
}

}  // namespace
}  // namespace foldyard
