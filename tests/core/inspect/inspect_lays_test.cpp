#include <gtest/gtest.h>

#include <algorithm>

#include "core/inspect/sound_batch.h"
#include "core/inspect/sound_plans.h"
#include "core/support/fold_ways.h"
#include "inspect/inspect_batch.h"
#include "inspect/inspect_plan.h"

namespace foldyard {
namespace {

TEST(InspectLays, WantsEveryLengthInOneLay) {
  expect_found({{"twice", [](SoundBatch& b) { b.plan.lays[0].lengths[1] = {0, 0}; },
                 {"Lay 1: it holds a length that lies in a lay already.",
                  "The number of lengths in all lays is given as 3, but comes to 4."}},
                {"left out", [](SoundBatch& b) { b.plan.lays[0].lengths.pop_back(); },
                 {"The number of lengths in all lays is given as 3, but comes to 4."}},
                {"not cut", [](SoundBatch& b) { b.plan.lays[0].lengths[3] = {1, 2}; },
                 {"Lay 1: it holds a length that is not cut."}},
                {"of no roll", [](SoundBatch& b) { b.plan.lays[0].lengths[3] = {2, 0}; },
                 {"Lay 1: it holds a length that is not cut."}},
                {"of a roll before the first", [](SoundBatch& b) { b.plan.lays[0].lengths[3] = {-1, 0}; },
                 {"Lay 1: it holds a length that is not cut."}},
                {"before the first of its roll", [](SoundBatch& b) { b.plan.lays[0].lengths[3] = {1, -1}; },
                 {"Lay 1: it holds a length that is not cut."}},
                {"an empty lay", [](SoundBatch& b) { b.plan.lays.push_back({}); },
                 {"Lay 2: it holds no length."}}});
}

TEST(InspectLays, HoldsTheStackAgainstTheCutter) {
  // Eight plies of 1 mm: two of each length.
  expect_found({{"too high", [](SoundBatch& b) { b.job.cutter.height = Length::mm(7); },
                 {"Lay 1: it is 8 mm high, but the cutter takes 7 mm."}},
                {"too many plies", [](SoundBatch& b) { b.job.cutter.most_plies = 7; },
                 {"Lay 1: 8 plies lie over each other, but the cutter takes 7."}},
                {"thicker cloth above",
                 [](SoundBatch& b) {
                   b.job.rolls[1].fabric.thickness = Length::mm(6);
                 },
                 {"Lay 1: it is 28 mm high, but the cutter takes 25 mm."}}});
}

bool finds(const SoundBatch& batch, const std::string& sentence) {
  const std::vector<std::string> found = inspect_batch(batch.job, batch.plan);
  return std::find(found.begin(), found.end(), sentence) != found.end();
}

Sound settled(Sound sound) {
  fill_rests(sound);
  settle(sound);
  return sound;
}

// Green is cut by another sound plan, whose first length lies on those of blue.
SoundBatch with_green_cut_by(const Sound& other) {
  SoundBatch batch = sound_batch();
  batch.job.rolls[1].length = other.job.rolls[0].length;
  batch.plan.rolls[1] = other.plan;
  batch.plan.rolls[1].roll = 1;
  batch.plan.lays = {{{{0, 0}, {0, 1}, {1, 0}}}};
  for (int i = 1; i < std::ssize(other.plan.lengths); ++i) batch.plan.lays.push_back({{{1, i}}});
  return batch;
}

TEST(InspectLays, WantsEqualPatterns) {
  const std::string sentence = "Lay 1: its lengths are not cut by one pattern.";
  EXPECT_FALSE(finds(with_green_cut_by(selvedge_to_selvedge()), sentence));
  SoundBatch batch = with_green_cut_by(open());
  EXPECT_TRUE(finds(batch, sentence));
  batch.plan.lays[0].lengths.pop_back();
  batch.plan.lays.push_back({{{1, 0}}});
  EXPECT_FALSE(finds(batch, sentence));
}

// Another length, other cuts, and the same cuts of which one panel is left.
TEST(InspectLays, WantsPatternsEqualInAllThatTheCutterFollows) {
  const Sound longer = settled(bare({test::kHalf, {750}, {1, 0}, 750, 2, 910}));
  const Sound uncut = settled(bare({test::kHalf, {750}, {1, 0}, 750, 2, 900}));
  Sound left = selvedge_to_selvedge();
  left.node(1).kind = NodeKind::leave;
  left.pattern().panels.erase(left.pattern().panels.begin());
  for (const Sound& other : {longer, uncut, settled(left)}) {
    EXPECT_EQ(inspect_plan(other.job, other.plan), std::vector<std::string>());
    EXPECT_TRUE(finds(with_green_cut_by(other), "Lay 1: its lengths are not cut by one pattern."));
  }
}

TEST(InspectLays, WantsEqualCloth) {
  SoundBatch batch = sound_batch();
  const std::string sentence = "Lay 1: its cloths differ in width or selvedge.";
  EXPECT_FALSE(finds(batch, sentence));
  // Without selvedges the strips at the edges are offcuts.
  batch.job.rolls[1].fabric.selvedge = Length();
  for (Rest& rest : batch.plan.rolls[1].patterns[0].rests) {
    if (rest.kind == RestKind::selvedge) rest.kind = RestKind::offcut;
  }
  EXPECT_TRUE(finds(batch, sentence));
  Sound wide = bare({test::kOpen, {}, {0}, 1500, 1, 900});
  wide.roll().fabric.width = wide.pattern().folded_across = wide.node(0).rect.across.to = Length::mm(1501);
  batch = with_green_cut_by(settled(wide));
  batch.job.rolls[1].fabric.width = Length::mm(1501);
  EXPECT_TRUE(finds(batch, sentence));
}

}  // namespace
}  // namespace foldyard
