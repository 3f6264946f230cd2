#pragma once

// most_abreast: how many panels lie side by side across the rolls that a batch may cut, each
// kind of panel of the products alone, all together. A search for a batch begins with a row
// of each kind of panel on each kind of roll; so many panels it holds at once at least.
//
// REQUIRES a job whose panels and rolls have sizes above zero, and whose products name panels
// that it has.
//
// Example: two rolls 1400 mm wide between their selvedges, panels of 100 mm by 200 mm and of
// 450 mm by 450 mm in products: 2 · (14 + 3) = 34.

#include <cstdint>

#include "job/job.h"

namespace foldyard {

std::int64_t most_abreast(const Job& job);

}  // namespace foldyard
