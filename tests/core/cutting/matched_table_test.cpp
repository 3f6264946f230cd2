#include "cutting/matched_table.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

#include "core/support/dice.h"
#include "core/support/lengths.h"
#include "core/support/slow_matched.h"

namespace foldyard {
namespace {

using test::u;

struct Cloth {
  int repeat_across = 0, repeat_along = 0, first = 0;
  int width = 0, height = 0;
  std::vector<PhasedShape> shapes;
};

PhasedShape shape(int across, int along, Match match, const Cloth& cloth, std::int64_t gain) {
  const int number = static_cast<int>(cloth.shapes.size());
  return {{u(across), u(along), number, false, true, gain},
          matched_phase(match, u(across), u(cloth.repeat_across)),
          matched_phase(match, u(along), u(cloth.repeat_along))};
}

struct Axes {
  PhaseAxis across, along;
};

Axes axes_of(const Cloth& c) {
  std::vector<PhasedSize> across, along;
  for (const PhasedShape& s : c.shapes) {
    across.push_back({s.shape.across, s.across});
    along.push_back({s.shape.along, s.along});
  }
  return {PhaseAxis(u(c.repeat_across), c.repeat_across ? std::optional(u(c.first)) : std::nullopt,
                    across, u(c.width)),
          PhaseAxis(u(c.repeat_along), std::nullopt, along, u(c.height))};
}

int as_number(const std::optional<Length>& phase) {
  return phase ? static_cast<int>(phase->units()) : test::kLost;
}

test::SlowRepeat slow_repeat(const PhaseAxis& axis, int repeat) {
  test::SlowRepeat slow{repeat, {}};
  for (Length phase : axis.phases()) slow.kept.push_back(static_cast<int>(phase.units()));
  return slow;
}

test::SlowMatched slow(const Cloth& c, const Axes& axes, bool forgets) {
  std::vector<test::SlowMatchedShape> shapes;
  for (const PhasedShape& s : c.shapes)
    shapes.push_back({static_cast<int>(s.shape.across.units()), static_cast<int>(s.shape.along.units()),
                      as_number(s.across), as_number(s.along), s.shape.gain});
  return {shapes, slow_repeat(axes.across, c.repeat_across), slow_repeat(axes.along, c.repeat_along),
          forgets};
}

TEST(MatchedTable, SpacesMatchedPanelsByRepeats) {
  Cloth cloth{0, 64, 0, 100, 178, {}};
  cloth.shapes = {shape(100, 50, Match::start, cloth, 1)};
  const Axes axes = axes_of(cloth);
  const Objective aim;
  const MatchedTable table({}, axes.across, axes.along, cloth.shapes, aim, nullptr, nullptr, nullptr);
  const int x = axes.across.floor(axes.across.lost(), u(100)), y = axes.along.floor(0, u(178));
  // Cuts at 64 and 128, and a trim of the first two to 50.
  EXPECT_EQ(table.at(x, y), (Cell{3, aim.cut(100) * 4}));
  TreeBuilder builder;
  table.fill(builder, builder.add({{Length(), u(100)}, {Length(), u(178)}}), x, y, false);
  std::vector<Length> begins;
  for (const CutNode& node : builder.take_tree().nodes)
    if (node.kind == NodeKind::take) begins.push_back(node.rect.along.from);
  std::sort(begins.begin(), begins.end());
  EXPECT_EQ(begins, (std::vector<Length>{u(0), u(64), u(128)}));
}

Cloth thrown_cloth(test::Dice& dice) {
  Cloth c;
  c.repeat_across = dice.coin() ? dice.from_to(3, 7) : 0;
  c.repeat_along = c.repeat_across == 0 || dice.coin() ? dice.from_to(3, 7) : 0;
  c.first = c.repeat_across ? dice.from_to(0, c.repeat_across - 1) : 0;
  c.width = dice.from_to(6, 13);
  c.height = dice.from_to(6, 13);
  for (int n = dice.from_to(1, 3); n > 0; --n) {
    const Match match = std::array{Match::none, Match::start, Match::centred}[static_cast<std::size_t>(dice.from_to(0, 2))];
    const int across = dice.from_to(2, 7), along = dice.from_to(2, 7);
    c.shapes.push_back(shape(across, along, match, c, dice.from_to(1, 30)));
  }
  return c;
}

// The tree of a cell: what it gains, its cost, and each panel at its phase.
struct Replay {
  const Cloth& cloth;
  const Objective& aim;
  const CutTree& tree;
  Length first_across, first_along;  // the phase where the rectangle begins
  Cell cell = {};

