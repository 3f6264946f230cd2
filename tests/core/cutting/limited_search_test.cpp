#include "cutting/limited_search.h"

#include <gtest/gtest.h>

#include "core/cutting/limited_replay.h"
#include "core/cutting/limited_throws.h"
#include "core/cutting/limited_witness.h"
#include "core/support/stopped_after.h"

namespace foldyard {
namespace {

using test::LimitedWitness;
using test::replay;

constexpr int kProblems = 400;

// The tree can be cut, keeps the limits, and gains what the answer says.
void expect_sound(const LimitedProblem& problem, const LimitedAnswer& answer) {
  const test::Replayed replayed = replay(problem, answer.tree);
  EXPECT_EQ(replayed.fault, "");
  EXPECT_EQ(replayed.gain, answer.gain);
  EXPECT_GE(answer.bound, answer.gain);
  EXPECT_EQ(answer.proved, answer.bound == answer.gain);
}

void expect_best(unsigned seed, bool joint) {
  const LimitedProblem problem = test::throw_limited(seed, joint);
  SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(problem));
  const LimitedAnswer answer = best_limited(problem);
  EXPECT_TRUE(answer.searched);
  EXPECT_TRUE(answer.proved);
  EXPECT_EQ(answer.gain, LimitedWitness(problem).best());
  expect_sound(problem, answer);
}

TEST(LimitedSearch, FindsTheBestOfOpenCloth) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + kProblems && !testing::Test::HasFailure(); ++seed)
    expect_best(seed, false);
}

TEST(LimitedSearch, FindsTheBestBesideAFoldEdge) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + kProblems && !testing::Test::HasFailure(); ++seed)
    expect_best(seed, true);
}

TEST(LimitedSearch, FindsTheSameWhateverTheUnit) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 100 && !testing::Test::HasFailure(); ++seed) {
    const LimitedProblem problem = test::throw_limited(seed, seed % 2 == 0);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(problem));
    LimitedProblem large = test::scaled(problem, 7);
    large.width += Length::units(6);  // less than a unit: of no use
    const LimitedAnswer answer = best_limited(large);
    EXPECT_EQ(answer.gain, best_limited(problem).gain);
    expect_sound(large, answer);
  }
}

// Whatever a search may spend, its plan is sound and its bound is true.
void expect_honest(const LimitedBudget& budget) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 150 && !testing::Test::HasFailure(); ++seed) {
    const LimitedProblem problem = test::throw_limited(seed, seed % 2 == 0);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(problem));
    const LimitedAnswer answer = best_limited(problem, budget);
    const std::int64_t best = LimitedWitness(problem).best();
    EXPECT_LE(answer.gain, best);
    EXPECT_GE(answer.bound, best);
    expect_sound(problem, answer);
  }
}

TEST(LimitedSearch, IsHonestWithAFewSteps) {
  for (const std::int64_t steps : {0, 1, 20}) expect_honest({steps, 1000, nullptr});
}

TEST(LimitedSearch, IsHonestWithAFewBuilds) {
  for (const std::int64_t builds : {0, 1, 8}) expect_honest({1000, builds, nullptr});
}

// Stopped at once it still cuts something where anything fits.
TEST(LimitedSearch, CutsSomethingWhenItIsStoppedAtOnce) {
  const std::atomic<bool> cancelled{true};
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 150; ++seed) {
    const LimitedProblem problem = test::throw_limited(seed, seed % 2 == 0);
    const LimitedAnswer answer = best_limited(problem, {1'000'000, 1'000'000, &cancelled});
    EXPECT_EQ(answer.gain > 0, LimitedWitness(problem).best() > 0) << test::text(problem);
  }
}

TEST(LimitedSearch, IsHonestWhenCancelled) {
  const std::atomic<bool> cancelled{true};
  expect_honest({1'000'000, 1'000'000, &cancelled});
}

// A problem that takes a while: 300 × 200, open or beside a fold edge, of four panels.
LimitedProblem long_problem(bool joint) {
  LimitedProblem problem;
  problem.joint = joint;
  problem.width = Length::units(300);
  problem.height = Length::units(200);
  if (joint) problem.fold_trim = Length::units(3);
  for (const auto& [across, along] : {std::pair{37, 41}, {29, 53}, {61, 23}, {19, 31}}) {
    problem.limits.push_back(5);
    test::add_panel(problem, across, along, across * along + along, true, false);
    test::add_panel(problem, along, across, across * along + along, true, true);
  }
  return problem;
}

TEST(LimitedSearch, IsHonestWheneverItIsStopped) {
  for (const bool joint : {false, true}) {
    const LimitedProblem problem = long_problem(joint);
    const auto search = [&](const std::atomic<bool>* stopped) {
      return best_limited(problem, {60'000, 100'000, stopped});
    };
    test::stop_at_moments(12, search, [&](const LimitedAnswer& found, const LimitedAnswer& whole) {
      expect_sound(problem, found);
      EXPECT_GT(found.gain, 0);
      EXPECT_LE(found.gain, whole.bound);
      EXPECT_GE(found.bound, whole.gain);
    });
  }
}

