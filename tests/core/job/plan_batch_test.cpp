#include "job/plan_batch.h"

#include <gtest/gtest.h>

#include "core/support/few_rounds.h"
#include "core/support/order_job.h"
#include "inspect/inspect_batch.h"

namespace foldyard {
namespace {

using test::few_rounds;

std::vector<std::string> found_in(const Job& job, const Result<BatchPlan>& plan) {
  return plan ? inspect_batch(job, *plan) : std::vector<std::string>{plan.problem().sentence()};
}

std::int64_t made_of(const BatchPlan& plan, int line, const std::string& cloth) {
  for (const Made& made : plan.made)
    if (made.line == line && made.cloth == cloth) return made.pieces;
  return 0;
}

TEST(PlanBatch, FillsASmallOrder) {
  const Job job = test::order_job();
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_EQ(plan->filled, Worth::whole(12 * 20 + 8 * 9));
  EXPECT_TRUE(plan->shortfalls.empty());
  EXPECT_EQ(made_of(*plan, 1, "moss"), 0);  // pouches are of printed cloth
}

TEST(PlanBatch, IsTheSameTwiceAndTellsEachBetterPlan) {
  const Job job = test::order_job();
  std::vector<BatchPlan> told;
  BatchBudget budget = few_rounds();
  budget.found = [&](const BatchPlan& plan) { told.push_back(plan); };
  const auto one = plan_batch(job, budget);
  EXPECT_EQ(*one, *plan_batch(job, few_rounds()));
  ASSERT_FALSE(told.empty());
  EXPECT_EQ(told.back().rolls, one->rolls);
  for (std::size_t i = 1; i < told.size(); ++i) EXPECT_LE(told[i].cost, told[i - 1].cost);
}

TEST(PlanBatch, KeepsRulesOfClothsAndMarks) {
  Job job = test::order_job();
  job.order.lines[0].each_at_least = 3;
  job.order.lines[0].rules = {{"printed", 0, 4}};
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_TRUE(plan->shortfalls.empty());
  EXPECT_GE(made_of(*plan, 0, "moss"), 8);
  EXPECT_GE(made_of(*plan, 0, "sand"), 3);
}

TEST(PlanBatch, TakesLiningsFromAnyOfTheirCloths) {
  Job job = test::order_job();
  job.products[1].panels.push_back({1, 2, {"moss"}});
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_TRUE(plan->shortfalls.empty());
}

TEST(PlanBatch, LeavesOutAndForcesRolls) {
  Job job = test::order_job();
  job.rolls[0].in_batch = InBatch::never;
  const auto without = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, without), std::vector<std::string>());
  job.rolls[0].in_batch = InBatch::may;
  const auto free = plan_batch(job, few_rounds());
  for (Roll& roll : job.rolls) roll.in_batch = InBatch::must;
  const auto all = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, all), std::vector<std::string>());
  EXPECT_EQ(all->rolls.size(), 3u);
  EXPECT_GE(all->cost, free->cost);
  EXPECT_GE(all->cost_bound, free->cost_bound);
}

TEST(PlanBatch, RefusesARollThatMustBeCutAndCannot) {
  Job job = test::order_job();
  job.rolls[1].fabric.width = Length::mm(200);
  job.rolls[1].in_batch = InBatch::must;
  const auto plan = plan_batch(job, few_rounds());
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().where, "rolls[1].in_batch");
}

TEST(PlanBatch, KeepsALineOnItsRoll) {
  Job job = test::order_job();
  job.order.lines[0] = {0, 4, 0, {}, 0, {}, "moss 2"};
  job.order.lines.push_back({1, 3, 0, {"moss"}, 0, {}});
  job.on_hand = {{0, "moss", {}, 3}};
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_TRUE(plan->shortfalls.empty());
  EXPECT_EQ(made_of(*plan, 0, "moss"), 4);
  EXPECT_EQ(made_of(*plan, 2, "moss"), 3);
  EXPECT_LE(plan->cost_bound, plan->cost);
}

