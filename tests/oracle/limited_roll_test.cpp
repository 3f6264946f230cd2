// Rolls with limits on copies against a slow list of all that can be cut.

#include "oracle/limited_roll.h"

#include <gtest/gtest.h>

#include <cstdio>

#include "core/support/dice.h"
#include "core/support/fold_ways.h"
#include "core/support/way_title.h"
#include "job/plan_roll.h"
#include "oracle/roll_model.h"
#include "oracle/searched_worth.h"

namespace foldyard {
namespace {

using test::gives_by_the_way;
using test::kHalf;
using test::kOpen;
using test::QuantaJob;

constexpr int kLimitedJobs = 400;

class LimitedOracle : public testing::TestWithParam<FoldWay> {};

// No plan is worth more than its bound, no bound is less than the optimum, and a
// proved plan is the optimum. (A ply that gives a panel by the way, which the
// rule of strips leaves out, may make a plan worth more or pass a limit.)
TEST_P(LimitedOracle, AgreesWithTheSearch) {
  const FoldWay way = GetParam();
  const int ways = static_cast<int>(all_ways(6).size());
  const unsigned first = test::first_seed();
  int proved = 0, gaps = 0;
  for (unsigned seed = first; seed < first + (kLimitedJobs + ways - 1) / ways && !HasFailure(); ++seed) {
    const QuantaJob job = test::throw_limited_job(seed, way);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(job));
    const std::int64_t most = test::limited_worth(job, way);
    const auto plan = plan_roll(test::job_of(job), 0, way, Aim::most_worth);
    if (!plan) {
      if (!gives_by_the_way(way)) {
        EXPECT_EQ(most, 0) << plan.problem().what;
      }
      continue;
    }
    EXPECT_GE(plan->proof.bound.parts(), most);
    EXPECT_LE(plan->worth, plan->proof.bound);
    (plan->proof.proved ? proved : gaps)++;
    if (plan->proof.proved) {
      EXPECT_GE(plan->worth.parts(), most);
    }
    if (plan->proof.proved && !gives_by_the_way(way)) {
      EXPECT_EQ(plan->worth.parts(), most);
    }
  }
  RecordProperty("proved", proved);
  std::printf("proved %d, not proved %d\n", proved, gaps);
}

INSTANTIATE_TEST_SUITE_P(Oracle, LimitedOracle, testing::ValuesIn(all_ways(6)), test::way_title);

// 18 of the roll are three lengths of 6: open three panels each.
QuantaJob limited_by_hand(int at_most) {
  QuantaJob job = test::job_by_hand();
  job.panels[0].at_most = at_most;
  return job;
}

TEST(LimitedRoll, CountsWhatAPersonCounts) {
  for (int most : {0, 1, 5, 8, 9}) EXPECT_EQ(test::limited_worth(limited_by_hand(most), kOpen), most);
  EXPECT_EQ(test::limited_worth(limited_by_hand(20), kOpen), 9);
  // Folded in half one on the fold and two through both plies: any number.
  for (int most : {0, 1, 2, 5, 9}) EXPECT_EQ(test::limited_worth(limited_by_hand(most), kHalf), most);
  // Not on the fold there are pairs only.
  QuantaJob job = limited_by_hand(5);
  job.panels[0].on_fold = false;
  EXPECT_EQ(test::limited_worth(job, kHalf), 4);
}

// One more of a panel never costs worth; a limit beyond the roll is none.
TEST(LimitedRoll, LosesNothingByAHigherLimit) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 60 && !HasFailure(); ++seed) {
    const FoldWay way = seed % 2 ? kOpen : kHalf;
    QuantaJob job = test::throw_limited_job(seed, way);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(job));
    const auto worth = [&] {
      const auto plan = plan_roll(test::job_of(job), 0, way, Aim::most_worth);
      return plan && plan->proof.proved ? plan->worth.parts() : std::int64_t{0};
    };
    const std::int64_t before = worth();
    if (job.panels[0].at_most >= 0) ++job.panels[0].at_most;
    EXPECT_GE(worth(), before);
    for (test::QuantaPanel& p : job.panels) p.at_most = 1'000'000;
    const std::int64_t large = worth();
    for (test::QuantaPanel& p : job.panels) p.at_most = -1;
    EXPECT_EQ(worth(), large);
  }
}

TEST(LimitedRoll, AgreesWithTheSolverWhereNoLimitBinds) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 20; ++seed) {
    const QuantaJob job = test::throw_job(seed, kHalf);
    EXPECT_EQ(test::limited_worth(job, kHalf), test::roll_worth(job, kHalf)) << test::text(job);
  }
}

}  // namespace
}  // namespace foldyard
