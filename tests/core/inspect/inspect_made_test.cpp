#include <gtest/gtest.h>

#include "core/inspect/sound_batch.h"

namespace foldyard {
namespace {

TEST(InspectMade, HoldsEachLineAgainstWhatItAsks) {
  expect_found(
      {{"no such cloth", [](SoundBatch& b) { b.plan.made[1].cloth = "red"; },
        {"Pieces are made of a line or a cloth (red) that the job does not have."}},
       {"no such line", [](SoundBatch& b) { b.plan.made[1].line = 1; },
        {"Pieces are made of a line or a cloth (green) that the job does not have."}},
       {"a line before the first", [](SoundBatch& b) { b.plan.made[0].line = -1; },
        {"Pieces are made of a line or a cloth (blue) that the job does not have."}},
       {"lack of no such line", [](SoundBatch& b) { b.plan.shortfalls = {{1, 1, "blue", {}}}; },
        {"Something lacks of a line or a cloth (blue) that the job does not have."}},
       {"lack of a line before the first", [](SoundBatch& b) { b.plan.shortfalls = {{-1, 1, "blue", {}}}; },
        {"Something lacks of a line or a cloth (blue) that the job does not have."}},
       {"lack of no such cloth", [](SoundBatch& b) { b.plan.shortfalls = {{0, 1, "red", {}}}; },
        {"Something lacks of a line or a cloth (red) that the job does not have."}},
       {"out of order", [](SoundBatch& b) { std::swap(b.plan.made[0], b.plan.made[1]); },
        {"Line 1 (bag): blue stands twice or out of its order."}},
       {"a cloth that may not serve", [](SoundBatch& b) { b.line().from = {"leafy"}; },
        {"Line 1 (bag): blue may not serve."}},
       {"more of a mark than wanted", [](SoundBatch& b) { b.line().rules[0].at_most = 2; },
        {"Line 1 (bag): 3 pieces of leafy are made, but at most 2 are wanted."}}});
}

TEST(InspectMade, CountsWhatIsTaken) {
  SoundBatch batch = sound_batch();
  expect_found({{"one too many",
                 [](SoundBatch& b) { b.line().may = 0; },
                 {"Line 1 (bag): 6 pieces are made, but at most 5 are taken."}}});
}

TEST(InspectMade, WantsEveryLackSaid) {
  expect_found({{"pieces lack",
                 [](SoundBatch& b) {
                   b.line().must = 7;
                   b.line().may = 0;
                   b.plan.filled = b.plan.filled_bound = Worth::whole(60);
                   b.plan.cost = b.plan.cost_bound = Worth::parts(368'000);
                 },
                 {"Line 1 (bag): it lacks 1 pieces or more, of which 0 are said to lack."}},
                {"of one cloth", [](SoundBatch& b) { b.line().each_at_least = 4; },
                 {"Line 1 (bag): it lacks 1 pieces or more, of which 0 are said to lack."}},
                {"of a mark", [](SoundBatch& b) { b.line().rules = {{"leafy", 4, {}}}; },
                 {"Line 1 (bag): it lacks 1 pieces or more, of which 0 are said to lack."}},
                {"said to lack nothing",
                 [](SoundBatch& b) {
                   b.line().each_at_least = 4;
                   b.plan.shortfalls = {{0, 0, "blue", {}}, {0, 1, "blue", {}}};
                 },
                 {"Line 1 (bag): a shortfall lacks nothing."}},
                {"said without need", [](SoundBatch& b) { b.plan.shortfalls = {{0, 1, "blue", {}}}; },
                 {"Line 1 (bag): it is served and is said to lack 1 pieces."}}});
}

}  // namespace
}  // namespace foldyard
