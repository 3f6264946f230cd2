#include <gtest/gtest.h>

#include "core/inspect/sound_batch.h"

namespace foldyard {
namespace {

void add_steps(const CutTree& tree, int at, std::vector<KeptStep>& steps) {
  const CutNode& node = tree.nodes[static_cast<std::size_t>(at)];
  steps.push_back({node.kind, node.direction, node.at, node.panel, node.turned});
  if (node.kind != NodeKind::cut) return;
  add_steps(tree, node.first, steps);
  add_steps(tree, node.second, steps);
}

// The lengths of "blue", kept so many times.
KeptLength of_blue(const SoundBatch& b, std::int64_t count) {
  const Pattern& pattern = b.plan.rolls[0].patterns[0];
  KeptLength kept{"blue", count, pattern.length, pattern.fold.way, pattern.fold.lines, {}};
  add_steps(pattern.tree, 0, kept.steps);
  return kept;
}

TEST(InspectPins, HoldsRollsToWhatIsSet) {
  expect_found({{"must and is", [](SoundBatch& b) { b.job.rolls[0].in_batch = InBatch::must; }, {}},
                {"never and is", [](SoundBatch& b) { b.job.rolls[1].in_batch = InBatch::never; },
                 {"green is cut, but it is left out of batches."}},
                {"must and is not",
                 [](SoundBatch& b) {
                   b.job.rolls.push_back(b.job.rolls[0]);
                   b.job.rolls[2].name = "grey";
                   b.job.rolls[2].cloth = "blue";
                   b.job.rolls[2].in_batch = InBatch::must;
                 },
                 {"grey is not cut, but it must be."}}});
}

TEST(InspectPins, FindsEachLengthThatIsKept) {
  expect_found({{"both", [](SoundBatch& b) { b.job.order.kept = {of_blue(b, 2)}; }, {}},
                {"both, one by one", [](SoundBatch& b) { b.job.order.kept = {of_blue(b, 1), of_blue(b, 1)}; }, {}},
                {"one more", [](SoundBatch& b) { b.job.order.kept = {of_blue(b, 3)}; },
                 {"blue: a length that is kept 3 times is cut 2 times."}},
                {"cut elsewhere",
                 [](SoundBatch& b) {
                   b.job.order.kept = {of_blue(b, 1)};
                   b.job.order.kept[0].steps[0].at += Length::mm(1);
                 },
                 {"blue: a length that is kept 1 times is cut 0 times."}},
                {"another length",
                 [](SoundBatch& b) {
                   b.job.order.kept = {of_blue(b, 1)};
                   b.job.order.kept[0].length += Length::mm(1);
                 },
                 {"blue: a length that is kept 1 times is cut 0 times."}}});
}

// Six bags of two carriers; three are of green, which is cut for six carriers.
TEST(InspectPins, HoldsALineToItsRoll) {
  expect_found({{"of another cloth", [](SoundBatch& b) { b.line().roll = "green"; },
                 {"Line 1 (bag): blue may not serve.", "green: 6 of carrier are missing for what is kept on this roll."}}});
}

}  // namespace
}  // namespace foldyard
