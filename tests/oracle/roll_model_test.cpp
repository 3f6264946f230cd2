// The search of a whole roll against a general solver.
//
// The model shares no code with the search: plates and cuts are unknowns of a
// whole-number model, folds and slits are tried at every position (see
// roll_model.h, fold_positions.h). 500 jobs, spread over all fold ways.

#include "oracle/roll_model.h"

#include <gtest/gtest.h>

#include "core/support/dice.h"
#include "core/support/way_title.h"
#include "job/plan_roll.h"

namespace foldyard {
namespace {

using test::QuantaJob;

constexpr FoldWay kOpen{};
constexpr FoldWay kHalf{FoldKind::selvedge_to_selvedge, 2, false, true};
constexpr int kJobs = 500;

std::int64_t worth_by_search(const QuantaJob& job, const FoldWay& way) {
  const auto plan = plan_roll(test::job_of(job), 0, way, Aim::most_worth);
  return plan ? plan->worth.parts() : 0;
}

class SolverOf : public testing::TestWithParam<FoldWay> {};

TEST_P(SolverOf, AgreesWithTheSearch) {
  const FoldWay way = GetParam();
  const int ways = static_cast<int>(all_ways(6).size());
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + (kJobs + ways - 1) / ways && !HasFailure(); ++seed) {
    const QuantaJob job = test::throw_job(seed, way);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(job));
    EXPECT_EQ(worth_by_search(job, way), test::roll_worth(job, way));
  }
}

INSTANTIATE_TEST_SUITE_P(Oracle, SolverOf, testing::ValuesIn(all_ways(6)), test::way_title);

// Cloth 14 wide with selvedges of 1, one panel of 4 × 6 that may be cut on the
// fold; roll of 20, each end squared by 1, no allowance.
QuantaJob by_hand() {
  QuantaJob job;
  job.panels = {{4, 6, false, true, 1}};
  job.width = 14;
  job.selvedge = 1;
  job.depth = 14;
  job.table = 12;
  job.roll = 20;
  job.squaring = 1;
  return job;
}

TEST(Solver, CountsWhatAPersonCounts) {
  // 18 of the roll are three lengths of 6. Open, 12 usable are three of 4; folded
  // in half, 6 are half of one at the fold edge and one through both plies: three.
  EXPECT_EQ(test::roll_worth(by_hand(), kOpen), 9);
  EXPECT_EQ(test::roll_worth(by_hand(), kHalf), 9);
}

TEST(Solver, LosesTheAllowanceWithEachLength) {
  // 6 + 1 goes twice into 18; 12 + 1 in one length goes once and leaves 5: four
  // lengths' worth either way is not reached, two rows of three are.
  QuantaJob job = by_hand();
  job.allowance = 1;
  EXPECT_EQ(test::roll_worth(job, kOpen), 6);
}

TEST(Solver, KeepsPanelsOffTheFoldThatMayNotBeCutThere) {
  // With a trim of 1, one through both plies takes 1 + 4 of 6: two a length.
  QuantaJob job = by_hand();
  job.panels[0].on_fold = false;
  EXPECT_EQ(test::roll_worth(job, kHalf), 6);
}

}  // namespace
}  // namespace foldyard
