#include "job/lift_room.h"

#include <gtest/gtest.h>

#include "job/defaults.h"

namespace foldyard {
namespace {

FoldWay way_of(const std::string& key) {
  FoldWay way;
  EXPECT_TRUE(way_from_key(key, way)) << key;
  return way;
}

// The cutter takes 25 mm, the cloth is 1.2 mm thick: 20 plies, as 21 would be
// 25.2 mm.
TEST(LengthsInALift, AreWhatTheHeightTakesUnderEachWay) {
  Job job = default_job();
  job.cutter = {Length::mm(25), 200};
  job.rolls = {{"Oak", default_fabric(), Length::mm(20'000)}};
  job.rolls[0].fabric.thickness = Length::units(12 * 32);
  EXPECT_EQ(lengths_in_a_lift(job, 0, way_of("open")), 20);
  EXPECT_EQ(lengths_in_a_lift(job, 0, way_of("selvedge-to-selvedge")), 10);
  EXPECT_EQ(lengths_in_a_lift(job, 0, way_of("both-edges-in")), 10);
  EXPECT_EQ(lengths_in_a_lift(job, 0, way_of("thirds")), 6);
  EXPECT_EQ(lengths_in_a_lift(job, 0, way_of("quarters")), 5);
  EXPECT_EQ(lengths_in_a_lift(job, 0, way_of("thirds+end-to-end")), 3);
  EXPECT_EQ(lengths_in_a_lift(job, 0, way_of("fan-11+end-to-end")), 0);
}

TEST(LengthsInALift, KeepToTheCapOnPlies) {
  Job job = default_job();
  job.cutter = {Length::mm(25), 12};
  job.rolls = {{"Oak", default_fabric(), Length::mm(20'000)}};
  EXPECT_EQ(lengths_in_a_lift(job, 0, way_of("open")), 12);
  EXPECT_EQ(lengths_in_a_lift(job, 0, way_of("fan-5")), 2);
}

}  // namespace
}  // namespace foldyard
