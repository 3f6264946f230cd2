// What cutters know without a program.

#include <gtest/gtest.h>

#include <algorithm>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "job/defaults.h"
#include "job/plan_roll.h"

namespace foldyard {
namespace {

using test::inches;
using test::kHalf;
using test::kOpen;

Job job_of(Length width, Length selvedge, Length length, std::vector<Panel> panels) {
  Job job = default_job();
  job.losses.squaring = job.losses.allowance = Length();
  job.table = {kLongest, kLongest, kLongest, true};
  job.rolls = {{"cloth", {width, selvedge, Length::mm(1), Nap::none, ""}, length}};
  job.panels = std::move(panels);
  return job;
}

Panel panel(Length across, Length along, int worth = 1) {
  return {std::to_string(across.units()), across, along, false, true, Worth::whole(worth)};
}

int on_fold(const Plan& plan) {
  const auto& panels = plan.patterns[0].panels;
  return static_cast<int>(std::count_if(panels.begin(), panels.end(),
                                        [](const PlacedPanel& p) { return p.on_fold; }));
}

// Common practice, no source: a yard of 60 in cloth laid selvedges together
// gives three panels of 18 × 36 in, one on the fold (9 in) and two through both
// plies (9 to 27 of 30 in): two cuts.
TEST(TradePractice, CutsThreePanelsFromAYardOfSixtyInches) {
  const Job job = job_of(inches(60), Length(), inches(36), {panel(inches(18), inches(36))});
  const auto plan = plan_roll(job, 0, kHalf, Aim::most_worth);
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->yield, std::vector<std::int64_t>{3});
  ASSERT_EQ(plan->patterns.size(), 1u);
  EXPECT_EQ(on_fold(*plan), 1);
  std::vector<Length> places;
  for (const Cut& cut : plan->patterns[0].cuts) places.push_back(cut.at);
  std::sort(places.begin(), places.end());
  EXPECT_EQ(places, (std::vector<Length>{inches(9), inches(27)}));
}

// The same in metres: 22.5 + 45 = 67.5 of 75 cm, with or without a selvedge
// of 1 cm.
TEST(TradePractice, CutsThreePanelsFromNinetyCentimetresOfAMetreAndAHalf) {
  for (const int selvedge : {0, 10}) {
    SCOPED_TRACE(selvedge);
    const Job job = job_of(Length::mm(1500), Length::mm(selvedge), Length::mm(900),
                           {panel(Length::mm(450), Length::mm(900))});
    const auto plan = plan_roll(job, 0, kHalf, Aim::most_worth);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->yield, std::vector<std::int64_t>{3});
    EXPECT_EQ(on_fold(*plan), 1);
    EXPECT_EQ(plan->cuts, 2);
    EXPECT_EQ(plan_roll(job, 0, kOpen, Aim::most_worth)->yield, plan->yield);
  }
}

// 1350 mm is the least that gives three; a millimetre less is one panel short.
TEST(TradePractice, NeedsThreeWidthsForThreePanels) {
  const auto yield = [](int width) {
    return plan_roll(job_of(Length::mm(width), Length(), Length::mm(900),
                            {panel(Length::mm(450), Length::mm(900))}),
                     0, kHalf, Aim::most_worth)
        ->yield[0];
  };
  EXPECT_EQ(yield(1350), 3);
  EXPECT_EQ(yield(1349), 2);
  // 1050: half is 525, room for two loose ones of 450 beside the fold trim.
  EXPECT_EQ(yield(1050), 2);
}

// 900 mm: 450 folded, of which the fold trim is lost to two loose panels. One
// on the fold is all; of the 225 beside it come two of 200 × 300, three times.
TEST(TradePractice, CutsOneOnTheFoldOnlyWhereTheClothIsAPanelShort) {
  const Panel seat = panel(Length::mm(450), Length::mm(900), 10);
  const Panel pouch = panel(Length::mm(200), Length::mm(300));
  const Job alone = job_of(Length::mm(900), Length(), Length::mm(900), {seat});
  const auto one = plan_roll(alone, 0, kHalf, Aim::most_worth);
  ASSERT_TRUE(one);
  EXPECT_EQ(one->yield, std::vector<std::int64_t>{1});
  EXPECT_EQ(on_fold(*one), 1);
  EXPECT_EQ(plan_roll(alone, 0, kOpen, Aim::most_worth)->yield[0], 2);

  const Job both = job_of(Length::mm(900), Length(), Length::mm(900), {seat, pouch});
  EXPECT_EQ(plan_roll(both, 0, kHalf, Aim::most_worth)->yield, (std::vector<std::int64_t>{1, 6}));
}

// A width-conversion chart: lengths, in eighths of a yard, that hold the same
// goods at different widths. Printed at sewwithsarah.com ("fabric conversion
// chart") and long passed on among sewers; said to come from the New Jersey
// (Rutgers) Cooperative Extension, which could not be seen. Rows 1, 5, 9, 12.
constexpr int kWidths[] = {36, 39, 41, 45, 50, 54, 60, 66};  // in, nominal
constexpr int kEighths[4][8] = {{14, 12, 12, 11, 10, 9, 8, 7},
                                {23, 20, 20, 18, 16, 15, 14, 13},
                                {34, 28, 27, 25, 22, 21, 19, 18},
                                {40, 34, 33, 31, 27, 25, 23, 22}};

// Cell area over the mean of its row runs from 0.89 to 1.10 over the whole
// chart, so it is no more than a band. Panels small against the cloth must
// come out of the cells within it.
TEST(TradePractice, ScalesOpenYieldsAsTheWidthChartDoes) {
  for (const auto& row : kEighths) {
    std::vector<double> yields;
    for (int column = 0; column < 8; ++column) {
      // An eighth of a yard is 4 1/2 in, 288 of 1/64 in; the panel 1 1/2 × 2 1/4 in.
      const Job job = job_of(inches(kWidths[column]), Length(),
                             Length::inches64(288 * row[column]),
                             {panel(Length::inches64(96), Length::inches64(144))});
      yields.push_back(static_cast<double>(
          plan_roll(job, 0, kOpen, Aim::most_worth)->yield[0]));
    }
    double mean = 0;
    for (const double yield : yields) mean += yield / 8;
    for (const double yield : yields) {
      EXPECT_GE(yield / mean, 0.89);
      EXPECT_LE(yield / mean, 1.10);
    }
  }
}

}  // namespace
}  // namespace foldyard
