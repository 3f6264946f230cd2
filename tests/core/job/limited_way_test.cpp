#include "job/limited_way.h"

#include <gtest/gtest.h>

#include "inspect/inspect_plan.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

Job cushions() {
  Job job = default_job();
  Fabric fabric = default_fabric();
  fabric.width = Length::mm(1500);
  fabric.selvedge = Length::mm(10);
  job.rolls = {{"grey", fabric, Length::mm(5000)}};
  job.panels = {{"seat", Length::mm(450), Length::mm(900), false, true, Worth::whole(3), 7},
                {"arm", Length::mm(300), Length::mm(400), true, true, Worth::whole(1), 5}};
  return job;
}

TEST(LimitedWay, ProvesAPlanThatCutsAllThatIsWanted) {
  const Job job = cushions();
  for (const FoldWay& way : {FoldWay{}, FoldWay{FoldKind::selvedge_to_selvedge, 2, false, true}}) {
    const auto plan = LimitedWay(job, 0, Aim::most_worth, way, {}, {}).run(10);
    ASSERT_TRUE(plan) << way_key(way);
    EXPECT_EQ(plan->yield, (std::vector<std::int64_t>{7, 5}));
    EXPECT_TRUE(plan->proof.proved);
    EXPECT_EQ(inspect_plan(job, *plan), std::vector<std::string>());
  }
}

TEST(LimitedWay, FoldsNothingThatGivesMoreThanIsWanted) {
  Job job = cushions();
  for (Panel& p : job.panels) p.on_fold = false, p.at_most = 1;
  const auto plan = LimitedWay(job, 0, Aim::most_worth, {FoldKind::selvedge_to_selvedge, 2, false, true}, {}, {}).run(10);
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().what, "within the limits on copies no panel can be cut so");
}

TEST(LimitedWay, StopsWhenItIsCancelled) {
  const Job job = cushions();
  std::atomic<bool> stop = true;
  const auto plan = LimitedWay(job, 0, Aim::most_worth, FoldWay{}, {40'000'000, &stop}, {}).run(10);
  EXPECT_FALSE(plan);
}

TEST(LimitedWay, BoundsWhatFewStepsCannotProve) {
  Job job = cushions();
  job.panels[0].at_most = 5;
  job.panels[1].at_most.reset();
  const auto full = LimitedWay(job, 0, Aim::most_worth, FoldWay{}, {}, {}).run(30);
  SearchBudget little;
  little.steps = 200;
  const auto cut_short = LimitedWay(job, 0, Aim::most_worth, FoldWay{}, little, {}).run(1);
  ASSERT_TRUE(full);
  ASSERT_TRUE(cut_short);
  EXPECT_LE(full->worth, cut_short->proof.bound);
  EXPECT_LE(cut_short->worth, full->worth);
}

}  // namespace
}  // namespace foldyard
