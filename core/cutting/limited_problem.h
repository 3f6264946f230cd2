#pragma once

// LimitedProblem: one rectangle of folded cloth, and panels of which no more
// than so many may be cut.
//
// A take of a shape gives `gain` and uses `uses` of its panel's limit: on k
// plies, k panels each. joint: the left rim is a fold edge; shapes at_joint lie
// on it (their across is half the panel's), the others beyond it, a cut keeps
// fold_trim from it. Cutting is edge to edge.
// Shapes of one panel may gain differently for each copy; the search is faster
// where none do.
//
// Example: 100 × 60, a shape 40 × 60 of gain 5, limit 1: gain 5 though two fit.

#include <atomic>
#include <cstdint>
#include <vector>

#include "cutting/cut_tree.h"

namespace foldyard {

struct LimitedShape {
  Length across;
  Length along;
  int panel = 0;
  bool turned = false;
  bool at_joint = false;
  int uses = 1;
  std::int64_t gain = 0;
};

struct LimitedProblem {
  Length width;
  Length height;
  std::vector<LimitedShape> shapes;
  std::vector<std::int64_t> limits;  // by panel
  bool joint = false;
  Length fold_trim;
};

struct LimitedBudget {
  std::int64_t steps = 200'000'000;
  std::int64_t builds = 6'000'000;                // bounds the memory, about 100 bytes each
  const std::atomic<bool>* cancelled = nullptr;   // looked at every few milliseconds
};

// Cancelled, a search answers within a tenth of a second with the best so far.
//
// gain: of the best cutting found, which `tree` gives; bound: no cutting has
// more; proved: gain == bound. searched: false where the problem is out of the
// search's range (sizes over 16 000 common units, gains of 2^26 or more in all, or
// if copies were free).
struct LimitedAnswer {
  std::int64_t gain = 0;
  std::int64_t bound = 0;
  bool proved = false;
  bool searched = true;
  std::int64_t steps = 0;
  CutTree tree;
};

}  // namespace foldyard
