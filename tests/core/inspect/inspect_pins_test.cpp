#include <gtest/gtest.h>

#include "core/inspect/sound_batch.h"
#include "inspect/inspect_batch.h"

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

// Of the first length of blue: cut at 225, taken, cut at 675, taken, left.
TEST(InspectPins, FindsALengthOnlyWhereEveryStepIsTheSame) {
  const std::vector<void (*)(KeptLength&)> changes{
      [](KeptLength& k) { k.way.plain = !k.way.plain; },
      [](KeptLength& k) { k.lines[0] += Length::mm(1); },
      [](KeptLength& k) { k.steps.push_back({}); },
      [](KeptLength& k) { k.steps.pop_back(); },
      [](KeptLength& k) { k.steps[1].kind = NodeKind::leave; },
      [](KeptLength& k) { k.steps[1].panel = 1; },
      [](KeptLength& k) { k.steps[1].turned = true; },
      [](KeptLength& k) { k.steps[2].direction = Direction::across; }};
  for (std::size_t i = 0; i < changes.size(); ++i) {
    SoundBatch batch = sound_batch();
    batch.job.order.kept = {of_blue(batch, 2)};
    EXPECT_EQ(inspect_batch(batch.job, batch.plan), std::vector<std::string>());
    changes[i](batch.job.order.kept[0]);
    EXPECT_EQ(inspect_batch(batch.job, batch.plan),
              std::vector<std::string>{"blue: a length that is kept 2 times is cut 0 times."})
        << i;
  }
}

// What names cloths of its own may come from any roll of them.
TEST(InspectPins, LeavesALiningOutOfWhatComesFromTheRollOfALine) {
  SoundBatch batch = sound_batch();
  batch.line().roll = "green";
  batch.job.products[0].panels[0].from = {"blue", "leafy"};
  EXPECT_EQ(inspect_batch(batch.job, batch.plan), std::vector<std::string>{"Line 1 (bag): blue may not serve."});
}

// Six bags of two carriers; three are of green, which is cut for six carriers.
TEST(InspectPins, HoldsALineToItsRoll) {
  expect_found({{"of another cloth", [](SoundBatch& b) { b.line().roll = "green"; },
                 {"Line 1 (bag): blue may not serve.", "green: 6 of carrier are missing for what is kept on this roll."}}});
}

}  // namespace
}  // namespace foldyard