  void visit(int index) {
    const CutNode& node = tree.nodes[static_cast<std::size_t>(index)];
    if (node.kind == NodeKind::take) return take(node);
    if (node.kind == NodeKind::leave) return;
    const bool along = node.direction == Direction::along;
    cell.cost += aim.cut((along ? node.rect.along : node.rect.across).size().units());
    visit(node.first);
    visit(node.second);
  }

  void take(const CutNode& node) {
    const PhasedShape& s = cloth.shapes[static_cast<std::size_t>(node.panel)];
    EXPECT_EQ(s.shape.across, node.rect.across.size());
    EXPECT_EQ(s.shape.along, node.rect.along.size());
    if (s.across) {
      EXPECT_EQ(phase_at(node.rect.across.from + first_across, {}, u(cloth.repeat_across)), *s.across);
    }
    if (s.along) {
      EXPECT_EQ(phase_at(node.rect.along.from + first_along, {}, u(cloth.repeat_along)), *s.along);
    }
    cell.gain += s.shape.gain;
  }
};

// Every cell against cutting at every unit under the same rule, its tree replayed,
// and against cutting with every phase known, which is never worse.
TEST(MatchedTable, GainsWhatSlowCuttingGains) {
  test::Dice dice(test::first_seed());
  int given_up = 0, cells = 0;
  for (int round = 0; round < 60; ++round) {
    const Cloth c = thrown_cloth(dice);
    const Axes axes = axes_of(c);
    const Objective aim;
    const MatchedTable table({}, axes.across, axes.along, c.shapes, aim, nullptr, nullptr, nullptr);
    test::SlowMatched rule = slow(c, axes, true), free = slow(c, axes, false);
    for (int y = 0; y < axes.along.size(); ++y)
      for (int x = 0; x < axes.across.size(); ++x) {
        const auto phase = [](const PhaseAxis& axis, int state) {
          const int f = axis[state].family;
          return f < axis.lost() ? static_cast<int>(axis.phases()[static_cast<std::size_t>(f)].units()) : test::kLost;
        };
        const int px = phase(axes.across, x), py = phase(axes.along, y);
        const int w = static_cast<int>(axes.across[x].size.units()), h = static_cast<int>(axes.along[y].size.units());
        ASSERT_EQ(table.at(x, y).gain, rule.best(px, w, py, h))
            << "round " << round << ": " << w << " × " << h << " at " << px << ", " << py;
        const std::int64_t known = free.best(px, w, py, h);
        ASSERT_LE(table.at(x, y).gain, known);
        given_up += table.at(x, y).gain < known;
        ++cells;
        TreeBuilder builder;
        table.fill(builder, builder.add({{Length(), u(w)}, {Length(), u(h)}}), x, y, false);
        const CutTree tree = builder.take_tree();
        Replay replay{c, aim, tree, u(std::max(px, 0)), u(std::max(py, 0))};
        replay.visit(0);
        ASSERT_EQ(replay.cell, table.at(x, y)) << "round " << round;
      }
  }
  RecordProperty("cells", cells);
  RecordProperty("cells_where_the_rule_gives_up_gain", given_up);
  EXPECT_LT(given_up * 20, cells);  // fewer than one in twenty
}

}  // namespace
}  // namespace foldyard
