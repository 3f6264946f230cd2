#include "batch/order_fill.h"

#include <gtest/gtest.h>

#include "core/support/small_case.h"

namespace foldyard {
namespace {

using test::kAreas;

TEST(OrderFill, CutsWhatGivesMostOfWhatIsNeeded) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  OrderState state = empty_state(order);
  // Of panel 1 one is needed: of the 10 only three of panel 0 count, 12 for 10; of the
  // 6 both, 10 for 6.
  const auto unmet = fill_needs({order, pool, kAreas, {}}, 0, {1, 2}, state);
  EXPECT_EQ(unmet, (std::vector<std::int64_t>{0, 0}));
  EXPECT_EQ(state.rolls[0].lengths, (std::vector<StateLength>{{1, 0}}));
  EXPECT_TRUE(state.rolls[1].lengths.empty());
}

TEST(OrderFill, SaysWhatFoundNoRoom) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  OrderState state = empty_state(order);
  // Blue has room for 25: two lengths of 10 with three each.
  EXPECT_EQ(fill_needs({order, pool, kAreas, {}}, 1, {8, 0}, state), (std::vector<std::int64_t>{2, 0}));
}

TEST(OrderFill, CutsNothingOnceStopped) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  OrderState state = empty_state(order);
  const std::atomic<bool> stopped = true;
  EXPECT_EQ(fill_needs({order, pool, kAreas, {}, {}, &stopped}, 0, {1, 2}, state), (std::vector<std::int64_t>{1, 2}));
  EXPECT_TRUE(state.rolls[0].lengths.empty());
}

TEST(OrderFill, TakesTheLastLengthWhereItHoldsAll) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  OrderState state = empty_state(order);
  const LastLength last = [&](int kind, int way, const std::vector<std::int64_t>& needs, Length most) -> std::optional<int> {
    EXPECT_EQ(kind, 0);
    EXPECT_EQ(way, 0);
    EXPECT_EQ(most, Length::units(40));
    pool.push_back({0, 0, Length::units(5), needs, 1, {}, {}});
    return static_cast<int>(pool.size()) - 1;
  };
  EXPECT_EQ(fill_needs({order, pool, kAreas, last, {1}}, 0, {1, 2}, state), (std::vector<std::int64_t>{0, 0}));
  EXPECT_EQ(state.rolls[0].lengths, (std::vector<StateLength>{{3, 0}}));
}

// No last length is found, or one that has no room: then it is the pool's.
TEST(OrderFill, CutsLengthsItKnowsWhereNoLastOneServes) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  pool.push_back({0, 0, Length::units(41), {1, 2}, 1, {}, {}});
  for (const std::optional<int> last : {std::optional<int>(), std::optional<int>(3)}) {
    OrderState state = empty_state(order);
    const auto find = [&](int, int, const std::vector<std::int64_t>&, Length) { return last; };
    EXPECT_EQ(fill_needs({order, pool, kAreas, find, {2}}, 0, {1, 2}, state), (std::vector<std::int64_t>{0, 0}));
    EXPECT_EQ(state.rolls[0].lengths, (std::vector<StateLength>{{1, 0}}));
  }
}

TEST(OrderFill, PrefersARollThatIsCutAlready) {
  OrderCase order = test::small_case();
  order.rolls[1] = test::case_roll(0, 60, 3);
  order.sources = {{0, 0, {0, 1}, Length::units(60)}};
  const LengthPool pool = test::small_pool();
  OrderState state = empty_state(order);
  EXPECT_TRUE(cut_from_source(order, pool, order.sources[0], 0, state));
  EXPECT_EQ(state.rolls[1].lengths.size(), 1u);  // the longest
  ASSERT_TRUE(cut_from(order.rolls[0], state.rolls[0], pool, 0));
  EXPECT_TRUE(cut_from_source(order, pool, order.sources[0], 0, state));
  EXPECT_EQ(state.rolls[0].lengths.size(), 2u);  // the one with less room
}

}  // namespace
}  // namespace foldyard
