#pragma once

// The plan of a job's first roll under one way, which must be there, and what it is worth.

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "job/plan_roll.h"

namespace foldyard::test {

inline Plan planned(const Job& job, const FoldWay& way = kOpen, Aim aim = Aim::most_worth) {
  const Result<Plan> plan = plan_roll(job, 0, way, aim);
  EXPECT_TRUE(plan) << way_name(way) << ": " << plan.problem().sentence();
  return plan ? *plan : Plan{};
}

// By the aim it was made for, in parts.
inline std::int64_t aimed_worth(const Plan& plan) {
  return plan.aim == Aim::most_worth ? plan.worth.parts() : plan.net.parts();
}

}  // namespace foldyard::test
