#include "cutting/limited_cloth.h"

#include <gtest/gtest.h>

#include <set>

#include "core/cutting/limited_throws.h"

namespace foldyard::limited {
namespace {

LimitedProblem problem(int width, int height, std::vector<LimitedShape> shapes,
                       std::vector<std::int64_t> limits) {
  LimitedProblem p;
  p.width = Length::units(width);
  p.height = Length::units(height);
  p.shapes = std::move(shapes);
  p.limits = std::move(limits);
  return p;
}

LimitedShape shape(int across, int along, int panel, std::int64_t gain = 1) {
  return {Length::units(across), Length::units(along), panel, false, false, 1, gain};
}

TEST(LimitedCloth, CountsInTheUnitThatAllSizesShare) {
  // 12, 18 and 6 share 6; of 100 and 65 there are 16 and 10 whole ones.
  const Cloth cloth(problem(100, 65, {shape(12, 18, 0), shape(6, 6, 1)}, {1, 1}));
  EXPECT_EQ(cloth.unit, 6);
  EXPECT_EQ(cloth.width, 16);
  EXPECT_EQ(cloth.height, 10);
  EXPECT_EQ(cloth.shapes[0].across, 2);
  EXPECT_EQ(cloth.shapes[0].along, 3);
}

TEST(LimitedCloth, LeavesOutWhatCannotBeCut) {
  const Cloth cloth(problem(
      10, 10, {shape(11, 1, 0), shape(1, 11, 0), shape(2, 3, 1), shape(3, 3, 2)}, {5, 0, 5}));
  ASSERT_EQ(cloth.shapes.size(), 1u);
  EXPECT_EQ(cloth.source[0], 3);  // of the problem's shapes
}

TEST(LimitedCloth, LeavesOutWhatGainsNothing) {
  const Cloth cloth(problem(10, 10, {shape(2, 3, 0, 0), shape(3, 3, 0, -2), shape(3, 4, 0, 1)}, {5}));
  EXPECT_EQ(cloth.source, std::vector<int>{2});
}

// One small panel alone gains little, all over the cloth more than the search counts to.
TEST(LimitedCloth, IsOutOfRangeWhereFreeCopiesWouldGainTooMuch) {
  EXPECT_TRUE(Cloth(problem(60, 1000, {shape(1, 1, 0, 1000)}, {1})).in_range);
  EXPECT_FALSE(Cloth(problem(70, 1000, {shape(1, 1, 0, 1000)}, {1})).in_range);
  EXPECT_FALSE(Cloth(problem(10, 10, {shape(1, 10, 0, 1 << 26)}, {1})).in_range);
}

// Where the trim is wider than the cloth, only half a panel may begin at the fold.
TEST(LimitedCloth, HasNoPlaceForATrimThatIsTooWide) {
  LimitedProblem p = problem(8, 2, {shape(9, 2, 0), shape(3, 2, 0)}, {2});
  p.joint = true;
  p.fold_trim = Length::units(9);
  p.shapes[0].at_joint = true;
  EXPECT_TRUE(Cloth(p).across[kJoint].list.empty());
}

// As large shapes of one panel as two, and one twice as large: by copies at most three times
// the best, by area four of the small one.
TEST(LimitedCloth, CountsUnevenShapesOfAPanelByCopyAndByArea) {
  EXPECT_EQ(Cloth(problem(4, 2, {shape(2, 1, 0, 5), shape(1, 2, 0, 5)}, {3})).total_gain(), 15);
  EXPECT_EQ(Cloth(problem(4, 2, {shape(2, 1, 0, 5), shape(2, 2, 0, 8)}, {3})).total_gain(), 20);
  EXPECT_EQ(Cloth(problem(4, 2, {shape(2, 1, 0, 5), shape(2, 2, 0, 8)}, {2})).total_gain(), 16);
}

TEST(LimitedCloth, HasPlacesOnlyForSoManyCopies) {
  // 3 twice and 5 once: 3 5 6 8 11; 9 would take three of 3.
  const Cloth cloth(problem(12, 1, {shape(3, 1, 0), shape(5, 1, 1)}, {2, 1}));
  EXPECT_EQ(cloth.across[kLoose].list, (std::vector<int>{3, 5, 6, 8, 11}));
  EXPECT_EQ(cloth.across[kLoose].index[8], 3);
  EXPECT_EQ(cloth.across[kLoose].index[9], -1);
  EXPECT_EQ(cloth.across[kLoose].floor[10], 3);
  EXPECT_EQ(cloth.across[kLoose].floor[2], -1);
}

TEST(LimitedCloth, BeginsAtTheJointWithAHalfPanelOrTheTrim) {
  // Half a panel of 8 is 4, the trim 2; one of 8 may lie beyond.
  LimitedProblem p = problem(14, 2, {shape(8, 2, 0), shape(4, 2, 0)}, {2});
  p.joint = true;
  p.fold_trim = Length::units(2);
  p.shapes[0].uses = 2;
  p.shapes[1].at_joint = true;
  const Cloth cloth(p);
  EXPECT_EQ(cloth.root, kJoint);
  EXPECT_EQ(cloth.unit, 2);
  // In units of 2: 1 (trim), 2 (half), 1 + 4, 2 + 4.
  EXPECT_EQ(cloth.across[kJoint].list, (std::vector<int>{1, 2, 5, 6}));
  EXPECT_EQ(cloth.across[kLoose].list, (std::vector<int>{4}));
}

TEST(LimitedCloth, KnowsWhatAllCopiesGainTogether) {
  // Of the first three are allowed but two of 4 × 5 fit in 8 × 5; the second twice.
  const Cloth cloth(problem(8, 5, {shape(4, 5, 0, 10), shape(1, 1, 1, 3)}, {3, 2}));
  EXPECT_EQ(cloth.total_gain(), 2 * 10 + 2 * 3);
}

TEST(LimitedCloth, IsOutOfRangeBeyondSixteenThousandUnits) {
  EXPECT_TRUE(Cloth(problem(16'000, 1, {shape(1, 1, 0)}, {1})).in_range);
  EXPECT_FALSE(Cloth(problem(16'001, 1, {shape(1, 1, 0)}, {1})).in_range);
  EXPECT_FALSE(Cloth(problem(1, 16'001, {shape(1, 1, 0)}, {1})).in_range);
}

// Sums of sizes by trying every number of copies.
void add_sums(const LimitedProblem& p, std::size_t panel, std::int64_t sum, std::int64_t most,
              std::set<int>& sums) {
  if (sum > most) return;
  if (panel == p.limits.size()) {
    if (sum > 0) sums.insert(static_cast<int>(sum));
    return;
  }
  std::vector<std::int64_t> sizes;
  for (const LimitedShape& s : p.shapes)
    if (static_cast<std::size_t>(s.panel) == panel) sizes.push_back(s.along.units());
  const std::int64_t second = sizes.size() > 1 ? sizes[1] : 0;
  for (std::int64_t a = 0; a <= p.limits[panel] && !sizes.empty(); ++a)
    for (std::int64_t b = 0; a + b <= p.limits[panel]; ++b)
      add_sums(p, panel + 1, sum + a * sizes[0] + b * second, most, sums);
}

TEST(LimitedCloth, HoldsEverySumOfSizes) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 100; ++seed) {
    const LimitedProblem p = test::throw_limited(seed, false);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(p));
    std::set<int> sums;
    add_sums(p, 0, 0, p.height.units(), sums);
    const Cloth cloth(p);
    for (const int sum : sums) {
      if (sum % cloth.unit != 0) continue;
      const int size = sum / static_cast<int>(cloth.unit);
      // A panel too wide or too long for the cloth has no place.
      if (cloth.shapes.size() < p.shapes.size()) continue;
      EXPECT_GE(cloth.along.index[static_cast<std::size_t>(size)], 0) << sum;
    }
  }
}

// One of two copies gaining 14 and one of one gaining 6, of three: more than
// either shape has alone.
TEST(Cloth, BoundsTheGainOfMixedShapes) {
  LimitedProblem problem;
  problem.width = Length::units(12);
  problem.height = Length::units(8);
  problem.joint = true;
  problem.fold_trim = Length::units(3);
  problem.shapes = {{Length::units(6), Length::units(2), 0, false, false, 2, 14},
                    {Length::units(3), Length::units(2), 0, false, true, 1, 6}};
  problem.limits = {3};
  EXPECT_GE(Cloth(problem).total_gain(), 14 + 6);
}

TEST(Places, GiveTheNextPlaceUp) {
  LimitedProblem problem;
  problem.width = problem.height = Length::units(9);
  problem.shapes = {{Length::units(2), Length::units(5), 0, false, false, 1, 1}};
  problem.limits = {2};
  const Places across = Cloth(problem).across[kLoose];  // 2 and 4
  EXPECT_EQ(across.ceil(1), 0);
  EXPECT_EQ(across.ceil(2), 0);
  EXPECT_EQ(across.ceil(3), 1);
  EXPECT_EQ(across.ceil(5), -1);
  EXPECT_EQ(across.ceil(10), -1);
}

}  // namespace
}  // namespace foldyard::limited
