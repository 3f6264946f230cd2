#include <gtest/gtest.h>

#include <algorithm>

#include "core/inspect/sound_batch.h"
#include "core/inspect/sound_plans.h"
#include "inspect/inspect_batch.h"

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

TEST(InspectLays, WantsEqualPatterns) {
  SoundBatch batch = sound_batch();
  const Plan other = open().plan;
  batch.plan.rolls[1] = other;
  batch.plan.rolls[1].roll = 1;
  batch.plan.lays = {{{{0, 0}, {0, 1}, {1, 0}}}};
  for (int i = 1; i < std::ssize(other.lengths); ++i) batch.plan.lays.push_back({{{1, i}}});
  const std::string sentence = "Lay 1: its lengths are not cut by one pattern.";
  EXPECT_TRUE(finds(batch, sentence));
  batch.plan.lays[0].lengths.pop_back();
  batch.plan.lays.push_back({{{1, 0}}});
  EXPECT_FALSE(finds(batch, sentence));
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
}

}  // namespace
}  // namespace foldyard
