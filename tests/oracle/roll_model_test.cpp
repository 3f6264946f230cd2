// The search of a whole roll against a general solver.
//
// The model shares no code with the search: plates and cuts are unknowns of a
// whole-number model, folds and slits are tried at every position (see
// roll_model.h, fold_positions.h). 500 jobs, spread over all fold ways.

#include "oracle/roll_model.h"

#include <gtest/gtest.h>

#include <ostream>

#include "core/support/dice.h"
#include "core/support/fold_ways.h"
#include "core/support/way_title.h"
#include "oracle/searched_worth.h"

namespace foldyard {
namespace {

using test::job_by_hand;
using test::kHalf;
using test::kOpen;
using test::QuantaJob;
using test::QuantaPanel;

constexpr int kSolvedJobs = 500;

class SolverOf : public testing::TestWithParam<FoldWay> {};

TEST_P(SolverOf, AgreesWithTheSearch) {
  const FoldWay way = GetParam();
  const int ways = static_cast<int>(all_ways(6).size());
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + (kSolvedJobs + ways - 1) / ways && !HasFailure(); ++seed) {
    const QuantaJob job = test::throw_job(seed, way);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(job));
    const std::int64_t solved = test::roll_worth(job, way);
    EXPECT_EQ(test::searched_worth(job, way), solved);
    EXPECT_GE(test::planned_worth(job, way), solved);
  }
}

INSTANTIATE_TEST_SUITE_P(Oracle, SolverOf, testing::ValuesIn(all_ways(6)), test::way_title);

// Cases, made as small as they would go, in which search and solver once did
// not agree; one length of one row of panels goes on the roll twice.
struct Apart {
  const char* what;
  const char* way;
  int width, selvedge, depth, trim;
  std::vector<QuantaPanel> panels;
};

std::ostream& operator<<(std::ostream& out, const Apart& c) { return out << c.what; }

const Apart kApart[] = {
    {"HalfAPanelAsWideAsTheTrim", "off-centre", 12, 0, 99, 3, {{6, 2, false, true, 1}}},
    {"TwoFlapsAsWideAsTheTrim", "both-edges-in", 8, 0, 99, 2, {{4, 2, false, true, 1}}},
    {"TheBaseUnderAFlapThatHoldsNothing", "off-centre", 14, 2, 99, 1,
     {{6, 2, false, false, 1}, {6, 4, false, true, 1}}},
    {"TheInnerLegAlone", "thirds-plain", 18, 2, 99, 1, {{4, 2, false, false, 1}}},
    {"HalfAPanelOnAllOfAnInnerLeg", "quarters-plain", 16, 2, 99, 1, {{6, 2, false, true, 1}}},
    {"OuterLegsNoLongerThanTheyMust", "thirds", 13, 0, 6, 1, {{6, 2, false, true, 1}}},
    {"AnOuterLegUnderTheOtherStrip", "quarters", 26, 2, 99, 2,
     {{10, 2, false, true, 1}, {2, 10, false, true, 1}}},
    {"OneOuterLegLongOneShort", "fan-5", 27, 0, 6, 1, {{2, 2, false, false, 1}}},
    {"TheLastLegAsLongAsTheInnerOnes", "fan-6", 17, 0, 3, 1, {{2, 2, false, true, 1}}},
    {"ALastLegThatHoldsNothing", "thirds", 10, 0, 99, 1, {{8, 2, false, true, 1}}},
};

class OnceApart : public testing::TestWithParam<Apart> {};

TEST_P(OnceApart, AgreesWithTheSearch) {
  const Apart& c = GetParam();
  QuantaJob job;
  job.panels = c.panels;
  job.width = c.width;
  job.selvedge = c.selvedge;
  job.depth = c.depth;
  job.trim = c.trim;
  job.table = 2;
  job.roll = 4;
  FoldWay way;
  ASSERT_TRUE(way_from_key(c.way, way));
  EXPECT_EQ(test::searched_worth(job, way), test::roll_worth(job, way)) << test::text(job);
  EXPECT_GE(test::planned_worth(job, way), test::roll_worth(job, way)) << test::text(job);
}

INSTANTIATE_TEST_SUITE_P(Oracle, OnceApart, testing::ValuesIn(kApart),
                         [](const auto& row) { return std::string(row.param.what); });

TEST(Solver, CountsWhatAPersonCounts) {
  // 18 of the roll are three lengths of 6. Open, 12 usable are three of 4; folded
  // in half, 6 are half of one at the fold edge and one through both plies: three.
  EXPECT_EQ(test::roll_worth(job_by_hand(), kOpen), 9);
  EXPECT_EQ(test::roll_worth(job_by_hand(), kHalf), 9);
}

TEST(Solver, LosesTheAllowanceWithEachLength) {
  // 18 take two lengths of 6 + 1, or one of 12 + 1 that holds as much: two rows
  // of three either way.
  QuantaJob job = job_by_hand();
  job.allowance = 1;
  EXPECT_EQ(test::roll_worth(job, kOpen), 6);
}

TEST(Solver, KeepsPanelsOffTheFoldThatMayNotBeCutThere) {
  // With a trim of 1, one through both plies takes 1 + 4 of 6: two a length.
  QuantaJob job = job_by_hand();
  job.panels[0].on_fold = false;
  EXPECT_EQ(test::roll_worth(job, kHalf), 6);
}

}  // namespace
}  // namespace foldyard
