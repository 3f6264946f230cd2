#include "measure/sort_unique.h"

#include <gtest/gtest.h>

#include "measure/length.h"

namespace foldyard {
namespace {

TEST(SortUnique, KeepsEachOnceInOrder) {
  std::vector<Length> lengths = {Length::mm(3), Length::mm(1), Length::mm(3), Length::mm(2), Length::mm(1)};
  sort_unique(lengths);
  EXPECT_EQ(lengths, (std::vector<Length>{Length::mm(1), Length::mm(2), Length::mm(3)}));
}

TEST(SortUnique, LeavesNothingAsNothing) {
  std::vector<int> none;
  sort_unique(none);
  EXPECT_TRUE(none.empty());
}

}  // namespace
}  // namespace foldyard
