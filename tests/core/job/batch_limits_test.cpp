#include "job/batch_limits.h"

#include <gtest/gtest.h>

#include "batch/order_pieces.h"
#include "core/support/order_job.h"
#include "job/length_pricer.h"

namespace foldyard {
namespace {

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

TEST(BatchLimits, CountsWhatIsOnHand) {
  OneOfMany of;
  of.job.order.lines[0].must = 5;
  of.job.panels[1].at_most = 3;
  ASSERT_TRUE(over_limit(of.job));
  of.job.on_hand = {{1, "moss", {}, 2}};
  EXPECT_FALSE(over_limit(of.job));
}

}  // namespace
}  // namespace foldyard
