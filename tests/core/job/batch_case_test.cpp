#include "job/batch_case.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/support/fold_ways.h"
#include "core/support/order_job.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOpen;
using test::kOpenEndToEnd;

TEST(BatchCase, TellsClothsKindsAndLines) {
  const Job job = test::order_job();
  const Result<BatchCase> c = batch_case(job);
  ASSERT_TRUE(c);
  EXPECT_EQ(c->order.cloths, (std::vector<std::string>{"moss", "sand"}));
  EXPECT_EQ(c->order.kinds, 1);
  EXPECT_EQ(c->kinds[0].cloth.length, Length::mm(8'000));
  const std::vector<FoldWay>& ways = c->kinds[0].ways;
  EXPECT_EQ(c->kinds[0].priced, 2);
  ASSERT_EQ(c->kinds[0].quick, 3);
  EXPECT_EQ(std::vector<FoldWay>(ways.begin(), ways.begin() + 3),
            (std::vector<FoldWay>{kOpen, kOpenEndToEnd, kHalf}));
  // All that the table holds, each once.
  EXPECT_EQ(std::set<FoldWay>(ways.begin(), ways.end()).size(), ways.size());
  EXPECT_TRUE(std::any_of(ways.begin(), ways.end(), [](const FoldWay& way) { return way.kind == FoldKind::quarters; }));
  EXPECT_EQ(c->rolls, (std::vector<int>{0, 1, 2}));
  EXPECT_EQ(c->order.rolls[1].room, Length::mm(4'800));
  EXPECT_EQ(c->order.rolls[1].stretches, (std::vector<Span>{{Length::mm(100), Length::mm(4'900)}}));
  EXPECT_EQ(c->order.lines[0].cloths, (std::vector<int>{0, 1}));
  EXPECT_EQ(c->order.lines[1].cloths, std::vector<int>{1});  // by its mark
  EXPECT_EQ(c->order.lines[0].needs[1].count, 2);
  // Twice the table's 250 cm and an allowance find no room on 4.8 m.
  ASSERT_EQ(c->order.sources.size(), 3u);
}

TEST(BatchCase, PutsLongRollsOfOneClothAndPriceTogether) {
  Job job = test::order_job();
  job.rolls[1].length = Length::mm(20'000);
  EXPECT_EQ(batch_case(job)->order.sources.size(), 2u);
  job.rolls[1].price = Worth::whole(7);
  EXPECT_EQ(batch_case(job)->order.sources.size(), 3u);
}

TEST(BatchCase, PricesClothBySquareMetreWhereItHasNoPrice) {
  Job job = test::order_job();
  job.rolls[0].price.reset();
  job.cloth_price = Worth::whole(10);
  // 1 m × 1.4 m at 10.
  EXPECT_EQ(batch_case(job)->order.rolls[0].price.of(Length::mm(1000)), 140'000);
}

TEST(BatchCase, MakesRulesOfWhatIsAskedOfEachClothAndMark) {
  Job job = test::order_job();
  job.order.lines[0].each_at_least = 2;
  job.order.lines[0].rules = {{"printed", 1, 5}};
  const Result<BatchCase> c = batch_case(job);
  const auto& rules = c->order.lines[0].rules;
  ASSERT_EQ(rules.size(), 3u);
  EXPECT_EQ(rules[0].cloths, std::vector<int>{0});
  EXPECT_EQ(rules[1].at_least, 2);
  EXPECT_EQ(rules[2].cloths, std::vector<int>{1});
  EXPECT_EQ(rules[2].at_most, 5);
}

TEST(BatchCase, PartsRollsAtFlaws) {
  Job job = test::order_job();
  job.rolls[0].flaws = {{{Length::mm(2000), Length::mm(2100)}, {Length::mm(500), Length::mm(600)}, "stain"},
                        {{Length::mm(4000), Length::mm(4100)}, {Length(), Length::mm(5)}, "in the selvedge"}};
  EXPECT_EQ(batch_case(job)->order.rolls[0].stretches,
            (std::vector<Span>{{Length::mm(100), Length::mm(2000)}, {Length::mm(2100), Length::mm(7900)}}));
}

TEST(BatchCase, CutsAnotherWayWhereOpenClothIsTooDeep) {
  Job job = test::order_job();
  job.table.depth = job.table.reach = Length::mm(800);
  const Result<BatchCase> c = batch_case(job);
  ASSERT_FALSE(c->kinds[0].ways.empty());
  EXPECT_EQ(c->kinds[0].ways[0], kHalf);
}

TEST(BatchCase, RefusesWhatItCannotPlan) {
  Job none = test::order_job();
  none.order.lines.clear();
  EXPECT_EQ(batch_case(none).problem().sentence(), "order: nothing is asked for; add a line to the order.");
  Job unknown = test::order_job();
  unknown.order.lines[1].from = {"silk"};
  EXPECT_EQ(batch_case(unknown).problem().where, "order.lines[1].from");
  Job matched = test::order_job();
  matched.rolls[1].fabric.repeat.along = Length::mm(320);
  matched.panels[0].match = Match::start;
  EXPECT_EQ(batch_case(matched)->unmatched, (std::vector<std::pair<int, int>>{{1, 0}}));
}

}  // namespace
}  // namespace foldyard
