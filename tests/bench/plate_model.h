#pragma once

// Limited copies in one rectangle as a whole-number model of plates and cuts:
// how often each size of plate is cut at each place, or taken as a panel. A
// plate that is no sum of panel sizes counts as the next smaller that is.

#include "support/instance_reader.h"

namespace foldyard::bench {

// By a general solver, proved; it may take very long.
std::int64_t worth_by_solver(const test::Instance& instance, bool turned);

}  // namespace foldyard::bench
