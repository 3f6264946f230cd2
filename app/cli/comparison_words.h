#pragma once

// A comparison as text: a table of the ways of folding, best first, with what
// each yields, takes and gives up against the first, and whether its plan is
// proved best; then the ways that cannot be planned, each with its reason.
// Panels that no way yields have no column.

#include <QString>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

// What P1, P2 … stand for in the tables.
QString panel_legend(const Job& job);
QString comparison_words(const Job& job, const Comparison& comparison);

// By how much a plan's aim falls short of the best of the ranking; never below
// zero. REQUIRES a plan at `way`.
Worth given_up(const Comparison& comparison, int way);
// The most lengths that go under the cutter together.
int most_in_a_lift(const Plan& plan);

}  // namespace foldyard
