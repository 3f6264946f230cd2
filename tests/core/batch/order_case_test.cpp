#include "batch/order_case.h"

#include <gtest/gtest.h>

#include "core/support/small_case.h"

namespace foldyard {
namespace {

TEST(OrderCase, WantsPanelsOfTheClothsThatServe) {
  OrderCase order = test::small_case();
  EXPECT_EQ(panels_wanted(order), (std::vector<std::vector<bool>>{{true, true}, {true, false}}));
  order.lines[1].needs[0].from = {1};  // a lining
  EXPECT_EQ(panels_wanted(order), (std::vector<std::vector<bool>>{{true, false}, {true, true}}));
}

TEST(ClothPrice, RoundsTheWorthOfALengthDown) {
  const ClothPrice price{80'000, 320'000};  // 8.00 a metre
  EXPECT_EQ(price.of(Length::mm(1840)), 147'200);
  EXPECT_EQ(price.of(Length::units(3)), 0);
  EXPECT_EQ(price.of(Length::units(3), 4), 3);
  EXPECT_DOUBLE_EQ(price.by_metre(), 8.0);
}

}  // namespace
}  // namespace foldyard
