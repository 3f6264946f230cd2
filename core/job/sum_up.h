#pragma once

// Lays the lengths of a plan along the roll and adds everything up.
//
// REQUIRES patterns and lays to be set. lay_along sets lengths and remnant,
// one length after another; set_remnant the remnant alone, behind `last`.
// sum_up sets lost, yield, worth, net, areas, cuts, travel and time from them. A
// lost panel is cut and set aside: it counts in the time and in nothing else.

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

void lay_along(const Job& job, Plan& plan);
void set_remnant(const Job& job, Length last, Plan& plan);
void sum_up(const Job& job, Plan& plan);

}  // namespace foldyard
