#include "cutting/near_cells.h"

#include <gtest/gtest.h>

#include <set>

#include "core/support/lengths.h"
#include "core/support/small_goods.h"

namespace foldyard {
namespace {

using test::mm;

// Cloth 100 × 40: panels 40 × 40 of gain 4 (limit 2) and 20 × 40 of gain 1, not
// limited. Neither lies on the fold.
struct SampleCells {
  explicit SampleCells(std::int64_t most = 2)
      : limits{most}, counting(limits),
        tables({{mm(40), mm(40), 0, false, false, 4}, {mm(20), mm(40), 1, false, false, 1}}, {}, {mm(100), mm(40), mm(5)}),
        near(tables, counting, limit_of, limits, {}) {}

  std::set<std::pair<std::int64_t, std::int64_t>> found(const TableKind& kind, int x, std::int64_t loss) {
    near.need(kind, x, 0, loss);
    EXPECT_TRUE(near.fill());
    std::set<std::pair<std::int64_t, std::int64_t>> counts;
    for (const NearCells::Entry& e : near.at(kind, x, 0)) counts.insert({counting.of(e.copies, 0), e.value});
    return counts;
  }

  std::vector<int> limit_of{0, -1};
  std::vector<std::int64_t> limits;
  limited::Counting counting;
  TableSet tables;
  NearCells near;
};

using Counts = std::set<std::pair<std::int64_t, std::int64_t>>;
constexpr TableKind kOpenTable{false, false, 1};

// The places across are 20 40 60 80 100. Two large and one small: 9; one large and
// three small: 7; five small: 5.
TEST(NearCells, FindsWhatLosesNoMoreThanAllowed) {
  EXPECT_EQ(SampleCells().found(kOpenTable, 4, 0), (Counts{{2, 9}}));
  EXPECT_EQ(SampleCells().found(kOpenTable, 4, 1), (Counts{{2, 9}}));
  EXPECT_EQ(SampleCells().found(kOpenTable, 4, 2), (Counts{{2, 9}, {1, 7}}));
  EXPECT_EQ(SampleCells().found(kOpenTable, 4, 9), (Counts{{2, 9}, {1, 7}, {0, 5}}));
}

TEST(NearCells, KeepsWithinTheLimit) { EXPECT_EQ(SampleCells(1).found(kOpenTable, 4, 9), (Counts{{1, 7}, {0, 5}})); }

// Through three plies a take is three copies, or none.
TEST(NearCells, CountsEveryPly) {
  EXPECT_EQ(SampleCells(5).found({false, false, 3}, 4, 30), (Counts{{3, 21}, {0, 15}}));
}

// Beside a fold edge 5 are cut off first, then each take is through both plies.
TEST(NearCells, CountsBothPliesBeyondAFoldEdge) {
  SampleCells sample(4);
  const int half = sample.tables.across(true).index_of(mm(45));
  ASSERT_GE(half, 0);
  EXPECT_EQ(sample.found({true, false, 1}, half, 99), (Counts{{2, 8}, {0, 4}}));
}

// Every entry's tree takes what the entry counts, and the panels lie in it.
TEST(NearCells, WritesWhatItCounts) {
  SampleCells sample;
  sample.found(kOpenTable, 4, 9);
  const auto& entries = sample.near.at(kOpenTable, 4, 0);
  for (int e = 0; e < std::ssize(entries); ++e) {
    TreeBuilder builder;
    const int root = builder.add({{Length(), mm(100)}, {Length(), mm(40)}});
    sample.near.write(builder, root, kOpenTable, 4, 0, e, false);
    std::int64_t large = 0, value = 0, cuts = 0;
    for (const CutNode& n : builder.take_tree().nodes) {
      if (n.kind == NodeKind::take) {
        large += n.panel == 0;
        value += n.panel == 0 ? 4 : 1;
        EXPECT_EQ(n.rect.across.size(), n.panel == 0 ? mm(40) : mm(20));
      }
      cuts += n.kind == NodeKind::cut;
    }
    EXPECT_EQ(large, sample.counting.of(entries[static_cast<std::size_t>(e)].copies, 0));
    EXPECT_EQ(value, entries[static_cast<std::size_t>(e)].value);
    EXPECT_EQ(cuts, entries[static_cast<std::size_t>(e)].cost >> 40);
  }
}

TEST(NearCells, SaysWhereItsStepsRanOut) {
  SampleCells sample;
  NearCells few(sample.tables, sample.counting, sample.limit_of, sample.limits, {3});
  few.need(kOpenTable, 4, 0, 9);
  EXPECT_FALSE(few.fill());
}

// Small random cloth for one aim or the other, its panels limited or not, of any kind of
// table, all that loses up to `loss` found.
struct ThrownCells {
  explicit ThrownCells(test::Dice& dice)
      : aim{dice.coin(), dice.from_to(0, 2), dice.from_to(0, 2)}, shapes(shapes_of_dice(dice)),
        limit_of{dice.coin() ? 0 : -1, dice.coin() ? 1 : -1}, limits{dice.from_to(1, 6), dice.from_to(1, 6)},
        kind{dice.coin(), dice.coin(), dice.from_to(1, 2)}, loss(dice.from_to(0, 90)),
        tables(shapes, aim, {test::u(14), test::u(12), test::u(1)}), x(tables.across(kind.joint_across).size() - 1),
        y(tables.along(kind.joint_along).size() - 1) {}

