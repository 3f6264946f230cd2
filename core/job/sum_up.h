#pragma once

// Lays the lengths of a plan along the roll and adds everything up.
//
// REQUIRES patterns and lays to be set. lay_along sets lengths and remnant;
// sum_up sets yield, worth, net, areas, cuts, travel and time from them.

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

void lay_along(const Job& job, Plan& plan);
void sum_up(const Job& job, Plan& plan);

}  // namespace foldyard
