#pragma once

// most_cutting_hours: no plan of all rolls takes more hours of cutting, the allowance
// included; whole hours, rounded up. Coarse by intent: it keeps sums of times within 64 bits.
//
// A roll holds at most its area over that of the smallest panel, and as many lengths as
// shortest panels end to end. Each panel is cut free on at most four sides, each marked, and
// handled once; each length is cross-cut, folded up to twelve times and lifted once; pieces of
// cloth no narrower than the narrowest panel have edges of at most four areas over that width.
//
// REQUIRES a job whose panels and rolls have sizes above zero.
//
// Example: 14 m² of cloth and panels of 10 cm by 20 cm, 5 s to handle one and nothing else: 700
// panels, 3500 s, 1 hour.

#include <cstdint>

#include "job/job.h"

namespace foldyard {

std::int64_t most_cutting_hours(const Job& job);

}  // namespace foldyard
