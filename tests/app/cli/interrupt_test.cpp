#include "cli/interrupt.h"

#include <gtest/gtest.h>

#include <csignal>

namespace foldyard {
namespace {

TEST(Interrupt, TheFirstStopsTheSearch) {
  const Interruptible interruptible;
  EXPECT_FALSE(interruptible.budget().is_cancelled());
  EXPECT_TRUE(interruptible.complaint().isEmpty());
  std::raise(SIGINT);
  EXPECT_TRUE(interruptible.budget().is_cancelled());
  EXPECT_FALSE(interruptible.complaint().isEmpty());
}

TEST(Interrupt, TheNextSearchBeginsAnew) {
  {
    const Interruptible interruptible;
    std::raise(SIGINT);
  }
  EXPECT_FALSE(Interruptible().budget().is_cancelled());
}

TEST(InterruptDeathTest, TheSecondEndsTheProgram) {
  EXPECT_EXIT(
      {
        const Interruptible interruptible;
        std::raise(SIGINT);
        std::raise(SIGINT);
      },
      testing::KilledBySignal(SIGINT), "");
}

}  // namespace
}  // namespace foldyard
