#include "job/length_steps.h"

#include <gtest/gtest.h>

#include <set>

namespace foldyard {
namespace {

// A roll of units: k lengths of 30 and j of 20, worth 5 and 3 each; no losses.
std::optional<Plan> knapsack(Length length) {
  const std::int64_t roll = length.units();
  Plan best;
  for (std::int64_t k = 0; 30 * k <= roll; ++k) {
    const std::int64_t j = (roll - 30 * k) / 20;
    if (Worth::whole(5 * k + 3 * j) <= best.worth) continue;
    best.worth = Worth::whole(5 * k + 3 * j);
    best.remnant = {Length::units(30 * k + 20 * j), length};
  }
  return best.worth > Worth() ? std::optional<Plan>(best) : std::nullopt;
}

// Every length, one after another.
std::vector<std::pair<Length, Worth>> slow_steps(Length least, Length most) {
  std::vector<std::pair<Length, Worth>> steps = {{least, value_of(knapsack(least))}};
  for (Length at = least; at <= most; at += Length::units(1))
    if (value_of(knapsack(at)) > steps.back().second) steps.push_back({at, value_of(knapsack(at))});
  return steps;
}

std::vector<std::pair<Length, Worth>> pairs(const LengthSteps& steps) {
  std::vector<std::pair<Length, Worth>> all;
  for (const LengthStep& step : steps.steps) all.push_back({step.from, value_of(step.plan)});
  return all;
}

TEST(LengthSteps, AreThoseOfTryingEveryLength) {
  for (const int least : {0, 5, 19, 20, 30, 47, 100})
    for (const int more : {0, 1, 3, 29, 60, 200}) {
      const Length from = Length::units(least), to = Length::units(least + more);
      const LengthSteps steps = length_steps(knapsack, from, to, 1000);
      EXPECT_TRUE(steps.is_all);
      EXPECT_EQ(pairs(steps), slow_steps(from, to)) << least << " + " << more;
    }
}

// From 50 to 100 with one panel of 30: the header's example.
TEST(LengthSteps, HaveTheHeadersExample) {
  const PlanAt thirties = [](Length length) {
    Plan plan;
    plan.worth = Worth::whole(length.units() / 30);
    plan.remnant = {Length::units(length.units() / 30 * 30), length};
    return std::optional<Plan>(plan);
  };
  const LengthSteps steps = length_steps(thirties, Length::units(50), Length::units(100), 9);
  const std::vector<std::pair<Length, Worth>> expected = {{Length::units(50), Worth::whole(1)},
                                                          {Length::units(60), Worth::whole(2)},
                                                          {Length::units(90), Worth::whole(3)}};
  EXPECT_EQ(pairs(steps), expected);
}

TEST(LengthSteps, AreFewerAndStillExactWhereThereAreTooMany) {
  const Length from = Length::units(100), to = Length::units(2000);
  const auto every = slow_steps(from, to);
  ASSERT_GT(every.size(), 100u);
  const LengthSteps steps = length_steps(knapsack, from, to, 8);
  EXPECT_FALSE(steps.is_all);
  EXPECT_GE(steps.steps.size(), 5u);
  EXPECT_LE(steps.steps.size(), 10u);
  const std::set<std::pair<Length, Worth>> known(every.begin(), every.end());
  for (const auto& step : pairs(steps)) EXPECT_TRUE(known.count(step)) << step.first.units();
  EXPECT_EQ(pairs(steps).back(), every.back());
}

TEST(LengthSteps, TakeNoFewerPlansThanTheyNeedButNotOneForEveryLength) {
  int calls = 0;
  const PlanAt counted = [&](Length length) {
    ++calls;
    return knapsack(length);
  };
  const LengthSteps steps = length_steps(counted, Length::units(0), Length::units(5000), 1000);
  EXPECT_GT(steps.steps.size(), 400u);
  EXPECT_LE(calls, 2 * static_cast<int>(steps.steps.size()));
}

TEST(Value, IsNetWhereTimeCounts) {
  Plan plan;
  plan.worth = Worth::whole(9);
  plan.net = Worth::whole(4);
  EXPECT_EQ(value_of(plan), Worth::whole(9));
  plan.aim = Aim::worth_less_time;
  EXPECT_EQ(value_of(plan), Worth::whole(4));
  EXPECT_EQ(value_of(std::nullopt), Worth());
}

// So few may be listed that there are more before their number is foreseen; each is one yet.
TEST(LengthSteps, ListNoMoreThanAFewWhereAskedForAFew) {
  for (const int most : {1, 2, 4}) {
    const LengthSteps steps = length_steps(knapsack, Length::units(100), Length::units(300), most);
    EXPECT_FALSE(steps.is_all) << most;
    EXPECT_LE(std::ssize(steps.steps), most + 1) << most;
    for (std::size_t i = 1; i < steps.steps.size(); ++i) {
      const LengthStep& step = steps.steps[i];
      EXPECT_EQ(value_of(knapsack(step.from)), value_of(step.plan)) << most;
      EXPECT_LT(value_of(knapsack(step.from - Length::units(1))), value_of(step.plan)) << most;
    }
  }
}

}  // namespace
}  // namespace foldyard