TEST(PlanBatch, SaysWhatLacks) {
  Job job = test::order_job();
  job.order.lines[0].must = 200;
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  ASSERT_FALSE(plan->shortfalls.empty());
  EXPECT_EQ(plan->shortfalls[0].line, 0);
  EXPECT_GT(plan->shortfalls[0].needed, Length::mm(1'000));
  EXPECT_LT(plan->filled, plan->filled_bound);
}

TEST(PlanBatch, MakesMoreOnlyWhereItIsWorthItsCloth) {
  Job job = test::order_job();
  job.order.lines = {{1, 4, 200, {"printed"}, 0, {}}};
  const auto many = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, many), std::vector<std::string>());
  // Two fronts of 30 × 40 cm are worth 9, their cloth under 3: all sand is used, of which
  // 5.8 m × 1.38 m hold no more than 33 by area.
  EXPECT_GT(made_of(*many, 0, "sand"), 25);
  EXPECT_LT(many->cost, Worth());
  job.products[1].worth = Worth::parts(1'000);
  const auto few = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, few), std::vector<std::string>());
  EXPECT_LT(made_of(*few, 0, "sand"), 9);
}

TEST(PlanBatch, FoldsWhereTheTableIsTooShallow) {
  Job job = test::order_job();
  job.table.depth = job.table.reach = Length::mm(800);
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  for (const Plan& roll : plan->rolls)
    for (const Pattern& pattern : roll.patterns) EXPECT_LE(pattern.folded_across, Length::mm(800));
}

// Three abreast either way, but in thirds one cut does for three plies.
TEST(PlanBatch, FoldsInThirdsWhereThatSavesTime) {
  Job job = test::order_job();
  job.panels = {{"square", Length::mm(440), Length::mm(440), true, true, Worth::whole(3)}};
  job.products = {{"cover", {{0, 1}}, {}, Worth::whole(9)}};
  job.order.lines = {{0, 30, 0, {}, 0, {}}};
  job.order.aims = {BatchAim::cloth, BatchAim::minutes, BatchAim::lifts, BatchAim::remnants};
  job.pace.fold = Duration::seconds(1);
  job.pace.mark = Duration::seconds(60);
  const auto plan = plan_batch(job, few_rounds());
  ASSERT_EQ(found_in(job, plan), std::vector<std::string>());
  int folded = 0;
  for (const Plan& roll : plan->rolls)
    for (const Pattern& pattern : roll.patterns) folded += pattern.fold.way.legs > 2;
  EXPECT_GT(folded, 0);
}

TEST(PlanBatch, PlansAroundFlaws) {
  Job job = test::order_job();
  job.rolls[0].flaws = {{{Length::mm(1'500), Length::mm(1'600)}, {Length::mm(500), Length::mm(600)}, "stain"}};
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_TRUE(plan->shortfalls.empty());
}

TEST(PlanBatch, AnswersAtOnceWhenStopped) {
  const Job job = test::order_job();
  std::atomic<bool> stopped = true;
  BatchBudget budget;
  budget.cancelled = &stopped;
  const auto plan = plan_batch(job, budget);
  if (plan) {
    EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
    EXPECT_FALSE(plan->proved);
  } else {
    EXPECT_EQ(plan.problem().what, "planning was stopped before a plan was found");
  }
}

// Three carriers and two pouches: soon planned.
Job small_order() {
  Job job = test::order_job();
  job.order.lines[0].must = 3;
  job.order.lines[1].must = 2;
  return job;
}

// After each better plan in turn: what is found so far stands, and its bounds hold for the best.
TEST(PlanBatch, StandsWheneverItIsStopped) {
  const Job job = small_order();
  const auto best = plan_batch(job, few_rounds(5));
  ASSERT_TRUE(best);
  int told = 1;
  for (int after = 1; told == after; ++after) {
    std::atomic<bool> stopped = false;
    BatchBudget budget = few_rounds(5);
    budget.cancelled = &stopped;
    told = 0;
    budget.found = [&](const BatchPlan&) { stopped = ++told == after; };
    const auto plan = plan_batch(job, budget);
    ASSERT_EQ(found_in(job, plan), std::vector<std::string>()) << after;
    EXPECT_GE(plan->filled_bound, best->filled) << after;
    EXPECT_LE(plan->filled, best->filled_bound) << after;
    EXPECT_GE(plan->cost, best->cost_bound) << after;
    EXPECT_LE(plan->cost_bound, best->cost) << after;
    EXPECT_TRUE(!plan->proved || plan->cost == best->cost) << after;
  }
}

