#include "inspect/inspect_batch.h"

#include <gtest/gtest.h>

#include "core/inspect/sound_batch.h"

namespace foldyard {
namespace {

TEST(InspectBatch, PassesASoundBatch) {
  const SoundBatch batch = sound_batch();
  EXPECT_EQ(inspect_batch(batch.job, batch.plan), std::vector<std::string>());
}

TEST(InspectBatch, InspectsEachRollAndTheirOrder) {
  expect_found({{"a roll's own plan is broken",
                 [](SoundBatch& b) { ++b.plan.rolls[1].cuts; },
                 {"Roll 2: The number of cuts is given as 3, but comes to 2."}},
                {"rolls out of order", [](SoundBatch& b) { std::swap(b.plan.rolls[0], b.plan.rolls[1]); },
                 {"Roll 2: it does not stand in the order of the job's rolls."}}});
}

TEST(InspectBatch, PassesAnOrderThatCannotBeFilledIfItSaysSo) {
  SoundBatch batch = sound_batch();
  batch.line().must = 8;
  batch.plan.shortfalls = {{0, 2, "blue", Length::mm(910)}};
  batch.plan.filled = batch.plan.filled_bound = Worth::whole(60);
  batch.plan.cost = batch.plan.cost_bound = Worth::parts(368'000);  // no bag beyond `must`
  EXPECT_EQ(inspect_batch(batch.job, batch.plan), std::vector<std::string>());
}

}  // namespace
}  // namespace foldyard
