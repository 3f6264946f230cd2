#include "cli/choice.h"

#include <gtest/gtest.h>

#include "job/defaults.h"

namespace foldyard {
namespace {

Job two_rolls() {
  Job job = default_job();
  job.rolls = {{"Oak", default_fabric(), Length::mm(9000)},
               {"Ash", default_fabric(), Length::mm(9000)}};
  job.panels = {{"Square", Length::mm(450), Length::mm(450), false, true, Worth::whole(1)}};
  return job;
}

TEST(Choice, TakesAllRollsOrTheNamedOne) {
  Call call;
  EXPECT_EQ(chosen_rolls(two_rolls(), call), (std::vector<int>{0, 1}));
  call.roll = QStringLiteral("Ash");
  EXPECT_EQ(chosen_rolls(two_rolls(), call), (std::vector<int>{1}));
  EXPECT_FALSE(wrong_choice(two_rolls(), call));
}

TEST(Choice, RefusesARollTheJobHasNotAndNamesThoseItHas) {
  Call call;
  call.roll = QStringLiteral("Elm");
  EXPECT_EQ(wrong_choice(two_rolls(), call)->sentence(),
            "the job has no roll \"Elm\"; its rolls are \"Oak\", \"Ash\".");
}

TEST(Choice, RefusesAFanLongerThanTheJobPlans) {
  Call call;
  call.way = FoldWay{FoldKind::fan, 7, false, false};
  EXPECT_TRUE(wrong_choice(two_rolls(), call));
  Job job = two_rolls();
  job.longest_fan = 7;
  EXPECT_FALSE(wrong_choice(job, call));
}

Comparison three_ways() {
  Comparison comparison;
  comparison.ways = {{FoldWay{}, Plan{}, ""},
                     {FoldWay{FoldKind::fan, 3, false, false}, Plan{}, ""},
                     {FoldWay{FoldKind::quarters, 4, false, true}, {}, "too thick"}};
  comparison.ranking = {1, 0};
  return comparison;
}

TEST(Choice, TakesTheBestWayOrTheNamedOne) {
  Call call;
  EXPECT_EQ(chosen_way(three_ways(), call), 1);
  call.way = FoldWay{};
  EXPECT_EQ(chosen_way(three_ways(), call), 0);
  call.way = FoldWay{FoldKind::quarters, 4, false, true};
  EXPECT_EQ(chosen_way(three_ways(), call), -1);
  EXPECT_EQ(chosen_way(Comparison{}, Call{}), -1);
}

TEST(Choice, SaysEachReasonOnce) {
  Comparison comparison = three_ways();
  comparison.ways[0] = {FoldWay{}, {}, "too thick"};
  comparison.ways[1].plan.reset();
  comparison.ways[1].refused = "too deep";
  EXPECT_EQ(refusal_words(comparison).toStdString(), "too thick; too deep.");
}

}  // namespace
}  // namespace foldyard