  static std::vector<Shape> shapes_of_dice(test::Dice& dice) {
    std::vector<Shape> list;
    for (int p = 0; p < 2; ++p)
      list.push_back({test::u(dice.from_to(2, 5)), test::u(dice.from_to(2, 5)), p, false, dice.coin(),
                      dice.from_to(6, 30)});
    return list;
  }
  bool is_empty() const { return x < 0 || y < 0; }
  Rect rect() const {
    return {{Length(), tables.across(kind.joint_across)[x]}, {Length(), tables.along(kind.joint_along)[y]}};
  }
  NearCells near(const NearBudget& budget) {
    NearCells cells(tables, counting, limit_of, limits, budget);
    cells.need(kind, x, y, loss);
    return cells;
  }
  // Of a take through all copies: two of everything beyond each joined rim.
  std::int64_t copies_of(const Rect& taken, bool flip) const {
    const bool at_side = flip ? taken.across.to == rect().across.to : taken.across.from == Length();
    return kind.copies * (kind.joint_across && !at_side ? 2 : 1) *
           (kind.joint_along && taken.along.from != Length() ? 2 : 1);
  }
  void expect_as_counted(const CutTree& tree, const NearCells::Entry& entry, bool flip) const;

  Objective aim;
  std::vector<Shape> shapes;
  std::vector<int> limit_of;
  std::vector<std::int64_t> limits;
  TableKind kind;
  std::int64_t loss;
  limited::Counting counting{limits};
  TableSet tables;
  int x, y;
};

void ThrownCells::expect_as_counted(const CutTree& tree, const NearCells::Entry& entry, bool flip) const {
  std::int64_t gain = 0, cost = 0;
  std::vector<std::int64_t> copies(2, 0);
  for (const CutNode& n : tree.nodes) {
    if (n.kind == NodeKind::take) {
      gain += copies_of(n.rect, flip) * shapes[static_cast<std::size_t>(n.panel)].gain;
      copies[static_cast<std::size_t>(n.panel)] += copies_of(n.rect, flip);
    }
    if (n.kind == NodeKind::cut)
      cost += aim.cut((n.direction == Direction::along ? n.rect.along : n.rect.across).size().units());
  }
  EXPECT_EQ(entry.value, aim.worth_first ? gain : gain - cost);
  EXPECT_EQ(entry.cost, cost);
  for (std::size_t p = 0; p < 2; ++p) {
    if (limit_of[p] < 0) continue;
    EXPECT_EQ(counting.of(entry.copies, limit_of[p]), copies[p]);
    EXPECT_LE(copies[p], limits[static_cast<std::size_t>(limit_of[p])]);
  }
}

// Whatever the aim and wherever fold edges lie, each entry's tree gains and costs what the
// entry says, either way round, and none is outside the allowance.
TEST(NearCells, WritesOfAnyKindWhatItCounts) {
  int written = 0;
  for (unsigned seed = 0; seed < 400 && !testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    test::Dice dice(seed);
    ThrownCells thrown(dice);
    if (thrown.is_empty()) continue;
    NearCells near = thrown.near({});
    ASSERT_TRUE(near.fill());
    const auto& entries = near.at(thrown.kind, thrown.x, thrown.y);
    for (int e = 0; e < std::ssize(entries); ++e)
      for (const bool flip : {false, true}) {
        const NearCells::Entry& entry = entries[static_cast<std::size_t>(e)];
        EXPECT_GE(entry.value, near.value(thrown.kind, thrown.x, thrown.y) - thrown.loss);
        TreeBuilder builder;
        const int root = builder.add(thrown.rect());
        near.write(builder, root, thrown.kind, thrown.x, thrown.y, e, flip);
        thrown.expect_as_counted(builder.take_tree(), entry, flip);
        ++written;
      }
  }
  EXPECT_GT(written, 500);
}

// With any fewer steps than it takes it says so, and with so many it finds all.
TEST(NearCells, IsCompleteOrSaysThatItIsNot) {
  test::Dice dice(3);
  ThrownCells thrown(dice);
  ASSERT_FALSE(thrown.is_empty());
  NearCells whole = thrown.near({});
  ASSERT_TRUE(whole.fill());
  for (std::int64_t lacking = whole.steps(); lacking > 0; lacking /= 2) {
    NearCells cut_short = thrown.near({whole.steps() - lacking});
    EXPECT_FALSE(cut_short.fill()) << lacking;
  }
  NearCells just = thrown.near({whole.steps()});
  EXPECT_TRUE(just.fill());
  NearCells crammed = thrown.near({whole.steps(), 0});
  EXPECT_FALSE(crammed.fill());
}

// Five small panels and more on wide cloth: more steps than pass between two looks at the flag.
TEST(NearCells, StopsWhenItIsCancelled) {
  const std::vector<std::int64_t> limits{9, 9, 9};
  const limited::Counting counting(limits);
  const std::vector<int> limit_of{0, 1, 2};
  const std::vector<Shape> shapes{{mm(40), mm(30), 0, false, true, 40},
                                  {mm(30), mm(50), 1, false, true, 50},
                                  {mm(70), mm(20), 2, false, true, 45}};
  TableSet tables(shapes, {}, {mm(300), mm(200), mm(5)});
  const TableKind kind{false, false, 1};
  const int x = tables.across(false).size() - 1, y = tables.along(false).size() - 1;
  std::atomic<bool> cancelled = false;
  for (const bool stop : {false, true}) {
    cancelled = stop;
    NearCells near(tables, counting, limit_of, limits, {30'000'000, 500'000, &cancelled});
    near.need(kind, x, y, 60);
    EXPECT_EQ(near.fill(), !stop);
    EXPECT_GE(near.steps(), 4096);
    EXPECT_EQ(near.steps() == 4096, stop);
  }
}

// 5 × 10 beside 3 × 2, on cloth of 9 × 10 where only travel counts: a cut of 10 between them,
// then one of 4 above the small one and one of 2 beside it. Trimmed to 8 first it would be
// 10 more. On its side, the same.
TEST(NearCells, TrimsTheLongSideOfARestFirst) {
  for (const bool on_its_side : {false, true}) {
    const auto sized = [&](int a, int b) { return on_its_side ? std::pair(b, a) : std::pair(a, b); };
    std::vector<Shape> shapes;
    for (const auto& [size, gain] : {std::pair{sized(5, 10), 50}, {sized(3, 2), 30}, {sized(9, 10), 1}})
      shapes.push_back(
          {test::u(size.first), test::u(size.second), static_cast<int>(shapes.size()), false, false, gain});
    TableSet tables(shapes, {false, 0, 1}, {shapes[2].across, shapes[2].along, test::u(1)});
    const std::vector<std::int64_t> limits{1, 1, 1};
    const limited::Counting counting(limits);
    const std::vector<int> limit_of{0, 1, 2};
    NearCells near(tables, counting, limit_of, limits, {});
    const int x = tables.across(false).size() - 1, y = tables.along(false).size() - 1;
    near.need(kOpenTable, x, y, 500);
    ASSERT_TRUE(near.fill());
    const NearCells::Entry& best = near.at(kOpenTable, x, y).front();
    EXPECT_EQ(best.value, 50 + 30 - 16);
    for (const bool flip : {false, true}) {
      TreeBuilder builder;
      const int root = builder.add({{Length(), shapes[2].across}, {Length(), shapes[2].along}});
      near.write(builder, root, kOpenTable, x, y, 0, flip);
      std::vector<std::int64_t> travels;
      for (const CutNode& n : builder.take_tree().nodes)
        if (n.kind == NodeKind::cut)
          travels.push_back((n.direction == Direction::along ? n.rect.along : n.rect.across).size().units());
      EXPECT_EQ(travels, (std::vector<std::int64_t>{10, 4, 2}));
    }
  }
}

}  // namespace
}  // namespace foldyard
