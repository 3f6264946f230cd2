#pragma once

// The roll as it is cut across, in order, and how a picture breaks it into rows.
//
// roll_stretches covers the roll from the free end to its core without a gap:
// squared ends (loss), the lengths, what is cut out for flaws, and the rest (remnant, or an offcut).
// rows_of fills rows greedily; a length is never broken over two rows unless it
// is longer than a row by itself. REQUIRES row > 0.

#include <vector>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

enum class StretchKind { loss, length, cut_out, remnant, offcut };

struct RollStretch {
  StretchKind kind = StretchKind::loss;
  Span on_roll;
  int number = -1;  // kind length: index into Plan::lengths
};

struct RollRow {
  std::vector<RollStretch> stretches;
  Span on_roll() const { return {stretches.front().on_roll.from, stretches.back().on_roll.to}; }
};

std::vector<RollStretch> roll_stretches(const Job& job, const Plan& plan);
std::vector<RollRow> rows_of(const std::vector<RollStretch>& stretches, Length row);

}  // namespace foldyard
