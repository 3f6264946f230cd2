#include "measure/stop.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

TEST(Stop, IsSetOnlyWhereThereIsAFlagThatIs) {
  std::atomic<bool> stopped = false;
  EXPECT_FALSE(is_set(nullptr));
  EXPECT_FALSE(is_set(&stopped));
  stopped = true;
  EXPECT_TRUE(is_set(&stopped));
}

}  // namespace
}  // namespace foldyard
