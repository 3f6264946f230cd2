#include "job/as_found.h"

#include <gtest/gtest.h>

#include "cloth/length_estimate.h"
#include "core/support/measured.h"
#include "job/defaults.h"
#include "job/limits.h"

namespace foldyard {
namespace {

Job measured_job() {
  Job job = default_job();
  Roll roll{"measured", default_fabric(), Length::mm(31'000)};
  roll.measured = test::some_diameters();
  Panel panel;
  panel.name = "panel";
  panel.across = panel.along = Length::mm(300);
  panel.worth = Worth::whole(1);
  job.panels = {panel};
  job.rolls = {{"other", default_fabric(), Length::mm(5000)}, roll};
  return job;
}

const ByDiameters& diameters(const Job& job) { return std::get<ByDiameters>(*job.rolls[1].measured); }

TEST(AsFound, TakesTheLengthAndKeepsWhatWasMeasured) {
  const Job job = measured_job();
  const Job found = as_found(job, 1, Length::mm(33'900), false).value();
  EXPECT_EQ(found.rolls[1].length, Length::mm(33'900));
  EXPECT_TRUE(found.rolls[1].is_found);
  EXPECT_EQ(found.rolls[1].measured, job.rolls[1].measured);
  EXPECT_EQ(found.rolls[0], job.rolls[0]);
}

// π (220² − 50²) / (4 × 33 900) = 1.0634 mm.
TEST(AsFound, PutsTheThicknessRightOnRequest) {
  const Job found = as_found(measured_job(), 1, Length::mm(33'900), true).value();
  EXPECT_NEAR(diameters(found).thickness.value.in_mm(), 1.0634, 0.0017);
  EXPECT_EQ(diameters(found).outer, diameters(measured_job()).outer);
  EXPECT_TRUE(was_foreseen(found.rolls[1], Length::mm(33'900)));
}

TEST(AsFound, RefusesARollThatWasNotMeasuredOrALengthThatIsNone) {
  const Job job = measured_job();
  EXPECT_EQ(as_found(job, 0, Length::mm(33'900), false).problem().where, "rolls[0].length");
  EXPECT_TRUE(as_found(job, 1, limits::kRollLength.least, false));
  EXPECT_FALSE(as_found(job, 1, limits::kRollLength.least - Length::units(1), false));
  EXPECT_TRUE(as_found(job, 1, limits::kRollLength.most, false));
  EXPECT_FALSE(as_found(job, 1, limits::kRollLength.most + Length::units(1), false));
}

// 1 km and what was cut off before are longer than any roll.
TEST(AsFound, PutsNothingRightByMoreClothThanARollHas) {
  Job job = measured_job();
  job.rolls[1].cut_since = Length::mm(1'000);
  EXPECT_TRUE(as_found(job, 1, limits::kRollLength.most, false));
  EXPECT_TRUE(as_found(job, 1, limits::kRollLength.most - Length::mm(1'000), true));
  const Result<Job> found = as_found(job, 1, limits::kRollLength.most, true);
  ASSERT_FALSE(found);
  EXPECT_EQ(found.problem().sentence(), "rolls[1].length: the figure or its give is too large; measure again.");
}

// The estimate is 31.1 to 42.1 m (length_estimate.h).
TEST(Foreseen, IsWhatTheEstimateHasRoomFor) {
  const Roll roll = measured_job().rolls[1];
  const LengthEstimate range = estimate(*roll.measured, roll.fabric.width).value();
  EXPECT_TRUE(was_foreseen(roll, range.least));
  EXPECT_TRUE(was_foreseen(roll, range.most));
  EXPECT_FALSE(was_foreseen(roll, range.least - Length::units(1)));
  EXPECT_FALSE(was_foreseen(roll, range.most + Length::units(1)));
  EXPECT_FALSE(was_foreseen(measured_job().rolls[0], Length::mm(5000)));
}

// More was cut off than the figures have room for.
TEST(Foreseen, IsNothingOfARollThatCannotBeThere) {
  Roll roll = measured_job().rolls[1];
  roll.cut_since = Length::mm(50'000);
  EXPECT_FALSE(was_foreseen(roll, Length::mm(1'000)));
}

}  // namespace
}  // namespace foldyard
