#include <gtest/gtest.h>

#include "core/inspect/sound_batch.h"

namespace foldyard {
namespace {

TEST(InspectBatchSums, AddsUpAnew) {
  expect_found({{"filled", [](SoundBatch& b) { b.plan.filled = Worth::whole(49); b.plan.proved = false; },
                 {"What is filled is given as 490000 ten-thousandths, but comes to 500000 ten-thousandths."}},
                {"cost", [](SoundBatch& b) { b.plan.cost = Worth::whole(27); b.plan.proved = false; },
                 {"The cost is given as 270000 ten-thousandths, but comes to 268000 ten-thousandths."}},
                {"time", [](SoundBatch& b) { b.plan.time = Duration::seconds(655); },
                 {"The time is given as 209600000000/320 µs, but comes to 209792000000/320 µs."}},
                {"lifts", [](SoundBatch& b) { b.plan.lifts = 2; },
                 {"The number of lifts is given as 2, but comes to 1."}}});
}

TEST(InspectBatchSums, HoldsThePlanAgainstItsBounds) {
  expect_found({{"more than the bound", [](SoundBatch& b) { b.plan.filled_bound = Worth::whole(49); b.plan.proved = false; },
                 {"More is filled than its bound of 490000 ten-thousandths."}},
                {"cheaper than the bound",
                 [](SoundBatch& b) { b.plan.cost_bound = Worth::whole(27); b.plan.proved = false; },
                 {"The bound of the cost, 270000 ten-thousandths, lies above the cost reached."}},
                {"not proved", [](SoundBatch& b) { b.plan.cost_bound = Worth::whole(26); },
                 {"The plan is said to be proved but does not reach its bounds."}},
                {"not filled and called proved", [](SoundBatch& b) { b.plan.filled_bound = Worth::whole(60); },
                 {"The plan is said to be proved but does not reach its bounds."}}});
}

// The cost's bound speaks of plans that fill as much as this one.
TEST(InspectBatchSums, HoldsAPlanThatFillsLessToItsBound) {
  expect_found({{"a bound below",
                 [](SoundBatch& b) {
                   b.plan.filled_bound = Worth::whole(60);
                   b.plan.cost_bound = Worth::whole(20);
                   b.plan.proved = false;
                 },
                 {}},
                {"a bound above",
                 [](SoundBatch& b) {
                   b.plan.filled_bound = Worth::whole(60);
                   b.plan.cost_bound = Worth::whole(40);
                   b.plan.proved = false;
                 },
                 {"The bound of the cost, 400000 ten-thousandths, lies above the cost reached."}}});
}

}  // namespace
}  // namespace foldyard
