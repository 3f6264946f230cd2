#include "job/area_bound.h"

#include <gtest/gtest.h>

#include "core/support/order_job.h"

namespace foldyard {
namespace {

// 7.8 m × 1.38 m between losses and selvedges = 10.764 m²; the pocket, 1 for 0.046 m²,
// is worth most for its area: 234.
TEST(AreaBound, CountsUsableClothAtTheBestWorthForItsArea) {
  const Job job = test::order_job();
  EXPECT_EQ(area_bound(job, job.rolls[0]), Worth::whole(234));
}

}  // namespace
}  // namespace foldyard
