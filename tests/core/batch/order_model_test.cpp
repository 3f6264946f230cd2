#include "batch/order_model.h"

#include <gtest/gtest.h>

#include "core/support/small_case.h"

namespace foldyard {
namespace {

// In metres and whole currency: blue at 2 a metre, red at 3, both long and without
// squaring; a length of 1 m yields four of the one panel, so a piece costs 0.50.
OrderCase plain_case() {
  OrderCase order;
  order.panels = 1;
  order.kinds = 1;
  order.cloths = {"red", "blue"};
  const Length room = Length::mm(3000);
  order.rolls = {{0, 0, {30'000, 320'000}, Length(), room, {{Length(), room}}, {}, {}},
                 {1, 0, {20'000, 320'000}, Length(), room, {{Length(), room}}, {}, {}}};
  order.sources = {{0, 0, {0}, room}, {1, 0, {1}, room}};
  order.lines = {{100'000, 10, 0, {0, 1}, {{0, 1, {}}}, {}}};
  return order;
}

const LengthPool kPool = {{0, 0, Length::mm(1000), {4}, 1, {}, {}}};

TEST(OrderModel, PricesPanelsByTheCheapestCloth) {
  const OrderCase order = plain_case();
  OrderModel model(order, {1, 100, 1, 10});
  model.allow(0, 0, kPool);
  model.allow(1, 0, kPool);
  model.allow(1, 0, kPool);  // known
  ASSERT_TRUE(model.solve());
  ASSERT_EQ(model.cuts().size(), 1u);
  EXPECT_EQ(model.cuts()[0].source, 1);
  EXPECT_NEAR(model.cuts()[0].times, 2.5, 1e-6);
  EXPECT_NEAR(model.pieces(0, 1), 10, 1e-6);
  EXPECT_NEAR(model.panel_price(1, 0), 0.5, 1e-6);
  EXPECT_NEAR(model.metre_price(1), 2, 1e-6);
  EXPECT_NEAR(model.cost(), 2.5 * 2 - 10 * 10 * 100, 1e-6);
}

// Only blue may serve, 2.5 of its 3 m: its squaring of 0.6 m at 2 counts whole, not for 2.5/3.
TEST(OrderModel, PaysForAWholeRollOfAClothThatMustBeCut) {
  OrderCase order = plain_case();
  order.lines[0].cloths = {1};
  order.rolls[1].squaring = Length::mm(600);
  OrderModel model(order, {1, 100, 1, 10});
  model.allow(1, 0, kPool);
  ASSERT_TRUE(model.solve());
  EXPECT_NEAR(model.cost(), 2.5 * 2 + 0.6 * 2 - 10 * 10 * 100, 1e-6);
  EXPECT_NEAR(model.opening_price(1), 1.2, 1e-6);
  EXPECT_NEAR(model.metre_price(1), 2, 1e-6);  // the last of them costs no more squaring
  EXPECT_NEAR(model.opening_price(0), 0, 1e-6);
}

TEST(OrderModel, CountsWhatIsCutAlready) {
  const OrderCase order = plain_case();
  OrderModel model(order, {1, 100, 1, 10});
  model.allow(0, 0, kPool);
  model.allow(1, 0, kPool);
  OrderState state = empty_state(order);
  ASSERT_TRUE(cut_from(order.rolls[1], state.rolls[1], kPool, 0));
  ASSERT_TRUE(cut_from(order.rolls[1], state.rolls[1], kPool, 0));
  model.set_state(state, kPool);
  ASSERT_TRUE(model.solve());
  EXPECT_NEAR(model.cuts()[0].times, 0.5, 1e-6);
  EXPECT_NEAR(model.pieces(0, 1), 10, 1e-6);
}

TEST(OrderModel, KeepsRulesAndSaysWhatTheyCost) {
  OrderCase order = plain_case();
  order.lines[0].rules = {{{0}, 4, kAnyNumber}, {{1}, 0, 5}};
  OrderModel model(order, {1, 100, 1, 10});
  model.allow(0, 0, kPool);
  model.allow(1, 0, kPool);
  ASSERT_TRUE(model.solve());
  EXPECT_NEAR(model.pieces(0, 0), 5, 1e-6);
  EXPECT_NEAR(model.pieces(0, 1), 5, 1e-6);
  // One more from blue instead of red saves 0.25, 2500 parts.
  EXPECT_EQ(model.rule_price(0, 1, 2).at_most, 5000);
  EXPECT_EQ(model.rule_price(0, 0, 2).at_least, 0);
}

TEST(OrderModel, TakesNamedPanelsFromAnyOfTheirCloths) {
  OrderCase order = plain_case();
  order.lines[0].cloths = {0};
  order.lines[0].needs[0].from = {0, 1};
  OrderModel model(order, {1, 100, 1, 10});
  model.allow(0, 0, kPool);
  model.allow(1, 0, kPool);
  ASSERT_TRUE(model.solve());
  EXPECT_NEAR(model.pieces(0, 0), 10, 1e-6);
  EXPECT_NEAR(model.named(0, 0, 1), 10, 1e-6);
  EXPECT_NEAR(model.named(0, 0, 0), 0, 1e-6);
}

TEST(OrderModel, TakesNoNamedPanelsFromAClothThatIsNotNamed) {
  OrderCase order = plain_case();
  order.lines[0].needs[0].from = {1};
  OrderModel model(order, {1, 100, 1, 10});
  model.allow(0, 0, kPool);
  model.allow(1, 0, kPool);
  ASSERT_TRUE(model.solve());
  EXPECT_NEAR(model.named(0, 0, 1), 10, 1e-6);
  EXPECT_EQ(model.named(0, 0, 0), 0);
}

}  // namespace
}  // namespace foldyard
