#include "job/plan_webbing.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

Job workshop() {
  Job job;
  job.webbings = {{"cotton 30", Length::mm(50'000), Worth::whole(18), {}, {}},
                  {"cord", Length::mm(10'000), Worth::whole(4), {Length::mm(700)}, Length::mm(10)},
                  {"zip", Length::mm(20'000), Worth::whole(9), {}, {}}};
  job.products = {{"carrier", {{0, 1}}, {{0, Length::mm(550), 2}}, Worth::whole(24)},
                  {"sack", {{0, 1}}, {{1, Length::mm(650), 1}, {0, Length::mm(1200), 1}}, Worth::whole(12)}};
  return job;
}

// Common practice, no source: handles of 55 cm in pairs from rolls of 50 m: 45 pairs
// a roll.
TEST(PlanWebbing, CutsHandlesInPairs) {
  const std::vector<WebbingPlan> plans = plan_webbing(workshop(), {45, 0});
  ASSERT_EQ(plans.size(), 1u);
  EXPECT_EQ(plans[0].wanted, (std::vector<WantedLength>{{Length::mm(550), 90}}));
  EXPECT_EQ(plans[0].cuts.rolls, 1);
  EXPECT_EQ(plans[0].price, Worth::whole(18));
  EXPECT_EQ(plan_webbing(workshop(), {46, 0})[0].cuts.rolls, 2);
}

TEST(PlanWebbing, PutsLengthsOfAllProductsTogetherLongestFirst) {
  const std::vector<WebbingPlan> plans = plan_webbing(workshop(), {3, 2});
  ASSERT_EQ(plans.size(), 2u);  // no zip is needed
  EXPECT_EQ(plans[0].webbing, 0);
  EXPECT_EQ(plans[0].wanted, (std::vector<WantedLength>{{Length::mm(1200), 2}, {Length::mm(550), 6}}));
  // Two cords of 65 cm with their loss: one from the end of 70 cm, one from a roll.
  EXPECT_EQ(plans[1].webbing, 1);
  EXPECT_EQ(plans[1].cuts.rolls, 1);
  EXPECT_EQ(plans[1].cuts.cuts[0].end, 0);
  EXPECT_EQ(plans[1].price, Worth::whole(4));
}

TEST(PlanWebbing, CountsPiecesByProduct) {
  Job job = workshop();
  job.order.lines = {{1, 2}, {0, 3}, {1, 1}};
  BatchPlan plan;
  plan.made = {{0, "moss", 1}, {0, "fern", 1}, {1, "moss", 3}, {2, "moss", 1}};
  EXPECT_EQ(pieces_of(job, plan), (std::vector<std::int64_t>{3, 3}));
}

TEST(Winding, IsAsLongAroundAsALengthWithItsLoss) {
  const Winding cord = winding(workshop().webbings[1], Length::mm(650), 12);
  EXPECT_EQ(cord.girth, Length::mm(660));
  EXPECT_EQ(cord.turns, 12);
}

}  // namespace
}  // namespace foldyard
