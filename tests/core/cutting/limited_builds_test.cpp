#include "cutting/limited_builds.h"

#include <gtest/gtest.h>

#include "core/cutting/limited_replay.h"
#include "core/support/dice.h"

namespace foldyard::limited {
namespace {

TEST(Counting, HoldsTheLimitsOfEveryPanelApart) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 200; ++seed) {
    test::Dice dice(seed);
    std::vector<std::int64_t> limits;
    for (int n = dice.from_to(1, 40); n > 0; --n) limits.push_back(dice.from_to(0, 20));
    const Counting counting(limits);
    ASSERT_TRUE(counting.fits());
    Copies a{}, b{};
    bool within = true;
    for (int p = 0; p < std::ssize(limits); ++p) {
      const int limit = static_cast<int>(limits[static_cast<std::size_t>(p)]);
      const int of_a = dice.from_to(0, limit);
      const int of_b = dice.from_to(0, dice.from_to(0, 9) == 0 ? limit : limit - of_a);
      a = a + counting.one(p, of_a);
      b = b + counting.one(p, of_b);
      within = within && of_a + of_b <= limit;
    }
    EXPECT_EQ(counting.within_limits(a, b), within) << "FOLDYARD_SEED=" << seed;
  }
}

TEST(Counting, FitsNeitherALimitTooLargeNorTooMany) {
  EXPECT_TRUE(Counting({3, 1'000'000}).fits());
  EXPECT_FALSE(Counting({3, std::int64_t{1} << 41}).fits());
  EXPECT_FALSE(Counting({std::int64_t{1} << 41, 3}).fits());
  EXPECT_FALSE(Counting(std::vector<std::int64_t>(400, 1'000)).fits());
}

// Panels 0 and 1 may be clipped; the second always takes two at a time.
LimitedProblem clipped_problem() {
  LimitedProblem problem;
  problem.width = problem.height = Length::units(9);
  problem.shapes = {{Length::units(2), Length::units(2), 0, false, false, 1, 3},
                    {Length::units(1), Length::units(1), 1, false, false, 2, 4},
                    {Length::units(3), Length::units(1), 2, false, false, 2, 4},
                    {Length::units(1), Length::units(3), 2, true, false, 1, 2}};
  problem.limits = {3, 5, 4};
  return problem;
}

TEST(Counting, ClipsWholeTakesToTheLimits) {
  const Counting counting{Cloth(clipped_problem())};
  EXPECT_TRUE(counting.may_clip(0));
  EXPECT_TRUE(counting.may_clip(1));
  EXPECT_FALSE(counting.may_clip(2)) << "it takes one or two";
  Copies sum = counting.one(0, 2) + counting.one(0, 3) + counting.one(1, 4) + counting.one(1, 2) + counting.one(2, 3);
  std::vector<std::pair<int, std::int64_t>> over;
  const auto note = [&](int panel, std::int64_t more) { over.push_back({panel, more}); };
  EXPECT_TRUE(counting.clip(sum, note));
  EXPECT_EQ(sum, counting.one(0, 3) + counting.one(1, 4) + counting.one(2, 3));
  EXPECT_EQ(over, (std::vector<std::pair<int, std::int64_t>>{{0, 2}, {1, 2}}));
  sum = counting.one(2, 3) + counting.one(2, 2);
  EXPECT_FALSE(counting.clip(sum, note));
}

TEST(Counting, CoversWithMoreOfWhatMayBeClipped) {
  const Counting counting{Cloth(clipped_problem())};
  const auto covers = [&](const Copies& a, const Copies& b) { return counting.covers(a.data(), b.data()); };
  const Copies a = counting.one(0, 2) + counting.one(2, 1);
  EXPECT_TRUE(covers(a, counting.one(0, 1) + counting.one(2, 1)));
  EXPECT_FALSE(covers(a, a)) << "no more than itself";
  EXPECT_FALSE(covers(a, counting.one(0, 2))) << "more of one that may not be clipped";
  EXPECT_FALSE(covers(a, counting.one(1, 2) + counting.one(2, 1)));
}

TEST(Counting, ClipsNothingWhereGainsAreUneven) {
  LimitedProblem problem = clipped_problem();
  problem.shapes[3].gain = 3;
  const Counting counting{Cloth(problem)};
  for (int panel = 0; panel < 3; ++panel) EXPECT_FALSE(counting.may_clip(panel));
}

TEST(Counting, SaysWhenTheLimitsTakeTooManyBits) {
  // 2^20 takes 21 bits and a guard, two to a word: twelve in six words.
  EXPECT_TRUE(Counting(std::vector<std::int64_t>(12, 1 << 20)).fits());
  EXPECT_FALSE(Counting(std::vector<std::int64_t>(13, 1 << 20)).fits());
}

// Panels of 2 × 3 and 1 × 2 beside a joint with a trim of 1; the first may lie
// at the joint, 1 wide.
struct Beginnings {
  LimitedProblem problem;
  Builds builds;  // loose 2 × 3, loose 1 × 2, half of the first at the joint

  Beginnings() {
    problem.width = Length::units(6);
    problem.height = Length::units(6);
    problem.joint = true;
    problem.fold_trim = Length::units(1);
    problem.shapes = {{Length::units(2), Length::units(3), 0, false, false, 2, 10},
                      {Length::units(1), Length::units(2), 1, false, false, 2, 4},
                      {Length::units(1), Length::units(3), 0, false, true, 1, 5}};
    problem.limits = {4, 4};
    const Counting counting(problem.limits);
    for (int i = 0; i < std::ssize(problem.shapes); ++i) {
      const LimitedShape& s = problem.shapes[static_cast<std::size_t>(i)];
      Build b;
      b.width = static_cast<int>(s.across.units());
      b.height = static_cast<int>(s.along.units());
      b.rim = s.at_joint ? kJoint : kLoose;
      b.first = i;
      b.gain = b.priced = s.gain;
      b.copies = counting.one(s.panel, s.uses);
      builds.push_back(b);
    }
  }

  int add(const Build& build) {
    builds.push_back(build);
    return static_cast<int>(builds.size()) - 1;
  }
};

TEST(LimitedBuilds, AddUpBesideEachOther) {
  const Beginnings b;
  const Build sum = beside(b.builds, 2, 1);
  EXPECT_EQ(sum.width, 2);
  EXPECT_EQ(sum.height, 3);
  EXPECT_EQ(sum.rim, kJoint);
  EXPECT_EQ(sum.gain, 9);
  EXPECT_EQ(sum.copies, b.builds[2].copies + b.builds[1].copies);
}

TEST(LimitedBuilds, AddUpAboveEachOther) {
  const Beginnings b;
  const Build sum = above(b.builds, 0, 1);
  EXPECT_EQ(sum.width, 2);
  EXPECT_EQ(sum.height, 5);
  EXPECT_EQ(sum.rim, kLoose);
  EXPECT_EQ(sum.priced, 14);
}

TEST(LimitedBuilds, AreCutAsTheyWereMade) {
  // At the joint half a panel with one beside it; above them the fold opened
  // for a loose one: copies 1 + 2 of the first, 2 of the second.
  Beginnings b;
  const int low = b.add(beside(b.builds, 2, 1));
  Build opened = b.builds[0];
  opened.made = Made::opened;
  opened.first = 0;
  opened.rim = kJoint;
  opened.width += 1;
  const int high = b.add(opened);
  const int root = b.add(above(b.builds, low, high));
  const CutTree tree = tree_of(b.builds, root, Cloth(b.problem), b.problem);
  const test::Replayed replayed = test::replay(b.problem, tree);
  EXPECT_EQ(replayed.fault, "");
  EXPECT_EQ(replayed.gain, 5 + 4 + 10);
  EXPECT_EQ(replayed.copies, (std::vector<std::int64_t>{3, 2}));
}

// Two of a panel of which one may be cut: the second is left lying, uncut.
TEST(LimitedBuilds, LeaveWhatPassesALimit) {
  LimitedProblem problem;
  problem.width = problem.height = Length::units(6);
  problem.shapes = {{Length::units(2), Length::units(3), 0, false, false, 1, 10}};
  problem.limits = {1};
  const Cloth cloth(problem);
  const Counting counting(cloth);
  Builds builds{panel_build(cloth, counting, 0)};
  builds.push_back(beside(builds, 0, 0));
  const CutTree tree = tree_of(builds, 1, cloth, problem);
  const test::Replayed replayed = test::replay(problem, tree);
  EXPECT_EQ(replayed.fault, "");
  EXPECT_EQ(replayed.copies, std::vector<std::int64_t>{1});
}

}  // namespace
}  // namespace foldyard::limited
