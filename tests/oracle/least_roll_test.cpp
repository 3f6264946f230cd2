// Rolls of which at least so many of a panel are asked for, against a slow list of
// all that can be cut.

#include <gtest/gtest.h>

#include <cstdio>

#include "core/support/dice.h"
#include "core/support/way_title.h"
#include "inspect/inspect_hand.h"
#include "job/hand_edit.h"
#include "job/roll_desk.h"
#include "oracle/limited_roll.h"
#include "oracle/searched_worth.h"

namespace foldyard {
namespace {

using test::gives_by_the_way;
using test::QuantaJob;

constexpr int kMostCopies = 40;

// More than the cloth has room for.
int most_copies(const QuantaJob& job) { return job.width * job.roll / (job.panels[0].across * job.panels[0].along) + 1; }

class LeastOracle : public testing::TestWithParam<FoldWay> {};

// No plan is worth more than its bound, no bound is less than the optimum, a proved
// plan is the optimum, and what is refused as proved cannot be had. (Of plies that
// give a panel by the way see limited_roll_test.cpp.)
TEST_P(LeastOracle, AgreesWithTheSearch) {
  const FoldWay way = GetParam();
  const unsigned first = test::first_seed();
  int proved = 0, gaps = 0, refused = 0, missed = 0;
  for (unsigned seed = first; seed < first + 24 && !HasFailure(); ++seed) {
    QuantaJob small = test::throw_job(seed, way);
    if (most_copies(small) > kMostCopies) continue;
    const Job job = test::job_of(small);
    const int least = test::Dice(seed + 5).from_to(1, most_copies(small));
    small.panels[0].at_most = most_copies(small);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": at least " + std::to_string(least) + ", " + test::text(small));
    const std::int64_t most = test::worth_with_at_least(small, way, 0, least);
    RollDesk desk(job, 0, Aim::most_worth);
    const Hand hand = with_at_least({}, job.panels[0].name, least);
    const auto plan = desk.within(way, hand);
    if (!plan) {
      const bool is_proved = plan.problem().what.find("proved") != std::string::npos &&
                             plan.problem().what.find("not proved") == std::string::npos;
      if (is_proved && !gives_by_the_way(way)) {
        EXPECT_EQ(most, -1) << plan.problem().what;
      }
      (is_proved || most < 0 ? refused : missed)++;
      continue;
    }
    EXPECT_EQ(inspect_hand(job, *plan, hand), std::vector<std::string>());
    EXPECT_GE(plan->proof.bound.parts(), most);
    EXPECT_LE(plan->worth, plan->proof.bound);
    (plan->proof.proved ? proved : gaps)++;
    if (plan->proof.proved) {
      EXPECT_GE(plan->worth.parts(), most);
    }
    if (!gives_by_the_way(way)) {
      EXPECT_LE(plan->worth.parts(), most);
    }
  }
  RecordProperty("proved", proved);
  std::printf("proved %d, not proved %d, refused %d, missed %d\n", proved, gaps, refused, missed);
}

INSTANTIATE_TEST_SUITE_P(Oracle, LeastOracle, testing::ValuesIn(all_ways(6)), test::way_title);

// Three panels of 4 × 6 side by side, worth 9 together, each of which makes room for two
// of 2 × 6, worth 2; three lengths of 6.
TEST(LeastRoll, CountsWhatAPersonCounts) {
  QuantaJob job = test::job_by_hand();
  job.panels = {{4, 6, false, false, 3}, {2, 6, false, false, 1}};
  job.panels[1].at_most = 19;
  EXPECT_EQ(test::worth_with_at_least(job, {}, 1, 0), 27);
  EXPECT_EQ(test::worth_with_at_least(job, {}, 1, 2), 26);
  EXPECT_EQ(test::worth_with_at_least(job, {}, 1, 3), 25);
  EXPECT_EQ(test::worth_with_at_least(job, {}, 1, 18), 18);
  EXPECT_EQ(test::worth_with_at_least(job, {}, 1, 19), -1);
}

}  // namespace
}  // namespace foldyard
