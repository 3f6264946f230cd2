#include "job/batch_case.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
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

// One reaches over the squared free end, one to the other end.
TEST(BatchCase, HasNoStretchBeforeAFlawAtTheEndOfARoll) {
  Job job = test::order_job();
  job.rolls[0].flaws = {{test::mm(50, 300), test::mm(500, 600), "stain"},
                        {test::mm(7'000, 8'000), test::mm(500, 600), "stain"}};
  EXPECT_EQ(batch_case(job)->order.rolls[0].stretches, std::vector<Span>{test::mm(300, 7'000)});
  job.rolls[0].flaws = {{test::mm(0, 8'000), test::mm(500, 600), "fold mark"}};
  EXPECT_TRUE(batch_case(job)->order.rolls[0].stretches.empty());
}

// 100 are squared off each end, and 40 go with any length.
TEST(BatchCase, LeavesOutARollThatIsTooShortUnlessItMustBeCut) {
  Job job = test::order_job();
  job.rolls[1].length = Length::mm(241);
  EXPECT_EQ(batch_case(job)->rolls, (std::vector<int>{0, 1, 2}));
  job.rolls[1].length = Length::mm(240);
  EXPECT_EQ(batch_case(job)->rolls, (std::vector<int>{0, 2}));
  job.rolls[1].in_batch = InBatch::must;
  EXPECT_EQ(batch_case(job).problem().sentence(),
            "rolls[1].in_batch: \"moss 2\" must be cut, and it is too short to be cut at all; let the batch choose.");
}

TEST(BatchCase, AddsUpWhatIsOnHandOfOneCloth) {
  Job job = test::order_job();
  job.on_hand = {{0, "moss", {}, 2}, {1, "moss", {}, 3}, {0, "moss", {}, 4}, {2, "sand", {"printed"}, 5}};
  EXPECT_EQ(batch_case(job)->order.on_hand,
            (std::vector<std::vector<std::int64_t>>{{6, 3, 0}, {0, 0, 5}}));
}

// The roll alone is of its cloth, but panels of that cloth are on hand: it is set apart from them.
TEST(BatchCase, SetsARollApartFromWhatIsOnHandOfItsCloth) {
  Job job = test::order_job();
  job.order.lines[1].roll = "sand 1";
  const auto cloths = [&] { return batch_case(job)->order.cloths; };
  EXPECT_EQ(cloths(), (std::vector<std::string>{"moss", "sand"}));
  EXPECT_EQ(batch_case(job)->order.lines[1].cloths, std::vector<int>{1});
  job.on_hand = {{2, "moss", {}, 1}};
  EXPECT_EQ(cloths(), (std::vector<std::string>{"moss", "sand"}));
  job.on_hand = {{2, "sand", {"printed"}, 1}};
  EXPECT_EQ(cloths(), (std::vector<std::string>{"moss", "sand", "sand"}));
  EXPECT_EQ(batch_case(job)->order.lines[1].cloths, std::vector<int>{2});
}

// A rule of a line that is kept on "moss 2" counts what comes from it; one of any other line counts all moss.
TEST(BatchCase, TakesTheRollForItsClothInRulesOfTheLineThatIsKeptOnIt) {
  Job job = test::order_job();
  job.order.lines[0] = {0, 4, 0, {}, 0, {{"moss", 0, 3}}, "moss 2"};
  job.order.lines[1] = {1, 3, 0, {"moss"}, 0, {{"moss", 0, 2}}};
  const Result<BatchCase> c = batch_case(job);
  ASSERT_TRUE(c);
  EXPECT_EQ(c->order.cloths, (std::vector<std::string>{"moss", "moss", "sand"}));
  EXPECT_EQ(c->order.lines[0].rules[0].cloths, std::vector<int>{1});
  EXPECT_EQ(c->order.lines[1].rules[0].cloths, std::vector<int>{0});
}

TEST(BatchCase, SaysOnlyOfPanelsThatAreWantedThatTheyMustMatch) {
  Job job = test::order_job();
  job.rolls[2].fabric.repeat.along = Length::mm(320);
  job.panels[2].match = Match::start;
  job.panels[0].match = Match::start;
  job.order.lines = {{1, 8, 0, {}, 0, {}}};  // pouches, of fronts alone
  EXPECT_EQ(batch_case(job)->unmatched, (std::vector<std::pair<int, int>>{{2, 2}}));
  job.order.lines[0].from = {"moss"};
  EXPECT_TRUE(batch_case(job)->unmatched.empty());
}

TEST(BatchCase, HasNoWayToCutClothThatIsThickerThanTheCutterTakes) {
  Job job = test::order_job();
  job.cutter.height = Length::mm(2);
  for (Roll& roll : job.rolls) roll.fabric.thickness = Length::mm(3);
  const Result<BatchCase> c = batch_case(job);
  ASSERT_TRUE(c);
  EXPECT_TRUE(c->kinds[0].ways.empty());
  EXPECT_EQ(c->kinds[0].priced, 0);
  EXPECT_FALSE(c->kinds[0].may_lie_end_to_end);
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
