#include "cutting/near_strips.h"

#include <gtest/gtest.h>

#include <map>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOffCentre;
using test::kOpen;
using test::mm;

// Cloth 100 wide without selvedges, a panel 40 × 30 of gain 5 that may be cut on
// the fold, at most 3; table sums along: 30.
struct SampleStrips {
  explicit SampleStrips(const FoldWay& fold, const NearBudget& given = {}, const Objective& aimed = {}, Length depth = mm(1000))
      : way(fold), layouts(layouts_of(fold, fabric(), {mm(5), mm(20), depth})), budget(given), aim(aimed) {}

  static Fabric fabric() {
    Fabric f;
    f.width = mm(100);
    return f;
  }
  // By copies: the value.
  std::map<std::int64_t, std::int64_t> found(std::int64_t best, std::int64_t loss) {
    near.allow(0, 1, mm(30), best, loss, 0);
    EXPECT_TRUE(near.find());
    std::map<std::int64_t, std::int64_t> by_copies;
    for (const auto& c : near.columns()) by_copies[counting.of(c.copies, 0)] = c.value;
    return by_copies;
  }

  FoldWay way;
  Layouts layouts;
  std::vector<int> limit_of{0};
  std::vector<std::int64_t> limits{3};
  limited::Counting counting{limits};
  NearBudget budget;
  Objective aim;
  TableSet tables{{{mm(40), mm(30), 0, false, true, 5}}, aim, {mm(100), mm(30), mm(5)}};
  NearStrips near{tables, layouts, false, counting, limit_of, limits, budget};
};

using ByCopies = std::map<std::int64_t, std::int64_t>;

TEST(NearStrips, OpenClothGivesAnyNumberThatFits) {
  EXPECT_EQ(SampleStrips(kOpen).found(10, 0), (ByCopies{{2, 10}}));
  EXPECT_EQ(SampleStrips(kOpen).found(10, 10), (ByCopies{{2, 10}, {1, 5}, {0, 0}}));
}

// Half of 100 is 50: 20 for one on the fold, or 5 of trim and 40 through both plies.
TEST(NearStrips, HalvedClothGivesOneOrTwo) {
  EXPECT_EQ(SampleStrips(kHalf).found(10, 10), (ByCopies{{2, 10}, {1, 5}, {0, 0}}));
}

// The longer leg is 50 at least.
TEST(NearStrips, FindsNothingOnATableTooShallowForTheFold) {
  EXPECT_FALSE(SampleStrips(kOffCentre, {}, {}, mm(60)).found(10, 10).empty());
  EXPECT_TRUE(SampleStrips(kOffCentre, {}, {}, mm(49)).found(10, 10).empty());
  EXPECT_TRUE(SampleStrips(test::kThirds, {}, {}, mm(33)).found(10, 10).empty());
}

TEST(NearStrips, WritesTheCutsOfAColumn) {
  SampleStrips sample(kOffCentre);
  sample.found(10, 10);
  ASSERT_FALSE(sample.near.columns().empty());
  for (const NearStrips::Column& c : sample.near.columns()) {
    std::int64_t gain = 0;
    for (const CutNode& n : sample.near.tree_of(c).nodes)
      if (n.kind == NodeKind::take) gain += n.rect.across.size() == mm(20) || n.rect.across.from >= c.left_size ? 5 : 10;
    EXPECT_EQ(gain, c.value);
  }
}

// Where each cut costs 1 and travel nothing, open cloth gives two for two cuts, one for one
// or nothing for none, and a narrower strip never for more.
TEST(NearStrips, TakesOffWhatCutsCost) {
  const Objective by_value{false, 1, 0};
  EXPECT_EQ(SampleStrips(kOpen, {}, by_value).found(8, 8), (ByCopies{{2, 8}, {1, 4}, {0, 0}}));
  for (const FoldWay& way : {kHalf, kOffCentre, test::kFlaps, test::kThirds}) {
    SampleStrips sample(way, {}, by_value);
    for (const auto& [copies, value] : sample.found(9, 9)) {
      EXPECT_LE(value, 5 * copies);
      EXPECT_GE(value, 0);
    }
    for (const NearStrips::Column& c : sample.near.columns()) {
      std::int64_t cuts = 0;
      for (const CutNode& n : sample.near.tree_of(c).nodes) cuts += n.kind == NodeKind::cut;
      EXPECT_EQ(c.value, 5 * sample.counting.of(c.copies, 0) - cuts) << way_key(way);
    }
  }
}

// With any fewer steps than it takes, or too few columns, it says so.
TEST(NearStrips, IsCompleteOrSaysThatItIsNot) {
  for (const FoldWay& way : {kHalf, kOffCentre, test::kFlaps}) {
    SampleStrips whole(way);
    whole.found(10, 10);
    const auto is_complete = [&](const NearBudget& budget) {
      SampleStrips sample(way, budget);
      sample.near.allow(0, 1, mm(30), 10, 10, 0);
      return sample.near.find();
    };
    for (std::int64_t steps = 0; steps < whole.near.steps() / 2; ++steps) EXPECT_FALSE(is_complete({steps})) << steps;
    EXPECT_TRUE(is_complete({whole.near.steps()}));
    EXPECT_FALSE(is_complete({whole.near.steps(), std::ssize(whole.near.columns()) - 1}));
  }
}

// Of equal copies that gain no more the longer lay is not kept; a shorter one takes its place.
TEST(NearStrips, KeepsTheShorterOfLaysThatGiveAsMuch) {
  for (const bool shorter_last : {false, true}) {
    SampleStrips sample(kOpen);
    for (const bool shorter : {!shorter_last, shorter_last})
      sample.near.allow(0, 1, shorter ? mm(30) : mm(35), 10, 10, 0);
    ASSERT_TRUE(sample.near.find());
    EXPECT_EQ(sample.near.columns().size(), 3u);
    for (const NearStrips::Column& c : sample.near.columns()) EXPECT_EQ(c.size, mm(30));
  }
}

// More steps than pass between two looks at the flag.
TEST(NearStrips, StopsWhenItIsCancelled) {
  const std::vector<std::int64_t> limits{4, 4, 4};
  const limited::Counting counting(limits);
  const std::vector<int> limit_of{0, 1, 2};
  Fabric fabric;
  fabric.width = mm(360);
  const Layouts layouts = layouts_of(test::kThirds, fabric, {mm(5), mm(20), mm(1000)});
  const std::vector<Shape> shapes{{mm(40), mm(30), 0, false, true, 9},
                                  {mm(31), mm(30), 1, false, true, 7},
                                  {mm(53), mm(30), 2, false, true, 12}};
  std::atomic<bool> cancelled = false;
  for (const bool stop : {false, true}) {
    TableSet tables(shapes, {}, {fabric.width, mm(30), mm(5)});
    cancelled = stop;
    NearStrips near(tables, layouts, false, counting, limit_of, limits, {30'000'000, 500'000, &cancelled});
    near.allow(0, 1, mm(30), 78, 9, 0);
    EXPECT_EQ(near.find(), !stop);
    EXPECT_GE(near.steps(), 4096);
  }
}

}  // namespace
}  // namespace foldyard
