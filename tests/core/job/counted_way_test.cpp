#include "job/counted_way.h"

#include <gtest/gtest.h>

#include "core/support/cushions.h"
#include "core/support/fold_ways.h"
#include "inspect/inspect_hand.h"
#include "inspect/inspect_plan.h"
#include "job/hand_edit.h"

namespace foldyard {
namespace {

using test::kHalf;

// A seat is worth nine arms.
Job dear_cushions() {
  Job job = test::cushions();
  job.panels[0].worth = Worth::whole(9);
  return job;
}

Result<Plan> counted_plan(const Job& job, const FoldWay& way, Aim aim, std::map<std::string, std::int64_t> least) {
  Hand hand;
  hand.at_least = std::move(least);
  Result<Plan> plan = CountedWay(job, 0, aim, way, hand, {}).run(24);
  if (plan) {
    EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
    EXPECT_EQ(inspect_hand(job, *plan, hand), std::vector<std::string>());
    EXPECT_LE(aim == Aim::most_worth ? plan->worth : plan->net, plan->proof.bound);
  }
  return plan;
}

TEST(CountedWay, GivesAtLeastAsManyAsAreAskedFor) {
  const Job job = dear_cushions();
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time})
    for (const FoldWay& way : {FoldWay{}, kHalf})
      for (const int arms : {5, 20, 33}) {
        const auto plan = counted_plan(job, way, aim, {{"arm", arms}});
        ASSERT_TRUE(plan) << plan.problem().sentence();
        EXPECT_GE(plan->yield[1], arms);
      }
}

// Arms are 300 × 400, the usable cloth 1480 wide, 4940 long less what each length
// loses: no more than the area allows.
TEST(CountedWay, RefusesWhatCannotBeHadAndSaysHowManyCan) {
  const Job job = dear_cushions();
  const auto plan = counted_plan(job, {}, Aim::most_worth, {{"arm", 900}});
  ASSERT_FALSE(plan);
  const std::string words = plan.problem().sentence();
  EXPECT_EQ(words.find("open: there is no way to get 900 of arm from this roll: at most "), 0u) << words;
  EXPECT_NE(words.find(", proved."), std::string::npos) << words;
  // Just so many can be had.
  const int most = std::stoi(words.substr(words.find("at most ") + 8));
  const auto just = counted_plan(job, {}, Aim::most_worth, {{"arm", most}});
  ASSERT_TRUE(just);
  EXPECT_EQ(just->yield[1], most);
}

TEST(CountedWay, KeepsALimitBesidesWhatIsAskedFor) {
  Job job = dear_cushions();
  job.panels[0].at_most = 4;
  const auto plan = counted_plan(job, {}, Aim::most_worth, {{"arm", 12}});
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_LE(plan->yield[0], 4);
  EXPECT_GE(plan->yield[1], 12);
  job.panels[1].at_most = 3;
  EXPECT_EQ(counted_plan(job, {}, Aim::most_worth, {{"arm", 4}}).problem().what,
            "4 of arm are asked for, but the job wants at most 3");
}

TEST(CountedWay, StopsWhenItIsCancelled) {
  const Job job = dear_cushions();
  std::atomic<bool> stop = true;
  Hand hand;
  hand.at_least["arm"] = 20;
  EXPECT_FALSE(CountedWay(job, 0, Aim::most_worth, {}, hand, {40'000'000, &stop}).run(24));
}

// Without a search for prices nothing that was asked for need be found.
TEST(CountedWay, SaysWhatWasAskedForWhereNothingIsFound) {
  Hand hand;
  hand.at_least = {{"seat", 4}, {"arm", 22}};
  Job job = dear_cushions();
  job.rolls[0].length = Length::mm(2'500);
  const Result<Plan> plan = CountedWay(job, 0, Aim::most_worth, {}, hand, {}).run(0);
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().what,
            "no plan with at least 4 of seat and 22 of arm was found; that there is none is not proved");
}

}  // namespace
}  // namespace foldyard
