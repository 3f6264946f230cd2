#include "job/most_abreast.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::mm;

Job two_rolls() {
  Job job;
  job.rolls.resize(2);
  for (Roll& roll : job.rolls) roll.fabric.width = mm(1'420), roll.fabric.selvedge = mm(10);
  job.panels.resize(3);
  job.panels[0].across = mm(100), job.panels[0].along = mm(200);
  job.panels[1].across = job.panels[1].along = mm(450);
  job.panels[2].across = job.panels[2].along = mm(50);
  job.products.resize(2);
  job.products[0].panels = {{0, 1, {}}, {1, 2, {}}};
  job.products[1].panels = {{0, 3, {}}};
  return job;
}

TEST(MostAbreast, IsTheExampleOfItsHeader) { EXPECT_EQ(most_abreast(two_rolls()), 34); }

TEST(MostAbreast, CountsNoRollThatTheBatchMayNotCut) {
  Job job = two_rolls();
  job.rolls[1].in_batch = InBatch::never;
  EXPECT_EQ(most_abreast(job), 17);
}

// Whichever way round it lies.
TEST(MostAbreast, CountsAPanelByItsSmallerSide) {
  Job job = two_rolls();
  std::swap(job.panels[0].across, job.panels[0].along);
  EXPECT_EQ(most_abreast(job), 34);
}

}  // namespace
}  // namespace foldyard
