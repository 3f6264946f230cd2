#include "core/inspect/sound_batch.h"

#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "inspect/inspect_batch.h"

namespace foldyard {

SoundBatch sound_batch() {
  const Sound one = selvedge_to_selvedge();
  SoundBatch batch{one.job, {}};
  batch.job.rolls.push_back(one.job.rolls[0]);
  batch.job.rolls[1].name = "green";
  batch.job.rolls[1].marks = {"leafy"};
  batch.job.rolls[1].price = Worth::whole(5);
  batch.job.products = {{"bag", {{0, 2}}, {}, Worth::whole(10)}};
  batch.job.order.lines = {{0, 5, 1, {}, 2, {{"leafy", 0, 3}}}};
  batch.plan.rolls = {one.plan, one.plan};
  batch.plan.rolls[1].roll = 1;
  batch.plan.made = {{0, "blue", 3}, {0, "green", 3}};
  batch.plan.lays = {{{{0, 0}, {0, 1}, {1, 0}, {1, 1}}}};
  // Five bags at 10.
  batch.plan.filled = batch.plan.filled_bound = Worth::whole(50);
  // Each roll gives 20 + 2 × 910 = 1840 mm: 1.84 m × 1.5 m at 10 a square metre is
  // 27.60, 1.84 m at 5 a metre 9.20; the sixth bag takes 10 off.
  batch.plan.cost = batch.plan.cost_bound = Worth::parts(268'000);
  // Unrolled twice 120 s; four lengths, each cross-cut 20 s and 1.5 m at 20 s,
  // folded 30 s, three panels at 5 s: 380 s; the lay lifted 40 s, two cuts marked
  // 20 s, 1.8 m cut 36 s: 596 s, and a tenth.
  batch.plan.time = Duration::ms(655'600);
  batch.plan.lifts = 1;
  batch.plan.proved = true;
  return batch;
}

void expect_found(const std::vector<BrokenBatch>& rows) {
  for (const BrokenBatch& row : rows) {
    SoundBatch batch = sound_batch();
    row.damage(batch);
    EXPECT_EQ(inspect_batch(batch.job, batch.plan), row.expected) << row.name;
  }
}

}  // namespace foldyard
