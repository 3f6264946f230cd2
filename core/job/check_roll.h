#pragma once

// What a roll must hold by itself and beside the table, the cutter and the
// losses of its job. Internal to job/check_job.h; where: "rolls[1].".
//
// check_roll_limits: each figure within limits.h. check_roll_sense: figures
// that contradict each other; REQUIRES all figures of the job within limits.
// Neither minds the order of the flaws.

#include "job/first_fault.h"
#include "job/job.h"

namespace foldyard {

void check_roll_limits(FirstFault& faults, const std::string& where, const Roll& roll);
void check_roll_sense(FirstFault& faults, const std::string& where, const Roll& roll,
                      const Job& job);

// The cloth of a roll that a length can have along the roll.
Length longest_length(const Roll& roll, const Losses& losses);

}  // namespace foldyard