// Too few for any table: a sound plan, or none.
TEST(PlanBatch, IsSoundOrNoneWithFewSteps) {
  const Job job = small_order();
  const auto best = plan_batch(job, few_rounds(5));
  for (const std::int64_t steps : {0, 1, 1'000, 20'000}) {
    BatchBudget budget = few_rounds(5);
    budget.steps = steps;
    const auto plan = plan_batch(job, budget);
    if (plan) {
      EXPECT_EQ(found_in(job, plan), std::vector<std::string>()) << steps;
      EXPECT_LE(plan->cost_bound, best->cost) << steps;
      EXPECT_GE(plan->filled_bound, best->filled) << steps;
    } else {
      EXPECT_EQ(plan.problem().what, "no panel of the order can be cut from any roll") << steps;
    }
  }
}

TEST(PlanBatch, CountsItsRounds) {
  SearchProgress progress;
  BatchBudget budget = few_rounds(5);
  budget.progress = &progress;
  const auto plan = plan_batch(small_order(), budget);
  ASSERT_TRUE(plan);
  ASSERT_FALSE(plan->proved);  // else it would end before
  EXPECT_EQ(progress.total, 5);
  EXPECT_EQ(progress.done, 5);
}

// No roll is cut, for nothing; so that no plan costs less.
TEST(PlanBatch, ProvesAnOrderThatIsOnHandAlready) {
  Job job = small_order();
  job.order.lines[1].may = 0;
  job.on_hand = {{0, "moss", {}, 3}, {1, "moss", {}, 6}, {2, "sand", {"printed"}, 4}};
  const auto plan = plan_batch(job, few_rounds(5));
  ASSERT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_TRUE(plan->rolls.empty());
  EXPECT_EQ(plan->cost, Worth());
  EXPECT_TRUE(plan->proved);
  EXPECT_EQ(made_of(*plan, 0, "moss"), 3);
}

// No body of 90 cm comes from 80 cm of sand, and one of each cloth is asked for.
TEST(PlanBatch, BoundsTheCostWhereARuleCannotBeKept) {
  Job job = small_order();
  job.rolls[2].length = Length::mm(800);
  job.order.lines[0].each_at_least = 1;
  const auto plan = plan_batch(job, few_rounds(5));
  ASSERT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_EQ(made_of(*plan, 0, "moss"), 3);
  ASSERT_EQ(plan->shortfalls.size(), 1u);
  EXPECT_EQ(plan->shortfalls[0].cloth, "sand");
  EXPECT_FALSE(plan->proved);
  EXPECT_LE(plan->cost_bound, plan->cost);
  EXPECT_GT(plan->cost_bound, Worth::parts(plan->cost.parts() / 2));
}

// Each width has lengths of its own.
TEST(PlanBatch, CutsRollsOfTwoWidthsByLengthsOfTheirOwn) {
  Job job = small_order();
  job.rolls[2].fabric.width = Length::mm(700);
  job.order.lines[0].each_at_least = 1;
  const auto plan = plan_batch(job, few_rounds(1));
  ASSERT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_TRUE(plan->shortfalls.empty());
  EXPECT_LE(plan->cost_bound, plan->cost);
  EXPECT_GE(made_of(*plan, 0, "moss"), 1);
  EXPECT_GE(made_of(*plan, 0, "sand"), 1);
}

TEST(PlanBatch, RefusesAnOrderThatNoRollMayBeCutFor) {
  Job job = small_order();
  for (Roll& roll : job.rolls) roll.in_batch = InBatch::never;
  const auto plan = plan_batch(job, few_rounds(5));
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().where, "order");
}

