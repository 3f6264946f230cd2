#pragma once

// A sound batch, built by hand for the inspector to pass, and then to be broken
// one rule at a time.
//
// Two rolls like the one of sound_plans.h: "blue", and "green" with the mark
// "leafy" at 5 a metre. From each two lengths of 900 folded selvedge to selvedge,
// three carriers a length: six of each cloth. All four lengths are one lay. A bag
// takes two carriers and is worth 10; five must be made, one more may, at least
// two of each cloth, at most three leafy ones.

#include <string>
#include <vector>

#include "job/batch_plan.h"
#include "job/job.h"

namespace foldyard {

struct SoundBatch {
  Job job;
  BatchPlan plan;

  OrderLine& line() { return job.order.lines[0]; }
};

SoundBatch sound_batch();

// A row: what is done to the sound batch, and all that must be found.
struct BrokenBatch {
  const char* name;
  void (*damage)(SoundBatch&);
  std::vector<std::string> expected;
};
void expect_found(const std::vector<BrokenBatch>& rows);

}  // namespace foldyard