// Copies of one panel may gain more in one shape than in another.
TEST(LimitedSearch, FindsTheBestOfUnevenGains) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 200 && !testing::Test::HasFailure(); ++seed) {
    LimitedProblem problem = test::throw_limited(seed, seed % 2 == 0);
    for (std::size_t i = 0; i < problem.shapes.size(); ++i) problem.shapes[i].gain += static_cast<std::int64_t>(i % 3);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(problem));
    const LimitedAnswer answer = best_limited(problem);
    EXPECT_TRUE(answer.proved);
    EXPECT_EQ(answer.gain, LimitedWitness(problem).best());
    expect_sound(problem, answer);
  }
}

TEST(LimitedSearch, FindsTheSameTwice) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 20; ++seed) {
    const LimitedProblem problem = test::throw_limited(seed, true);
    const LimitedAnswer a = best_limited(problem), b = best_limited(problem);
    EXPECT_EQ(a.tree, b.tree);
    EXPECT_EQ(a.steps, b.steps);
  }
}

LimitedProblem one_panel(Length width, std::int64_t gain, std::int64_t limit) {
  LimitedProblem problem;
  problem.width = width;
  problem.height = Length::units(60);
  problem.shapes = {{Length::units(40), Length::units(1), 0, false, false, 1, gain}};
  problem.limits = {limit};
  return problem;
}

// The example of the contract: one of two that would fit.
TEST(LimitedSearch, CutsNoMoreThanTheLimit) {
  LimitedProblem problem = one_panel(Length::units(100), 5, 1);
  problem.shapes[0].along = Length::units(60);
  const LimitedAnswer answer = best_limited(problem);
  EXPECT_EQ(answer.gain, 5);
  EXPECT_TRUE(answer.proved);
}

TEST(LimitedSearch, LeavesTheClothWhereNoneMayBeCut) {
  const LimitedAnswer answer = best_limited(one_panel(Length::units(100), 5, 0));
  EXPECT_EQ(answer.gain, 0);
  EXPECT_TRUE(answer.proved);
  EXPECT_EQ(answer.tree.nodes.size(), 1u);
}

// The largest cloth is 16 000 units that all sizes share: here 1.
TEST(LimitedSearch, SaysWhenTheClothIsTooLarge) {
  EXPECT_TRUE(best_limited(one_panel(Length::units(16'000), 5, 1)).searched);
  const LimitedProblem large = one_panel(Length::units(16'001), 5, 3);
  const LimitedAnswer answer = best_limited(large);
  EXPECT_FALSE(answer.searched);
  EXPECT_FALSE(answer.proved);
  EXPECT_GE(answer.bound, 15);  // all three do fit
  expect_sound(large, answer);
}

// As many copies as fit gain less than 2^26 = 67 108 864, whatever the limit:
// sixty here, so 1 118 481 each and no more.
TEST(LimitedSearch, SaysWhenTheGainsAreTooLarge) {
  EXPECT_TRUE(best_limited(one_panel(Length::units(40), 1'118'481, 1)).searched);
  const LimitedAnswer answer = best_limited(one_panel(Length::units(40), 1'118'482, 1));
  EXPECT_FALSE(answer.searched);
  EXPECT_FALSE(answer.proved);
  EXPECT_GE(answer.bound, 1'118'482);
}

// No shape at all: nothing is the best there is.
TEST(LimitedSearch, ProvesNothingWhereThereIsNothingToCut) {
  LimitedProblem empty;
  empty.width = empty.height = Length::units(9);
  const LimitedAnswer answer = best_limited(empty);
  EXPECT_EQ(answer.gain, 0);
  EXPECT_TRUE(answer.proved);
}

// Half a panel narrower than the fold trim cannot be cut free beside the fold.
TEST(LimitedSearch, TakesNoPanelNearerTheFoldThanTheTrim) {
  LimitedProblem problem;
  problem.width = Length::units(3);
  problem.height = Length::units(7);
  problem.joint = true;
  problem.fold_trim = Length::units(3);
  problem.limits = {4};
  problem.shapes = {{Length::units(1), Length::units(2), 0, false, true, 1, 1}};
  EXPECT_EQ(best_limited(problem).gain, 0);
}

// Copies are counted in 384 bits, 20 of them for a limit of 2^19 − 1 with its
// guard: three to a word of 64, 18 panels in all.
TEST(LimitedSearch, SaysWhenTheLimitsAreTooMany) {
  const std::int64_t limit = (1 << 19) - 1;
  for (const int panels : {18, 19}) {
    LimitedProblem problem = one_panel(Length::units(200), 1, limit);
    while (std::ssize(problem.limits) < panels) {
      problem.limits.push_back(limit);
      problem.shapes.push_back(problem.shapes[0]);
      problem.shapes.back().panel = static_cast<int>(problem.limits.size()) - 1;
    }
    const LimitedAnswer answer = best_limited(problem);
    EXPECT_EQ(answer.searched, panels == 18);
    EXPECT_GE(answer.bound, 5 * 60);  // five across, sixty along
  }
}

}  // namespace
}  // namespace foldyard
