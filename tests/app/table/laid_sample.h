#pragma once

// A length of cloth laid on the table, for the tests of this room.

#include <gtest/gtest.h>

#include "job/defaults.h"
#include "job/plan_roll.h"
#include "table/laid_cloth.h"

namespace foldyard::sample {

// A roll 1500 wide with no selvedge, and a panel 450 wide that may be creased.
inline Job carrier_job() {
  Job job = default_job();
  Roll roll;
  roll.name = "Olive";
  roll.fabric = default_fabric();
  roll.fabric.width = Length::mm(1500);
  roll.fabric.selvedge = Length::mm(10);
  roll.length = Length::mm(1200);
  job.rolls = {roll};
  Panel carrier;
  carrier.name = "Carrier";
  carrier.across = Length::mm(450);
  carrier.along = Length::mm(900);
  carrier.worth = Worth::parts(10'000);
  job.panels = {carrier};
  return job;
}

inline LaidClothPtr laid(const char* key) {
  FoldWay way;
  EXPECT_TRUE(way_from_key(key, way));
  const auto job = std::make_shared<const Job>(carrier_job());
  const Result<Plan> plan = plan_roll(*job, 0, way, Aim::most_worth);
  EXPECT_TRUE(plan);
  return lay_cloth(job, std::make_shared<const Plan>(*plan), 0);
}

}  // namespace foldyard::sample
