#include "cutting/matched_strips.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"
#include "core/support/small_goods.h"
#include "core/support/way_title.h"
#include "cutting/strip_search.h"

namespace foldyard {
namespace {

using test::u;

struct Small {
  Fabric fabric;
  std::vector<Shape> shapes;
  int height = 0;
};

Small thrown_goods(test::Dice& dice) {
  Small s;
  s.fabric = {u(dice.from_to(16, 30)), u(dice.from_to(0, 2)), u(1), Nap::none, ""};
  s.shapes = test::shapes_with_worth(test::small_panels(dice, 3, 9, 9), Nap::none);
  s.height = dice.from_to(10, 16);
  return s;
}

std::vector<PhasedShape> without_phases(const std::vector<Shape>& shapes) {
  std::vector<PhasedShape> phased;
  for (const Shape& s : shapes) phased.push_back({s, {}, {}});
  return phased;
}

// Where nothing need match, every way and every length gains what the search for
// plain cloth gains: two searches that share neither tables nor places.
TEST(MatchedStrips, GainWhatPlainClothGainsWhereNothingNeedMatch) {
  test::Dice dice(test::first_seed());
  for (int round = 0; round < 60; ++round) {
    const Small s = thrown_goods(dice);
    TableSet plain(s.shapes, {}, {s.fabric.usable_width(), u(s.height), u(1)});
    MatchedLimits limits;
    limits.widest = s.fabric.usable_width();
    limits.tallest = u(s.height);
    limits.fold_trim = u(1);
    MatchedTables matched(without_phases(s.shapes), {}, limits);
    ASSERT_EQ(matched.least_flap(), plain.least_flap());
    for (const FoldWay& way : all_ways(5)) {
      const Layouts layouts = layouts_of(way, s.fabric, {u(1), plain.least_flap(), s.fabric.width});
      const auto choices = strip_choices(plain, layouts, way.end_to_end, 1);
      const PhaseAxis& along = matched.along(way.end_to_end);
      for (int v = 0; v < along.size(); ++v) {
        const int place = plain.along(way.end_to_end).index_of(along[v].size);
        ASSERT_GE(place, 0);
        const MatchedChoice choice = matched_choice(matched, layouts, way.end_to_end, 1, v);
        ASSERT_EQ(choice.cell.gain, choices[static_cast<std::size_t>(place)].cell.gain)
            << "round " << round << ", " << way_name(way) << ", " << along[v].size.units();
      }
    }
  }
}

// A tree covers its cloth: cuts divide, and what is taken adds up to the cell.
TEST(MatchedStrips, WriteATreeWhoseCutsAreThoseCounted) {
  test::Dice dice(test::first_seed());
  const Objective aim;
  for (int round = 0; round < 60; ++round) {
    const Small s = thrown_goods(dice);
    MatchedLimits limits;
    limits.widest = s.fabric.usable_width();
    limits.tallest = u(s.height);
    limits.fold_trim = u(1);
    MatchedTables matched(without_phases(s.shapes), aim, limits);
    for (const FoldWay& way : all_ways(5)) {
      const Layouts layouts = layouts_of(way, s.fabric, {u(1), matched.least_flap(), s.fabric.width});
      const PhaseAxis& along = matched.along(way.end_to_end);
      for (int v = 0; v < along.size(); v += 3) {
        const MatchedChoice choice = matched_choice(matched, layouts, way.end_to_end, 1, v);
        if (!choice.layout) continue;
        std::int64_t cost = 0;
        for (const CutNode& node : matched_tree(matched, choice, way.end_to_end, 1, v).nodes)
          if (node.kind == NodeKind::cut) {
            const bool upright = node.direction == Direction::along;
            cost += aim.cut((upright ? node.rect.along : node.rect.across).size().units());
          }
        ASSERT_EQ(cost, choice.cell.cost) << "round " << round << ", " << way_name(way);
      }
    }
  }
}

}  // namespace
}  // namespace foldyard
