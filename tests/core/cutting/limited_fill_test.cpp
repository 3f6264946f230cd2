#include "cutting/limited_fill.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/cutting/limited_replay.h"
#include "core/cutting/limited_throws.h"
#include "core/cutting/limited_witness.h"

namespace foldyard::limited {
namespace {

// A filling of a thrown problem with no prices, as it can be cut.
struct Filled {
  LimitedProblem problem;
  Cloth cloth;
  Counting counting;
  Builds builds;
  int root;

  Filled(LimitedProblem p, bool true_gains)
      : problem(std::move(p)), cloth(problem), counting(problem.limits) {
    const Prices prices{std::vector<std::int64_t>(problem.limits.size(), 0)};
    const InsideTable inside(cloth, prices);
    root = Filler(cloth, counting, builds).fill(inside, prices, -1, true_gains);
  }
};

TEST(LimitedFill, KeepsTheLimitsAndGainsWhatItSays) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 200 && !testing::Test::HasFailure(); ++seed) {
    Filled filled(test::throw_limited(seed, seed % 2 == 0), seed % 3 == 0);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(filled.problem));
    const std::int64_t best = test::LimitedWitness(filled.problem).best();
    EXPECT_EQ(filled.root >= 0, best > 0);
    if (filled.root < 0) continue;
    const auto tree = tree_of(filled.builds, filled.root, filled.cloth, filled.problem);
    const test::Replayed replayed = test::replay(filled.problem, tree);
    EXPECT_EQ(replayed.fault, "");
    EXPECT_EQ(replayed.gain, filled.builds[static_cast<std::size_t>(filled.root)].gain);
    EXPECT_LE(replayed.gain, best);
  }
}

// Nine of 2 × 2 fit in 7 × 7, four may be cut.
LimitedProblem four_of_nine() {
  LimitedProblem problem;
  problem.width = problem.height = Length::units(7);
  problem.shapes = {{Length::units(2), Length::units(2), 0, false, false, 1, 3},
                    {Length::units(1), Length::units(1), 1, false, false, 1, 1}};
  problem.limits = {4, 2};
  return problem;
}

TEST(LimitedFill, TakesWhatPromisesMostFirst) {
  const Filled filled(four_of_nine(), true);
  ASSERT_GE(filled.root, 0);
  EXPECT_EQ(filled.builds[static_cast<std::size_t>(filled.root)].gain, 4 * 3 + 2 * 1);
}

TEST(LimitedFill, GrowsFromABuildInTheCorner) {
  Filled filled(four_of_nine(), true);
  // The 1 × 1 lies in the corner; it is cut from there, whatever else is.
  Build corner;
  corner.width = corner.height = 1;
  corner.first = 1;
  corner.gain = 1;
  corner.copies = filled.counting.one(1, 1);
  filled.builds = {corner};
  const Prices prices{{0, 0}};
  const InsideTable inside(filled.cloth, prices);
  const int root =
      Filler(filled.cloth, filled.counting, filled.builds).fill(inside, prices, 0, true);
  ASSERT_GE(root, 0);
  const auto tree = tree_of(filled.builds, root, filled.cloth, filled.problem);
  EXPECT_EQ(test::replay(filled.problem, tree).fault, "");
  const bool in_corner = std::any_of(tree.nodes.begin(), tree.nodes.end(), [](const CutNode& n) {
    return n.kind == NodeKind::take && n.panel == 1 && n.rect.across.from.is_zero() &&
           n.rect.along.from.is_zero();
  });
  EXPECT_TRUE(in_corner);
}

}  // namespace
}  // namespace foldyard::limited
