#include "batch/pin_edits.h"

#include <gtest/gtest.h>

#include "batch_sample.h"
#include "job/check_job.h"

namespace foldyard {
namespace {

std::int64_t lengths_kept(const Job& job) {
  std::int64_t count = 0;
  for (const KeptLength& kept : job.order.kept) count += kept.count;
  return count;
}

TEST(PinEdits, KeepsTheLengthsOfALay) {
  const BatchAnswerPtr answer = sample::answer_of(test::order_job());
  ASSERT_TRUE(can_keep(answer->job, answer->plan, 0));
  const Job kept = with_lay_kept(answer->job, answer->plan, 0);
  EXPECT_EQ(lengths_kept(kept), std::ssize(answer->plan.lays[0].lengths));
  const auto problem = check_job(kept);
  EXPECT_FALSE(problem) << problem->sentence();
}

// Each lay kept once, and all of them again: never more than the plan has.
TEST(PinEdits, KeepsNoMoreLengthsThanThePlanHas) {
  const BatchAnswerPtr answer = sample::answer_of(test::order_job());
  std::int64_t lengths = 0;
  Job job = answer->job;
  for (int round = 0; round < 2; ++round)
    for (int lay = 0; lay < std::ssize(answer->plan.lays); ++lay) job = with_lay_kept(job, answer->plan, lay);
  for (const BatchLay& lay : answer->plan.lays) lengths += std::ssize(lay.lengths);
  EXPECT_EQ(lengths_kept(job), lengths);
  EXPECT_FALSE(can_keep(job, answer->plan, 0));
}

TEST(PinEdits, ThePlanHasTheLengthsThatAreKept) {
  const BatchAnswerPtr answer = sample::answer_of(test::order_job());
  Job job = with_lay_kept(answer->job, answer->plan, 0);
  job.order.lines[1].must = 2;
  const auto next = sample::quick_plan(job, {});
  ASSERT_TRUE(next) << next.problem().sentence();
  Job again = job;
  again.order.kept.clear();
  for (int lay = 0; lay < std::ssize(next->lays); ++lay) again = with_lay_kept(again, *next, lay);
  for (const KeptLength& kept : job.order.kept) {
    std::int64_t found = 0;
    for (KeptLength each : again.order.kept) {
      const std::int64_t count = std::exchange(each.count, kept.count);
      if (each == kept) found += count;
    }
    EXPECT_GE(found, kept.count);
  }
}

TEST(PinEdits, SaysWhetherARollIsCut) {
  EXPECT_EQ(with_in_batch(test::order_job(), 1, InBatch::must).rolls[1].in_batch, InBatch::must);
}

}  // namespace
}  // namespace foldyard
