#include "job/write_batch.h"

#include <gtest/gtest.h>

#include "batch/order_pieces.h"
#include "core/support/fold_ways.h"
#include "core/support/order_job.h"
#include "inspect/inspect_batch.h"
#include "job/length_pricer.h"

namespace foldyard {
namespace {

using test::kOpenOnly;

// Lengths of three bodies, of six bodies and of pockets, cut from the rolls as asked.
struct WriterSetting {
  Job job;
  Result<BatchCase> c;
  BatchLengths lengths;
  OrderState state;

  explicit WriterSetting(Job j)
      : job(std::move(j)), c(batch_case(job)), lengths(job, *c), state(empty_state(c->order)) {
    for (const std::vector<std::int64_t>& prices : {std::vector<std::int64_t>{1, 0, 0}, {0, 1, 0}}) {
      LengthPricer pricer(job, c->kinds[0].cloth, prices, 40'000'000);
      for (const PricedLength& l : pricer.lengths(kOpenOnly))
        if (lengths.pool().size() < 3) lengths.add(0, 0, pricer.pattern(l, kOpenOnly));
    }
  }
  void cut(int roll, int length) {
    ASSERT_TRUE(cut_from(c->order.rolls[static_cast<std::size_t>(roll)], state.rolls[static_cast<std::size_t>(roll)],
                         lengths.pool(), length));
  }
  BatchPlan written() {
    state.pieces = pieces_from(c->order, yield_of(c->order, state, lengths.pool()), state.pieces);
    BatchPlan plan = write_batch(job, *c, lengths, state);
    plan.filled_bound = Worth::whole(1'000);
    return plan;
  }
};

// Equal patterns of rolls with other selvedges are slit elsewhere, each in a lay of its own.
TEST(WriteBatch, LaysNoClothsOverEachOtherWhoseSelvedgesDiffer) {
  const auto lifts = [](int selvedge) {
    Job job = test::order_job();
    job.rolls[2].fabric.selvedge = Length::mm(selvedge);
    job.rolls[2].fabric.width = Length::mm(1380 + 2 * selvedge);
    WriterSetting s(job);
    s.cut(0, 0);
    s.cut(2, 0);
    return s.written().lifts;
  };
  EXPECT_EQ(lifts(10), 1);
  EXPECT_EQ(lifts(20), 2);
}

TEST(WriteBatch, WritesASoundPlan) {
  WriterSetting s(test::order_job());
  s.cut(0, 0);
  s.cut(0, 1);
  s.cut(0, 2);
  s.cut(2, 0);
  s.cut(2, 2);
  const BatchPlan plan = s.written();
  EXPECT_EQ(inspect_batch(s.job, plan), std::vector<std::string>());
  ASSERT_EQ(plan.rolls.size(), 2u);
  EXPECT_EQ(plan.rolls[1].roll, 2);
  // The longest length first: 1840, 940, then pockets of 200 with 40.
  EXPECT_EQ(plan.rolls[0].lengths.front().on_roll.size(), Length::mm(1'840));
  EXPECT_EQ(plan.rolls[0].remnant.from, Length::mm(100 + 1'840 + 940 + 240));
  // Moss 3.12 m at 8, sand 0.10 + 0.94 + 0.24 at 10.
  EXPECT_EQ(plan.cost, Worth::parts(249'600 + 128'000));
  // Equal patterns of both rolls lie in one lay.
  EXPECT_EQ(plan.lifts, 3);
}

TEST(WriteBatch, CutsOutWhereAStretchIsLeft) {
  Job job = test::order_job();
  job.rolls[0].flaws = {{{Length::mm(2'000), Length::mm(2'100)}, {Length::mm(500), Length::mm(600)}, "stain"}};
  WriterSetting s(job);
  s.cut(0, 1);  // 1840 in the 1900 before the flaw
  s.cut(0, 0);
  const BatchPlan plan = s.written();
  EXPECT_EQ(inspect_batch(s.job, plan), std::vector<std::string>());
  EXPECT_EQ(plan.rolls[0].cut_out, (std::vector<Span>{{Length::mm(1'940), Length::mm(2'100)}}));
  EXPECT_TRUE(plan.rolls[0].lost.empty());
}

TEST(WriteBatch, HoldsNoMoreInALayThanTheCutterTakes) {
  Job job = test::order_job();
  job.cutter.most_plies = 2;
  WriterSetting s(job);
  for (int n = 0; n < 5; ++n) s.cut(0, 0);
  const BatchPlan plan = s.written();
  EXPECT_EQ(inspect_batch(s.job, plan), std::vector<std::string>());
  EXPECT_EQ(plan.lifts, 3);
  EXPECT_EQ(plan.rolls[0].lays.size(), 3u);
}

}  // namespace
}  // namespace foldyard
