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

// The second line takes the first cloth alone; the first line may take either.
TEST(OrderCase, OpensClothsThatNoneElseCanServeFor) {
  OrderCase order = test::small_case();
  EXPECT_EQ(cloths_opened(order), (std::vector<bool>{true, false}));
  order.lines[0].rules = {{{1}, 1, kAnyNumber}};
  EXPECT_EQ(cloths_opened(order), (std::vector<bool>{true, true}));
  order.lines[0].rules = {{{0, 1}, 1, kAnyNumber}};
  order.on_hand = {{0, 1}};
  EXPECT_EQ(cloths_opened(order), (std::vector<bool>{false, false}));
  order.on_hand.clear();
  order.rolls[0].must = true;  // paid for apart
  EXPECT_EQ(cloths_opened(order), (std::vector<bool>{false, false}));
  order.rolls[0].must = false;
  order.lines[1].must = 0;
  EXPECT_EQ(cloths_opened(order), (std::vector<bool>{false, false}));
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
