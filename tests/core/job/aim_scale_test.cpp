#include "job/aim_scale.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "job/defaults.h"
#include "job/limits.h"

namespace foldyard {
namespace {

using test::kOpen;

constexpr FoldWay kQuartersEndToEnd{FoldKind::quarters, 4, true, true};

Job job_of(Worth rate, int allowance_percent) {
  Job job = default_job();
  job.rolls = {{"cloth", {Length::mm(1500), Length(), Length::mm(1), Nap::none, ""},
                Length::mm(10'000)}};
  job.panels = {{"seat", Length::mm(450), Length::mm(900), true, true, Worth::whole(1)}};
  job.pace = {};
  job.pace.rate = rate;
  job.pace.allowance_percent = allowance_percent;
  return job;
}

AimScale scale(const Job& job, const FoldWay& way, Aim aim) {
  return aim_scale(job, job.rolls[0], way, aim);
}

TEST(AimScale, IsTheHeadersExample) {
  // A sixtieth of an hour is a minute: of 20.00 an hour, 1.00 buys three.
  const AimScale s = scale(job_of(Worth::whole(20), 0), kOpen, Aim::worth_less_time);
  EXPECT_EQ(s.shapes.at(0).gain, Duration::seconds(180).ticks());
  EXPECT_FALSE(s.objective.worth_first);
}

TEST(AimScale, GainsWhatIsLeftOfThePanelsTime) {
  // With an allowance of 50 %, 180 s are 120 s of basic time; 30 s to handle.
  Job job = job_of(Worth::whole(20), 50);
  job.pace.handle = Duration::seconds(30);
  EXPECT_EQ(scale(job, kOpen, Aim::worth_less_time).shapes.at(0).gain,
            Duration::seconds(90).ticks());
}

TEST(AimScale, GivesPanelsNoGainThatAreNotWorthTheirHandling) {
  Job job = job_of(Worth::whole(20), 0);
  job.pace.handle = Duration::seconds(180);
  for (const Shape& s : scale(job, kOpen, Aim::worth_less_time).shapes) EXPECT_LE(s.gain, 0);
  EXPECT_EQ(scale(job, kOpen, Aim::most_worth).shapes.size(), 2u);  // it may turn
}

TEST(AimScale, CountsCutsLengthsAndLaysInTime) {
  Job job = job_of(Worth::whole(20), 0);
  job.pace.mark = Duration::seconds(8);
  job.pace.ms_per_metre = 20'000;
  job.pace.cross_cut = Duration::seconds(60);
  job.pace.fold = Duration::seconds(10);
  job.pace.lift = Duration::seconds(40);
  const AimScale s = scale(job, kQuartersEndToEnd, Aim::worth_less_time);
  // A cut of 1 m: 8 + 20 s. Quarters end to end: 60 s, 1.5 m at 20 s, 3 folds.
  EXPECT_EQ(s.objective.cut(Length::mm(1000).units()), Duration::seconds(28).ticks());
  EXPECT_EQ(s.per_length, Duration::seconds(60 + 30 + 30).ticks());
  EXPECT_EQ(s.per_lay, Duration::seconds(40).ticks());
}

TEST(AimScale, PutsWorthThenCutsThenTravel) {
  const AimScale s = scale(job_of(Worth::whole(20), 0), kOpen, Aim::most_worth);
  EXPECT_TRUE(s.objective.worth_first);
  EXPECT_EQ(s.shapes.at(0).gain, 10'000);
  EXPECT_GT(s.objective.cut(0), kLongest.units());
  EXPECT_EQ(s.per_length, s.objective.cut(Length::mm(1500).units()));
  EXPECT_EQ(s.per_lay, 0);
}

TEST(AimScale, WeighsWorthAloneWhereTimeCostsNothing) {
  EXPECT_TRUE(scale(job_of(Worth(), 15), kOpen, Aim::worth_less_time).objective.worth_first);
}

// At the limits: the dearest panel on the largest cloth at the least rate.
TEST(AimScale, KeepsTheSumOfAllGainsWithinTheNumbers) {
  Job job = job_of(Worth::parts(1), 0);
  job.rolls[0].length = kLongest;
  job.rolls[0].fabric.width = limits::kRollWidth.most;
  job.panels[0] = {"seat", Length::mm(100), Length::mm(100), false, true,
                   Worth::parts(limits::kPanelWorth.most)};
  const AimScale s = scale(job, kOpen, Aim::worth_less_time);
  const std::int64_t most_panels = 100 * 10'000;  // 10 m × 1 km of 10 cm squares
  ASSERT_FALSE(s.shapes.empty());
  EXPECT_GT(s.shapes[0].gain, 0);
  EXPECT_LT(s.shapes[0].gain, (std::int64_t{1} << 62) / most_panels);
}

}  // namespace
}  // namespace foldyard
