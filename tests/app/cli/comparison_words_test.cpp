#include "cli/comparison_words.h"

#include <gtest/gtest.h>

#include "job/defaults.h"

namespace foldyard {
namespace {

Plan plan_worth(FoldWay way, int worth, int net, Aim aim) {
  Plan plan;
  plan.way = way;
  plan.aim = aim;
  plan.worth = Worth::whole(worth);
  plan.net = Worth::whole(net);
  plan.yield = {7};
  plan.lays = {{0, 2}, {0, 5}, {0, 1}};
  plan.proof.bound = Worth::whole(worth + 1);
  return plan;
}

const FoldWay kOpen{};
const FoldWay kThirds{FoldKind::fan, 3, false, false};
const FoldWay kQuarters{FoldKind::quarters, 4, false, true};

Comparison compared(Aim aim) {
  Comparison comparison;
  comparison.aim = aim;
  comparison.ways = {{kOpen, plan_worth(kOpen, 50, 30, aim), ""},
                     {kThirds, plan_worth(kThirds, 47, 35, aim), ""},
                     {kQuarters, {}, "the stack is too thick"}};
  comparison.ranking = aim == Aim::most_worth ? std::vector{0, 1} : std::vector{1, 0};
  comparison.frontier = {0, 1};
  return comparison;
}

TEST(GivenUp, IsMeasuredByTheAim) {
  EXPECT_EQ(given_up(compared(Aim::most_worth), 0), Worth());
  EXPECT_EQ(given_up(compared(Aim::most_worth), 1), Worth::whole(3));        // 50 − 47
  EXPECT_EQ(given_up(compared(Aim::worth_less_time), 0), Worth::whole(5));  // 35 − 30
}

TEST(MostInALift, IsTheTallestLay) {
  EXPECT_EQ(most_in_a_lift(plan_worth(kOpen, 1, 1, Aim::most_worth)), 5);
  EXPECT_EQ(most_in_a_lift(Plan{}), 0);
}

TEST(ComparisonWords, RankTheWaysAndSayWhyOneIsNotPlanned) {
  Job job = default_job();
  job.rolls = {{"Oak", default_fabric(), Length::mm(9000)}};
  job.panels = {{"Square", Length::mm(450), Length::mm(450), false, true, Worth::whole(1)}};
  const std::string text = comparison_words(job, compared(Aim::most_worth)).toStdString();
  const auto at = [&](const char* words) { return text.find(words); };
  EXPECT_NE(at("Roll Oak: 900 cm of cloth 140 cm wide."), std::string::npos) << text;
  EXPECT_LT(at("\nopen "), at("\nin thirds "));
  EXPECT_NE(at("at most 51.00"), std::string::npos);
  EXPECT_NE(at("5 of 12"), std::string::npos);  // open: 12 plies at most
  EXPECT_NE(at("5 of 4"), std::string::npos);   // thirds: 12 / 3; this made-up plan has too many
  EXPECT_NE(at("because the stack is too thick: quarters-plain."), std::string::npos);
  EXPECT_NE(at("From most worth to least time: open (50.00"), std::string::npos);
}

TEST(ComparisonWords, LeaveOutPanelsThatNoWayYields) {
  Job job = default_job();
  job.rolls = {{"Oak", default_fabric(), Length::mm(9000)}};
  job.panels = {{"None", Length::mm(450), Length::mm(450), false, true, Worth::whole(1)},
                {"Some", Length::mm(450), Length::mm(450), false, true, Worth::whole(1)}};
  Comparison comparison = compared(Aim::most_worth);
  comparison.ways[0].plan->yield = {0, 7};
  comparison.ways[1].plan->yield = {0, 0};
  const QString text = comparison_words(job, comparison);
  EXPECT_FALSE(text.contains(QStringLiteral(" P1 ")));
  EXPECT_TRUE(text.contains(QStringLiteral(" P2 ")));
}

TEST(PanelLegend, SaysWhatTheCodesStandFor) {
  Job job = default_job();
  job.panels = {{"Square", Length::mm(450), Length::mm(455), false, true, Worth::parts(75'000)}};
  EXPECT_EQ(panel_legend(job).toStdString(), "Panels\n  P1 Square, 45 × 45.5 cm, worth 7.50\n");
}

}  // namespace
}  // namespace foldyard
