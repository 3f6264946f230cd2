#pragma once

// Small jobs in quanta: half of the step in which panels grow, so that half a
// panel is whole. Panels are even, everything else is any whole number.

#include <string>
#include <vector>

#include "fold/fold_plan.h"
#include "job/job.h"

namespace foldyard::test {

struct QuantaPanel {
  int across = 0;
  int along = 0;
  bool may_turn = false;
  bool on_fold = false;
  int worth = 0;
  int at_most = -1;  // of it; −1: no limit
};

struct QuantaJob {
  std::vector<QuantaPanel> panels;
  int width = 0;
  int selvedge = 0;
  bool one_way = false;
  int depth = 0;  // the deepest cloth the table takes
  int table = 0;  // the longest
  int roll = 0;
  int squaring = 0;
  int allowance = 0;
  int trim = 1;
};

// Cloth 14 wide with selvedges of 1, one panel of 4 × 6 that may be cut on the
// fold; roll of 20, each end squared by 1, no allowance.
QuantaJob job_by_hand();
// A job of the same sizes; a quantum is 60 units, so that a fold at a half, a
// third, a quarter, a fifth, a sixth or a fifteenth of one is exact.
Job job_of(const QuantaJob& small);
QuantaJob throw_job(unsigned seed, const FoldWay& way);
// The same with limits on some or all of its panels.
QuantaJob throw_limited_job(unsigned seed, const FoldWay& way);
std::string text(const QuantaJob& small);

}  // namespace foldyard::test
