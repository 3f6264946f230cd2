// The cuts of a choice against its promise: what they cost, and what they give
// when the cloth is folded by walking along it.

#include <gtest/gtest.h>

#include <algorithm>

#include "core/support/lengths.h"
#include "core/support/small_cloth.h"
#include "core/support/way_title.h"

namespace foldyard {
namespace {

using test::kWorthFirst;
using test::SlowFold;
using test::SmallCase;
using test::units_of;

std::int64_t cost_of_cuts(const CutTree& tree) {
  std::int64_t cost = 0;
  for (const CutNode& node : tree.nodes) {
    if (node.kind != NodeKind::cut) continue;
    const Span over = node.direction == Direction::along ? node.rect.along : node.rect.across;
    cost += kWorthFirst.cut(units_of(over.size()));
  }
  return cost;
}

// Whether leg 0 is walked from the right: the folded cloth as named in the
// tree has the lowest leg unmirrored.
bool walks_from_right(const FoldWay& way) {
  const std::vector<int> levels = levels_of(way);
  return (std::find(levels.begin(), levels.end(), 0) - levels.begin()) % 2 == 1;
}

// How many panels of this size one taken rectangle gives.
int panels_of(const SlowFold& fold, const Rect& rect, Length across, Length along, bool flip,
              bool end_to_end) {
  const int size = fold.size();
  const int a = flip ? size - units_of(rect.across.to) : units_of(rect.across.from);
  const int b = flip ? size - units_of(rect.across.from) : units_of(rect.across.to);
  const bool joined_across = across == rect.across.size() * 2;
  const bool joined_along = along == rect.along.size() * 2;
  const int pairs = a == 0 ? fold.pairs(0, a, b) : b == size ? fold.pairs(size, a, b) : 0;
  const int plies_across = joined_across ? pairs : fold.loose(a, b);
  EXPECT_FALSE(joined_along && (rect.along.from != Length() || !end_to_end));
  return plies_across * (end_to_end && !joined_along ? 2 : 1);
}

std::int64_t gain_of_panels(const SmallCase& c, const FoldWay& way, const CutTree& tree,
                            const SlowFold& fold) {
  std::int64_t gain = 0;
  for (const CutNode& node : tree.nodes) {
    if (node.kind != NodeKind::take) continue;
    const Panel& p = c.panels[static_cast<std::size_t>(node.panel)];
    const Length across = node.turned ? p.along : p.across;
    const Length along = node.turned ? p.across : p.along;
    gain += p.worth.parts() *
            panels_of(fold, node.rect, across, along, walks_from_right(way), way.end_to_end);
  }
  return gain;
}

class EveryTree : public testing::TestWithParam<FoldWay> {
 protected:
  template <class Expect>
  void for_each_tree(Expect expect) {
    const FoldWay way = GetParam();
    const unsigned first = test::first_seed();
    for (unsigned seed = first; seed < first + 100; ++seed) {
      const SmallCase c = test::throw_small_case(seed, seed % 2 == 0, kWorthFirst);
      if (way.plain && !test::folds_evenly(c, way)) continue;
      SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(c));
      TableSet tables = test::tables_of(c, 1);
      const Layouts layouts = test::layouts_for(c, way, 1, tables);
      const auto choices = strip_choices(tables, layouts, way.end_to_end, 1);
      for (std::size_t v = 0; v < choices.size(); ++v) {
        if (!choices[v].layout) continue;
        SCOPED_TRACE("place along " + std::to_string(v));
        const CutTree tree =
            strip_tree(tables, choices[v], way.end_to_end, 1, static_cast<int>(v));
        expect(c, choices[v], tree);
        if (HasFailure()) return;
      }
    }
  }
};

TEST_P(EveryTree, CostsWhatTheChoiceSays) {
  for_each_tree([](const SmallCase&, const StripChoice& choice, const CutTree& tree) {
    EXPECT_EQ(cost_of_cuts(tree), choice.cell.cost);
  });
}

TEST_P(EveryTree, GivesAtLeastWhatTheChoiceSays) {
  for_each_tree([](const SmallCase& c, const StripChoice& choice, const CutTree& tree) {
    test::Lines lines;
    for (const Length line : choice.layout->lines(choice.left.size, choice.right.size))
      lines.push_back(units_of(line));
    // A ply that covers a panel but not the whole strip is a gift.
    EXPECT_GE(gain_of_panels(c, GetParam(), tree, SlowFold(c.cloth, lines)), choice.cell.gain);
  });
}

INSTANTIATE_TEST_SUITE_P(StripTree, EveryTree, testing::ValuesIn(all_ways(6)), test::way_title);

}  // namespace
}  // namespace foldyard
