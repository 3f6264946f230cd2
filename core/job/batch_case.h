#pragma once

// The order of a job in bare numbers (batch/order_case.h), and which kinds of cloth
// there are.
//
// A cloth serves a line where the line names it or a mark of one of its rolls, or
// names nothing. Flaws part a roll into stretches; those in selvedges or squared
// ends part nothing. A roll too short for its end losses is left out, and so is one that
// stays out of batches. A roll that a line is kept on is set apart as a cloth of its own
// where more of its cloth serves (batch/order_case.h).
//
// Refused: an order of nothing; a roll that must be cut and cannot be; what
// batch_kept.h refuses; a line that no cloth on a roll can serve.

#include "batch/order_case.h"
#include "fold/fold_plan.h"
#include "job/job.h"
#include "job/plan.h"
#include "measure/result.h"

namespace foldyard {

// A kind of cloth: its longest roll without flaws, as thick as the thickest.
// ways: under which it may be cut: open cloth, or else the first that may be; the same
// folded end to end; these are `priced`. Then selvedge to selvedge, the last of the `quick`
// ones, all others that may be, and those of lengths that are kept: only for lengths that
// are known to be wanted.
struct BatchKind {
  Roll cloth;
  std::vector<FoldWay> ways;
  int priced = 0;
  int quick = 0;
  bool may_lie_end_to_end = false;
};

// Equal lengths that are kept on a roll of the case: the stretch in which each lies.
struct KeptOnRoll {
  int roll = 0;
  int way = 0;  // of its kind
  Pattern pattern;
  std::vector<int> stretches;
};

struct BatchCase {
  OrderCase order;
  std::vector<int> rolls;  // of the job, by roll of the case
  std::vector<BatchKind> kinds;
  std::vector<KeptOnRoll> kept = {};
  // Rolls and panels of the job: wanted of a roll whose pattern they must match, and so
  // not cut from it.
  std::vector<std::pair<int, int>> unmatched = {};
};

Result<BatchCase> batch_case(const Job& job);

}  // namespace foldyard
