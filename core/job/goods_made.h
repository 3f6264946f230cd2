#pragma once

// The goods of a job, and how many its panels make.
//
// Panels that are sewn into equal goods belong together, in the job's order,
// until a piece comes again: then new goods begin. pieces: how many can be
// sewn; the panel that there is least of decides.
//
// Example: 10 fronts and 15 backs of a cushion cover make 7.

#include <cstdint>
#include <string>
#include <vector>

#include "job/job.h"

namespace foldyard {

struct GoodsMade {
  std::string name;
  Goods goods;
  std::vector<int> panels;  // indices into Job::panels
  std::int64_t pieces = 0;
  bool operator==(const GoodsMade&) const = default;
};

// The goods alone, no pieces.
std::vector<GoodsMade> goods_of(const Job& job);
// yield: by panel, as in a Plan. REQUIRES one entry a panel.
std::vector<GoodsMade> goods_made(const Job& job, const std::vector<std::int64_t>& yield);

}  // namespace foldyard
