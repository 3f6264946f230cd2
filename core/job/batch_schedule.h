#pragma once

// When a batch is cut and sewn: sittings of Job::sitting at most.
//
// Cutting comes first, in as many sittings as its time needs; then the pieces, line
// by line, as many in a sitting as go in. A piece is never parted: one that takes
// longer than a sitting has a sitting of its own, which is longer. Standard time.
//
// Worked example: 1 h of cutting and 8 bags of 50 min in sittings of 3 h: one of
// cutting, two of three bags (2 h 30) and one of two (1 h 40).

#include <vector>

#include "job/batch_plan.h"
#include "job/job.h"

namespace foldyard {

struct SewnPieces {
  int line = 0;
  std::int64_t pieces = 0;
  bool operator==(const SewnPieces&) const = default;
};

struct Sitting {
  std::vector<SewnPieces> sewn;  // none: one of cutting
  Duration time;
  bool is_cutting() const { return sewn.empty(); }
  bool operator==(const Sitting&) const = default;
};

// Products without an order of operations take no time and go with what is sewn
// before. REQUIRES Job::sitting > 0.
std::vector<Sitting> batch_schedule(const Job& job, const BatchPlan& plan);

}  // namespace foldyard
