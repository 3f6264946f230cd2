#include "job/batch_limits.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "batch/order_pieces.h"
#include "core/support/fold_ways.h"
#include "core/support/order_job.h"
#include "job/length_pricer.h"

namespace foldyard {
namespace {

using test::kHalf;

// A length with more than one pocket, of which the order takes one.
struct OneOfMany {
  Job job = test::order_job();
  BatchCase c;
  OneOfMany() {
    job.products = {{"pocket", {{1, 1}}, {}, Worth::whole(3)}};
    job.order.lines = {{0, 1, 0, {}, 0, {}}};
    c = *batch_case(job);
  }
};

TEST(BatchLimits, LeavesSparePanelsUncut) {
  OneOfMany of;
  of.job.panels[1].at_most = 2;
  BatchLengths lengths(of.job, of.c);
  const std::vector<std::int64_t> prices{0, 5, 0};
  LengthPricer pricer(of.job, of.c.kinds[0].cloth, prices, 1'000'000);
  const auto priced = pricer.lengths(std::vector<FoldWay>{FoldWay{}});
  ASSERT_FALSE(priced.empty());
  const int length = lengths.add(0, 0, pricer.pattern(priced[0], {FoldWay{}}));
  const std::int64_t many = lengths.pool()[0].yield[1];
  ASSERT_GT(many, 2);
  OrderState state = empty_state(of.c.order);
  state.rolls[0].lengths = {{length, 0}};
  state.pieces = pieces_from(of.c.order, yield_of(of.c.order, state, lengths.pool()), state.pieces);
  const OrderState held = hold_limits(of.job, of.c, lengths, state);
  const ByClothAndPanel left = yield_of(of.c.order, held, lengths.pool());
  EXPECT_EQ(left[0][1], 2);
  EXPECT_EQ(held.pieces, state.pieces);
  EXPECT_EQ(lengths.pool()[static_cast<std::size_t>(held.rolls[0].lengths[0].length)].size, lengths.pool()[0].size);
}

// All plies of a take are cut or left together: of three that are spare, two would be left with
// one that is taken.
TEST(BatchLimits, LeavesNoMoreUncutThanAreSpare) {
  OneOfMany of;
  of.job.panels[1].on_fold = false;
  BatchLengths lengths(of.job, of.c);
  const std::vector<std::int64_t> prices{0, 5, 0};
  LengthPricer pricer(of.job, of.c.kinds[0].cloth, prices, 1'000'000);
  const auto priced = pricer.lengths(std::vector<FoldWay>{kHalf});
  ASSERT_FALSE(priced.empty());
  const std::vector<FoldWay>& ways = of.c.kinds[0].ways;
  const int way = static_cast<int>(std::find(ways.begin(), ways.end(), kHalf) - ways.begin());
  const int length = lengths.add(0, way, pricer.pattern(priced.back(), {kHalf}));  // the longest
  const std::int64_t many = lengths.pool()[0].yield[1];
  ASSERT_GE(many, 6);
  OrderState state = empty_state(of.c.order);
  state.rolls[0].lengths = {{length, 0}};
  for (const std::int64_t spare : {3, 4}) {
    of.c.order.lines[0].must = many - spare;
    of.job.panels[1].at_most = many - spare;
    state.pieces = pieces_from(of.c.order, yield_of(of.c.order, state, lengths.pool()), empty_state(of.c.order).pieces);
    const OrderState held = hold_limits(of.job, of.c, lengths, state);
    EXPECT_EQ(yield_of(of.c.order, held, lengths.pool())[0][1], spare == 3 ? many : many - 4);
  }
}

// Whatever is cut of it, a length stays on its roll.
TEST(BatchLimits, StaysAsItIsWhereAllOfALengthIsSpare) {
  OneOfMany of;
  of.job.panels[1].at_most = 1;
  BatchLengths lengths(of.job, of.c);
  const std::vector<std::int64_t> prices{0, 5, 0};
  LengthPricer pricer(of.job, of.c.kinds[0].cloth, prices, 1'000'000);
  const int length = lengths.add(0, 0, pricer.pattern(pricer.lengths({FoldWay{}})[0], {FoldWay{}}));
  OrderState state = empty_state(of.c.order);
  state.rolls[0].lengths = {{length, 0}, {length, 0}};
  const OrderState held = hold_limits(of.job, of.c, lengths, state);
  EXPECT_EQ(held.rolls[0].lengths, state.rolls[0].lengths);
}

TEST(BatchLimits, CountsWhatIsOnHand) {
  OneOfMany of;
  of.job.order.lines[0].must = 5;
  of.job.panels[1].at_most = 3;
  ASSERT_TRUE(over_limit(of.job));
  of.job.on_hand = {{0, "moss", {}, 9}};  // another panel
  ASSERT_TRUE(over_limit(of.job));
  of.job.on_hand.push_back({1, "moss", {}, 2});
  EXPECT_FALSE(over_limit(of.job));
}

}  // namespace
}  // namespace foldyard
