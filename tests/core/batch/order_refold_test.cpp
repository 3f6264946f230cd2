#include "batch/order_refold.h"

#include <gtest/gtest.h>

#include "core/support/small_case.h"

namespace foldyard {
namespace {

using test::kAreas;
using test::two_of_six;

// A length of 11 that holds twice what the one of 6 does: an allowance less.
FillTools with_one_of_eleven(const OrderCase& order, LengthPool& pool) {
  pool.push_back({0, 1, Length::units(11), {2, 4}, 2, Duration::ticks(7), Duration::ticks(100)});
  return {order, pool, kAreas, [](int, int way, const std::vector<std::int64_t>& needs, Length most) -> std::optional<int> {
            if (way == 1 && needs[0] <= 2 && needs[1] <= 4 && most >= Length::units(11)) return 3;
            return std::nullopt;
          }};
}

TEST(OrderRefold, CutsTwoLengthsAsOne) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  const FillTools tools = with_one_of_eleven(order, pool);
  OrderState state = two_of_six(order, pool);
  EXPECT_TRUE(refold(tools, {2}, 100, state));
  EXPECT_EQ(state.rolls[0].lengths, (std::vector<StateLength>{{3, 0}}));
  EXPECT_EQ(score_of(order, state, pool).cost, 3 * (2 + 11));
}

TEST(OrderRefold, LeavesTwoAsTheyAreWhereEachIsToBeFolded) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  const FillTools tools = with_one_of_eleven(order, pool);
  OrderState state = two_of_six(order, pool);
  EXPECT_FALSE(refold_each(tools, {2}, 100, state));
  EXPECT_EQ(state.rolls[0].lengths.size(), 2u);
}

TEST(OrderRefold, LeavesWhatIsKept) {
  OrderCase order = test::small_case();
  order.rolls[0].kept = 1;
  LengthPool pool = test::small_pool();
  const FillTools tools = with_one_of_eleven(order, pool);
  OrderState state = two_of_six(order, pool);
  EXPECT_FALSE(refold(tools, {2}, 100, state));
  EXPECT_EQ(state.rolls[0].lengths.size(), 2u);
}

// The same cloth in less time: open both lengths lie in one lay of 100, folded they take two
// of 20.
TEST(OrderRefold, TakesAnotherWayForTheAimThatComesNext) {
  OrderCase order = test::small_case();
  order.aims = {CaseAim::cost, CaseAim::minutes};
  LengthPool pool = test::small_pool();
  pool.push_back({0, 1, Length::units(6), {1, 2}, 2, Duration::ticks(7), Duration::ticks(20)});
  const FillTools tools{order, pool, kAreas, [](int, int way, const std::vector<std::int64_t>&, Length) -> std::optional<int> {
                          return way == 1 ? std::optional<int>(3) : std::nullopt;
                        }};
  OrderState state = two_of_six(order, pool);
  const OrderScore before = score_of(order, state, pool);
  EXPECT_TRUE(refold(tools, {2}, 1, state));
  const OrderScore after = score_of(order, state, pool);
  EXPECT_EQ(after.cost, before.cost);
  EXPECT_LT(after.ticks, before.ticks);
}

// Each way is held against the best so far, not against the first.
TEST(OrderRefold, GoesOnFromTheWayThatWasBetter) {
  OrderCase order = test::small_case();
  order.aims = {CaseAim::cost, CaseAim::minutes};
  LengthPool pool = test::small_pool();
  pool.push_back({0, 1, Length::units(6), {1, 2}, 2, Duration::ticks(7), Duration::ticks(20)});
  pool.push_back({0, 2, Length::units(6), {1, 2}, 2, Duration::ticks(7), Duration::ticks(10)});
  const FillTools tools{order, pool, kAreas, [](int, int way, const std::vector<std::int64_t>&, Length) -> std::optional<int> {
                          return way > 0 ? std::optional<int>(2 + way) : std::nullopt;
                        }};
  OrderState state = two_of_six(order, pool);
  EXPECT_TRUE(refold_each(tools, {3}, 10, state));
  EXPECT_EQ(state.rolls[0].lengths, (std::vector<StateLength>{{4, 0}, {4, 0}}));
}

TEST(OrderRefold, LeavesAllAsItIsWhereNoLengthIsLookedFor) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  OrderState state = two_of_six(order, pool);
  const FillTools tools{order, pool, kAreas, {}};
  EXPECT_FALSE(refold(tools, {2}, 100, state));
  EXPECT_FALSE(refold_each(tools, {2}, 100, state));
  EXPECT_EQ(state.rolls, two_of_six(order, pool).rolls);
}

// One try looks for another way of the single length and none is left for two as one.
TEST(OrderRefold, LooksForNoMoreLengthsThanItMay) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  int tries = 0;
  FillTools tools = with_one_of_eleven(order, pool);
  tools.last = [&, last = tools.last](int kind, int way, const auto& needs, Length most) { return ++tries, last(kind, way, needs, most); };
  for (const int most : {0, 1, 2}) {
    OrderState state = two_of_six(order, pool);
    tries = 0;
    EXPECT_FALSE(refold(tools, {3}, most, state)) << most;
    EXPECT_EQ(tries, most);
    EXPECT_EQ(state.rolls[0].lengths.size(), 2u);
  }
}

TEST(OrderRefold, LooksForNothingOnceStopped) {
  const OrderCase order = test::small_case();
  LengthPool pool = test::small_pool();
  const std::atomic<bool> stopped = true;
  FillTools tools = with_one_of_eleven(order, pool);
  tools.cancelled = &stopped;
  OrderState state = two_of_six(order, pool);
  EXPECT_FALSE(refold(tools, {3}, 100, state));
  EXPECT_EQ(state.rolls, two_of_six(order, pool).rolls);
}

// A length of 12 costs what two of 6 do.
TEST(OrderRefold, KeepsTwoWhereOneCostsNoLess) {
  OrderCase order = test::small_case();
  order.aims = {CaseAim::cost};
  LengthPool pool = test::small_pool();
  pool.push_back({0, 1, Length::units(12), {2, 4}, 2, Duration::ticks(7), Duration::ticks(100)});
  const FillTools tools{order, pool, kAreas, [](int, int way, const std::vector<std::int64_t>&, Length most) -> std::optional<int> {
                          return way == 1 && most >= Length::units(12) ? std::optional<int>(3) : std::nullopt;
                        }};
  OrderState state = two_of_six(order, pool);
  EXPECT_FALSE(refold(tools, {2}, 100, state));
  EXPECT_EQ(state.rolls, two_of_six(order, pool).rolls);
}

// What is found under another way may be the length that is cut.
TEST(OrderRefold, TakesNothingForTheLengthItIs) {
  OrderCase order = test::small_case();
  order.aims = {CaseAim::cost, CaseAim::minutes};
  LengthPool pool = test::small_pool();
  const FillTools tools{order, pool, kAreas, [](int, int, const std::vector<std::int64_t>&, Length) -> std::optional<int> { return 1; }};
  OrderState state = two_of_six(order, pool);
  EXPECT_FALSE(refold_each(tools, {3}, 100, state));
  EXPECT_EQ(state.rolls, two_of_six(order, pool).rolls);
}

}  // namespace
}  // namespace foldyard