TEST(PlanBatch, RefusesAnOrderThatNoRollIsWideEnoughFor) {
  Job job = small_order();
  for (Roll& roll : job.rolls) roll.fabric.width = Length::mm(200);
  const auto plan = plan_batch(job, few_rounds(1));
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().what, "no panel of the order can be cut from any roll");
  job.order.lines.clear();
  EXPECT_EQ(plan_batch(job, few_rounds(1)).problem().what, "nothing is asked for");
}

// The bound speaks of what is served: it lies near the plan's cost, though half is lacking.
TEST(PlanBatch, BoundsTheCostOfWhatCanBeServed) {
  Job job = test::order_job();
  job.order.lines[0].must = 90;
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  ASSERT_FALSE(plan->shortfalls.empty());
  EXPECT_GT(plan->cost_bound, Worth::parts(plan->cost.parts() * 7 / 10));
  EXPECT_LE(plan->cost_bound, plan->cost);
}

// The moss that repeats serves pockets and fronts; bodies come from elsewhere.
TEST(PlanBatch, CutsNothingThatMustMatchFromClothThatRepeats) {
  Job job = test::order_job();
  job.rolls[0].fabric.repeat = {Length::mm(320), {}, {}, {}, false};
  job.panels[0].match = Match::start;
  job.order.lines[1].from.clear();
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_NE(plan->note.find("body must match the pattern of moss 1, so a batch cuts none of it there"), std::string::npos) << plan->note;
  for (const Plan& roll : plan->rolls) EXPECT_TRUE(roll.roll != 0 || roll.yield[0] == 0);
  job.panels[1].match = Match::start;
  const auto more = plan_batch(job, few_rounds(1));
  EXPECT_EQ(found_in(job, more), std::vector<std::string>());
  EXPECT_NE(more->note.find("a batch cuts none of it there, and more of that kind"), std::string::npos) << more->note;
  for (const Plan& roll : more->rolls) EXPECT_TRUE(roll.roll != 0 || roll.yield[0] + roll.yield[1] == 0);
}

TEST(PlanBatch, HoldsALimitOnCopies) {
  Job job = test::order_job();
  job.panels[1].at_most = 24;  // twelve carriers of two pockets each
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_TRUE(plan->shortfalls.empty());
  job.panels[1].at_most = 23;
  const auto refused = plan_batch(job, few_rounds());
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.problem().sentence(),
            "panels[1].at_most: the order takes up to 24 of pocket, and at most 23 may be cut; order less, or take the "
            "limit off the panel.");
}

// The only roll of its cloth, and a rule of the cloth that one of two rolls is of.
TEST(PlanBatch, KeepsALineOnTheOnlyRollOfItsCloth) {
  Job job = test::order_job();
  job.order.lines[1].roll = "sand 1";
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_GE(made_of(*plan, 1, "sand"), 8);
}

TEST(PlanBatch, HoldsARuleOfTheClothThatALineIsKeptOn) {
  Job job = test::order_job();
  job.order.lines[0] = {0, 4, 0, {}, 0, {{"moss", 0, 3}}, "moss 2"};
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_EQ(made_of(*plan, 0, "moss"), 3);
  ASSERT_EQ(plan->shortfalls.size(), 1u);
  EXPECT_EQ(plan->shortfalls[0].pieces, 1);
}

TEST(PlanBatch, SewsFromWhatIsOnHandOfClothThatIsGone) {
  Job job = test::order_job();
  job.order.lines = {{1, 3, 0, {"violet"}, 0, {}}, {0, 1, 0, {}, 0, {}}};
  job.on_hand = {{2, "violet", {"plain"}, 4}};
  const auto plan = plan_batch(job, few_rounds());
  EXPECT_EQ(found_in(job, plan), std::vector<std::string>());
  EXPECT_EQ(made_of(*plan, 0, "violet"), 2);
  ASSERT_EQ(plan->shortfalls.size(), 1u);
  EXPECT_EQ(plan->shortfalls[0].line, 0);
}

}  // namespace
}  // namespace foldyard
