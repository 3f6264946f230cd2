#include "job/panel_away.h"

#include <gtest/gtest.h>

#include "job/check_job.h"
#include "support/job_sample.h"

namespace foldyard {
namespace {

// Panels Carrier, Pouch, Strap; a bag of two carriers and a strap.
Job with_bag() {
  Job job = sample::job();
  job.panels.push_back({"Strap", Length::mm(80), Length::mm(600), false, true, Worth::whole(1)});
  job.products.push_back({"Bag", {{0, 2}, {2, 1}}, {}, Worth::whole(30)});
  return job;
}

TEST(PanelAway, MovesThePanelsOfProducts) {
  const Job job = with_bag();
  const auto next = without_panel(job, 1);
  ASSERT_TRUE(next) << next.problem().sentence();
  ASSERT_EQ(next->panels.size(), 2u);
  EXPECT_EQ(next->panels[1], job.panels[2]);
  EXPECT_EQ(next->products[0].panels, (std::vector<PanelCount>{{0, 2}, {1, 1}}));
  EXPECT_FALSE(check_job(*next));
}

TEST(PanelAway, MovesNothingBeforeIt) {
  Job job = with_bag();
  job.products[0].panels = {{0, 2}, {1, 1}};
  const auto next = without_panel(job, 2);
  ASSERT_TRUE(next);
  EXPECT_EQ(next->products, job.products);
}

TEST(PanelAway, RefusesAPanelThatAProductIsSewnFrom) {
  const auto next = without_panel(with_bag(), 2);
  ASSERT_FALSE(next);
  EXPECT_EQ(next.problem().sentence(),
            "panels[2]: the product \"Bag\" is sewn from it; take it out of the product first.");
}

TEST(PanelAway, MovesWhatIsOnHandAndInTheRecords) {
  Job job = with_bag();
  job.on_hand = {{2, "Moss", {}, 4}};
  job.history = {{"Monday", 1, {{0, "Moss", {}, 2}, {2, "Moss", {}, 4}}, {{2, "Moss", {}, 1}}}};
  const auto next = without_panel(job, 1);
  ASSERT_TRUE(next);
  EXPECT_EQ(next->on_hand[0].panel, 1);
  EXPECT_EQ(next->history[0].panels[0].panel, 0);
  EXPECT_EQ(next->history[0].panels[1].panel, 1);
  EXPECT_EQ(next->history[0].spoilt[0].panel, 1);
}

TEST(PanelAway, RefusesAPanelThatIsCut) {
  Job on_hand = with_bag(), recorded = with_bag();
  on_hand.on_hand = {{1, "Moss", {}, 4}};
  recorded.history = {{"Monday", 1, {{1, "Moss", {}, 4}}}};
  EXPECT_FALSE(without_panel(on_hand, 1));
  EXPECT_FALSE(without_panel(recorded, 1));
}

TEST(PanelAway, RefusesTheLastPanel) {
  Job job = sample::job();
  job.panels.pop_back();
  const auto next = without_panel(job, 0);
  ASSERT_FALSE(next);
  EXPECT_EQ(next.problem().where, "panels[0]");
}

TEST(PanelAway, RefusesAPanelOfALengthThatIsKeptAndMovesThoseBehindIt) {
  Job job = with_bag();
  job.order.kept = {{"Moss", 1, Length::mm(600), {}, {}, {{NodeKind::take, Direction::along, {}, 2}}}};
  EXPECT_EQ(without_panel(job, 1)->order.kept[0].steps[0].panel, 1);
  job.products.clear();
  EXPECT_EQ(without_panel(job, 2).problem().sentence(),
            "panels[2]: a length that is kept on \"Moss\" has it; let that length go first.");
}

// The cut names no panel, whatever stands in its place.
TEST(PanelAway, TakesACutOfALengthThatIsKeptForNoPanel) {
  Job job = with_bag();
  job.products.clear();
  job.order.kept = {{"Moss", 1, Length::mm(600), {}, {}, {{NodeKind::cut, Direction::along, Length::mm(300), 1}, {NodeKind::take, Direction::along, {}, 2}}}};
  const auto next = without_panel(job, 1);
  ASSERT_TRUE(next) << next.problem().sentence();
  EXPECT_EQ(next->order.kept[0].steps[1].panel, 1);
}

}  // namespace
}  // namespace foldyard
