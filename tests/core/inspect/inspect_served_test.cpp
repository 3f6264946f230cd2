#include <gtest/gtest.h>

#include "core/inspect/sound_batch.h"
#include "inspect/inspect_batch.h"

namespace foldyard {
namespace {

TEST(InspectServed, CountsPanelsClothByCloth) {
  expect_found({{"four blue bags need eight carriers",
                 [](SoundBatch& b) {
                   b.plan.made = {{0, "blue", 4}, {0, "green", 2}};
                 },
                 {"Of blue, 2 of carrier are missing for the pieces made of it."}},
                {"a panel nobody cuts",
                 [](SoundBatch& b) { b.job.products[0].panels.push_back({1, 1}); },
                 {"Of blue, 3 of pouch are missing for the pieces made of it.",
                  "Of green, 3 of pouch are missing for the pieces made of it."}}});
}

// A bag of one outer carrier of its own cloth and one lining from the named cloth.
SoundBatch lined(const std::vector<std::string>& from, std::int64_t blue, std::int64_t green) {
  SoundBatch batch = sound_batch();
  batch.job.products[0].panels = {{0, 1}};
  batch.job.panels.push_back(batch.job.panels[0]);
  batch.job.panels[2].name = "lining";
  for (Plan& roll : batch.plan.rolls) roll.yield.push_back(0);
  // The second panel of each pattern (two of three) is a lining.
  for (Plan& roll : batch.plan.rolls) {
    Pattern& pattern = roll.patterns[0];
    for (PlacedPanel& placed : pattern.panels) placed.panel = placed.on_fold ? 0 : 2;
    for (CutNode& node : pattern.tree.nodes) {
      if (node.kind == NodeKind::take) node.panel = node.rect.across.from == Length() ? 0 : 2;
    }
    roll.yield = {2, 0, 4};
  }
  batch.job.products[0].panels.push_back({2, 1, from});
  batch.line().each_at_least = 0;
  batch.line().must = 1;
  batch.line().may = 5;
  batch.plan.made = {{0, "blue", blue}, {0, "green", green}};
  batch.plan.filled = batch.plan.filled_bound = Worth::whole(10);
  batch.plan.cost = batch.plan.cost_bound = Worth::parts(368'000) - Worth::whole(10) * (blue + green - 1);
  return batch;
}

TEST(InspectServed, LetsALiningComeFromAnyOfItsCloths) {
  for (const auto& from : {std::vector<std::string>{"blue", "green"}, {"leafy"}, {"blue"}}) {
    const SoundBatch batch = lined(from, 2, 2);
    EXPECT_EQ(inspect_batch(batch.job, batch.plan), std::vector<std::string>()) << from[0];
  }
}

TEST(InspectServed, CountsLiningsOfTheNamedClothOnly) {
  SoundBatch batch = lined({"leafy"}, 2, 2);
  batch.job.products[0].panels[1].count = 2;  // eight wanted, four green ones there
  EXPECT_EQ(inspect_batch(batch.job, batch.plan),
            (std::vector<std::string>{"4 of lining are missing for pieces that take them from other cloth."}));
  batch.job.products[0].panels[1].from = {"leafy", "blue"};
  EXPECT_EQ(inspect_batch(batch.job, batch.plan), std::vector<std::string>());
}

// Two products: the first may take linings of either cloth and is asked first,
// the second of blue only. The first has to leave the blue ones to the second.
TEST(InspectServed, MovesAWishToAnotherClothWhereThatMakesRoom) {
  SoundBatch batch = lined({"blue", "green"}, 2, 2);
  batch.job.products.push_back(batch.job.products[0]);
  batch.job.products[1].name = "case";
  batch.job.products[1].panels = {{2, 4, {"blue"}}};
  batch.job.order.lines.push_back({1, 1, 0});
  batch.plan.made.push_back({1, "blue", 1});
  batch.plan.filled = batch.plan.filled_bound = Worth::whole(20);
  EXPECT_EQ(inspect_batch(batch.job, batch.plan), std::vector<std::string>());
  batch.job.products[1].panels[0].count = 5;
  EXPECT_EQ(inspect_batch(batch.job, batch.plan),
            (std::vector<std::string>{"1 of lining are missing for pieces that take them from other cloth."}));
}

}  // namespace
}  // namespace foldyard
