#include "job/batch_kept.h"

#include <gtest/gtest.h>

#include "core/support/dice.h"
#include "core/support/few_rounds.h"
#include "core/support/fold_ways.h"
#include "core/support/order_job.h"
#include "inspect/inspect_batch.h"
#include "job/check_job.h"
#include "job/kept_length.h"
#include "job/plan_batch.h"

namespace foldyard {
namespace {

using test::few_rounds;
using test::kHalf;
using test::kPlainFanOf5;

// A body and the rest left, 960 long: with its allowance 1 m of roll.
KeptLength one_body(const std::string& roll, std::int64_t count) {
  return {roll, count, Length::mm(960), {}, {},
          {{NodeKind::cut, Direction::along, Length::mm(10)}, {},
           {NodeKind::cut, Direction::along, Length::mm(460)},
           {NodeKind::cut, Direction::across, Length::mm(900)}, {NodeKind::take, Direction::along, {}, 0}, {}, {}}};
}

void expect_sound(const Job& job, const Result<BatchPlan>& plan) {
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_EQ(inspect_batch(job, *plan), std::vector<std::string>());
}

TEST(BatchKept, PutsThemOnTheirRoll) {
  Job job = test::order_job();
  job.order.kept = {one_body("moss 2", 3)};
  const Result<BatchCase> c = batch_case(job);
  ASSERT_TRUE(c) << c.problem().sentence();
  EXPECT_EQ(c->order.rolls[1].kept, 3);
  EXPECT_EQ(c->order.rolls[1].kept_size, Length::mm(3'000));
  EXPECT_EQ(c->order.rolls[1].kept_yield, (std::vector<std::int64_t>{3, 0, 0}));
  ASSERT_EQ(c->kept.size(), 1u);
  EXPECT_EQ(c->kept[0].stretches, (std::vector<int>{0, 0, 0}));
}

TEST(BatchKept, RefusesMoreThanFindRoom) {
  Job job = test::order_job();
  job.order.kept = {one_body("moss 2", 5)};  // 4.8 m lie between the squared ends
  const Result<BatchCase> c = batch_case(job);
  ASSERT_FALSE(c);
  EXPECT_EQ(c.problem().sentence(), "order.kept: lengths kept on \"moss 2\" do not find room on it; let one of them go and plan again.");
}

TEST(BatchKept, TakesTwoWaysOnOneRoll) {
  Job job = test::order_job();
  KeptLength folded = one_body("moss 2", 1);
  folded.way = kHalf;
  folded.lines = {Length::mm(700)};
  folded.steps = {{}};
  job.order.kept = {one_body("moss 2", 1), folded};
  expect_sound(job, plan_batch(job, few_rounds(20)));
}

TEST(BatchKept, StaysInThePlanWhateverItCosts) {
  Job job = test::order_job();
  job.order.kept = {one_body("sand 1", 2), one_body("moss 2", 1)};
  expect_sound(job, plan_batch(job, few_rounds(20)));
}

// What is cut of a plan is kept: planned again, it costs what it did or less.
TEST(BatchKept, KeepsWhatWasPlanned) {
  Job job = test::order_job();
  const Result<BatchPlan> first = plan_batch(job, few_rounds(20));
  ASSERT_TRUE(first);
  for (const Plan& roll : first->rolls)
    for (int i = 0; i < std::ssize(roll.lengths); ++i) job.order.kept.push_back(kept_length(job, roll, i));
  const Result<BatchPlan> again = plan_batch(job, few_rounds(20));
  expect_sound(job, again);
  EXPECT_EQ(again->cost, first->cost);
  EXPECT_EQ(again->filled, first->filled);
  EXPECT_LE(again->cost_bound, again->cost);
}

TEST(BatchKept, KeepsWhatNoPieceNeeds) {
  Job job = test::order_job();
  job.order.lines = {{1, 1, 0, {}, 0, {}}};  // a pouch: no body
  job.order.kept = {one_body("moss 1", 2)};
  const Result<BatchPlan> plan = plan_batch(job, few_rounds(20));
  expect_sound(job, plan);
}

TEST(BatchKept, RefusesThemOnARollThatIsTooShortForAnyAndWhatCanNoLongerBeCut) {
  Job job = test::order_job();
  job.order.kept = {one_body("moss 2", 1)};
  job.rolls[1].length = Length::mm(240);  // its squared ends and one allowance
  EXPECT_EQ(batch_case(job).problem().sentence(),
            "order.kept: lengths kept on \"moss 2\" find no room; let one of them go and plan again.");
  job.rolls[1].length = Length::mm(1'199);  // a millimetre too short
  const Result<BatchPlan> plan = plan_batch(job, few_rounds(1));
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().sentence(),
            "order.kept: the length kept on \"moss 2\" can no longer be cut so: the roll is too short for it; let it "
            "go and plan again.");
}

// A fan of more legs than are folded now is folded still where it is kept.
TEST(BatchKept, IsFoldedByAWayThatNoOtherLengthIs) {
  Job job = test::order_job();
  job.longest_fan = 3;
  const std::size_t others = batch_case(job)->kinds[0].ways.size();
  KeptLength fan = one_body("moss 2", 1);
  fan.way = kPlainFanOf5;
  fan.lines = {Length::mm(280), Length::mm(560), Length::mm(840), Length::mm(1'120)};
  fan.steps = {{}};
  job.order.kept = {fan, one_body("moss 2", 1), fan};
  const Result<BatchCase> c = batch_case(job);
  ASSERT_TRUE(c) << c.problem().sentence();
  ASSERT_EQ(c->kinds[0].ways.size(), others + 1);
  EXPECT_EQ(c->kinds[0].ways.back(), kPlainFanOf5);
  EXPECT_EQ(c->kept[0].way, static_cast<int>(others));
  EXPECT_EQ(c->kept[1].way, 0);
  EXPECT_EQ(c->kept[2].way, c->kept[0].way);
}

TEST(BatchKept, RefusesThoseThatGiveMoreOfAPanelThanMayBeCut) {
  Job job = test::order_job();
  job.order.lines[0].must = 2;
  job.panels[0].at_most = 2;
  job.order.kept = {one_body("moss 1", 2)};
  BatchBudget budget = few_rounds(1);
  int told = 0;
  budget.found = [&](const BatchPlan&) { ++told; };
  expect_sound(job, plan_batch(job, budget));
  EXPECT_GT(told, 0);
  told = 0;
  job.order.kept[0].count = 3;
  EXPECT_EQ(plan_batch(job, budget).problem().sentence(),
            "panels[0].at_most: the lengths that serve the order give 3 of body, and at most 2 may be cut; take the "
            "limit off the panel, or let lengths go that are kept.");
  EXPECT_EQ(told, 0);
}

// Orders by dice, with rolls left out or forced, a line kept on a roll, flaws, a repeat, panels
// on hand and limits.
Job order_by_dice(unsigned seed) {
  test::Dice dice(seed);
  Job job = test::order_job();
  job.order.lines[0].must = dice.from_to(1, 20);
  job.order.lines[1].must = dice.from_to(0, 20);
  for (Roll& roll : job.rolls) {
    roll.length = Length::mm(dice.from_to(2'000, 12'000));
    if (dice.from_to(0, 4) == 0) roll.in_batch = dice.coin() ? InBatch::must : InBatch::never;
    if (dice.from_to(0, 5) == 0) roll.flaws = {{{Length::mm(700), Length::mm(720)}, {Length(), Length::mm(1'400)}, ""}};
    if (dice.from_to(0, 6) == 0) roll.fabric.repeat.along = Length::mm(320);
  }
  if (dice.from_to(0, 3) == 0) job.panels[1].match = Match::start;
  if (dice.from_to(0, 3) == 0) job.panels[1].at_most = 30;
  if (dice.from_to(0, 2) == 0) job.order.lines[0].roll = job.rolls[dice.coin() ? 0 : 1].name;
  if (dice.from_to(0, 3) == 0) job.on_hand = {{0, "moss", {}, dice.from_to(1, 5)}};
  return job;
}

// Every plan passes the inspector, with some of its lengths kept too.
TEST(BatchKept, StandsWithAllElseThatIsSetByHand) {
  int planned = 0;
  for (unsigned seed = 1; seed <= 16; ++seed) {
    Job job = order_by_dice(seed);
    if (check_job(job)) continue;
    const Result<BatchPlan> first = plan_batch(job, few_rounds(20));
    if (!first) {
      EXPECT_EQ(first.problem().sentence().find("does not pass inspection"), std::string::npos) << "seed " << seed;
      continue;
    }
    EXPECT_EQ(inspect_batch(job, *first), std::vector<std::string>()) << "seed " << seed;
    for (const Plan& roll : first->rolls)
      for (int i = 0; i < std::ssize(roll.lengths); i += 2) job.order.kept.push_back(kept_length(job, roll, i));
    const Result<BatchPlan> again = plan_batch(job, few_rounds(20));
    ASSERT_TRUE(again) << "seed " << seed << ": " << again.problem().sentence();
    EXPECT_EQ(inspect_batch(job, *again), std::vector<std::string>()) << "seed " << seed;
    ++planned;
  }
  EXPECT_GE(planned, 8);
}

}  // namespace
}  // namespace foldyard
