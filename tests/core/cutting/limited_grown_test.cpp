#include "cutting/limited_grown.h"

#include <gtest/gtest.h>

#include <set>

#include "core/cutting/limited_throws.h"

namespace foldyard::limited {
namespace {

// Thrown builds on thrown cloth, with and without a joint.
struct Grown {
  LimitedProblem problem;
  Cloth cloth;
  Counting counting;
  Prices prices;
  InsideTable inside;
  AroundTable around;
  GrownBuilds grown;
  Builds builds;

  explicit Grown(unsigned seed)
      : problem(test::throw_limited(seed, seed % 2 == 0)), cloth(problem), counting(cloth),
        prices{std::vector<std::int64_t>(cloth.limits.size(), 0)}, inside(cloth, prices), around(cloth, inside),
        grown(cloth, counting) {
    test::Dice dice(seed);
    for (int i = 0; i < 40 && !cloth.along.list.empty(); ++i) throw_build(dice);
  }

  void throw_build(test::Dice& dice) {
    Build b;
    b.rim = cloth.root == kJoint && dice.coin() ? kJoint : kLoose;
    const std::vector<int>& widths = cloth.across[b.rim].list;
    if (widths.empty()) return;
    b.width = widths[static_cast<std::size_t>(dice.from_to(0, static_cast<int>(widths.size()) - 1))];
    b.height = cloth.along.list[static_cast<std::size_t>(dice.from_to(0, cloth.along.count() - 1))];
    b.priced = dice.from_to(0, 40) * kScale;
    b.gain = b.priced / kScale;
    for (int p = 0; p < counting.panels(); ++p)
      b.copies = b.copies + counting.one(p, dice.from_to(0, static_cast<int>(problem.limits[static_cast<std::size_t>(p)])));
    builds.push_back(b);
    grown.add(b, static_cast<int>(builds.size()) - 1);
  }
};

template <class Check>
void for_thrown_builds(Check check) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 100 && !testing::Test::HasFailure(); ++seed) {
    const Grown g(seed);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(g.problem));
    check(g);
  }
}

std::set<std::pair<int, int>> sizes_visited(const Grown& g, const Build& b, bool side_by_side, std::int64_t need) {
  std::set<std::pair<int, int>> sizes;
  const auto visit = [&](int i) {
    const SizeClass& k = g.grown.at(i);
    sizes.insert({k.rim * 100 + k.width, k.height});
    return true;
  };
  side_by_side ? g.grown.beside(b, g.around, need, visit) : g.grown.above(b, g.around, need, visit);
  return sizes;
}

bool may_join(const Grown& g, const Build& a, const Build& b, bool side_by_side) {
  if (side_by_side) return !(a.rim == kJoint && b.rim == kJoint) && a.width + b.width <= g.cloth.width;
  return a.rim == b.rim && g.cloth.along.ceil(a.height + b.height) >= 0;
}

std::int64_t around_join(const Grown& g, const Build& a, const Build& b, bool side_by_side) {
  const Rim rim = a.rim == kJoint || b.rim == kJoint ? kJoint : kLoose;
  const int width = side_by_side ? a.width + b.width : std::max(a.width, b.width);
  const int height = side_by_side ? std::max(a.height, b.height) : a.height + b.height;
  return g.around.row(rim, g.cloth.along.ceil(height))[static_cast<std::size_t>(width)];
}

// Every build whose join comes to what is needed is of a class that is visited.
TEST(GrownBuilds, VisitsEveryClassThatComesToEnough) {
  for_thrown_builds([](const Grown& g) {
    for (const Build& b : g.builds)
      for (const bool side_by_side : {false, true})
        for (const std::int64_t need : {0, 200, 600}) {
          const auto sizes = sizes_visited(g, b, side_by_side, need);
          for (const Build& other : g.builds)
            if (may_join(g, b, other, side_by_side) && other.priced + around_join(g, b, other, side_by_side) >= need) {
              EXPECT_TRUE(sizes.count({other.rim * 100 + other.width, other.height}));
            }
        }
  });
}

TEST(GrownBuilds, HoldTheirBuildsGreatestFirst) {
  for_thrown_builds([](const Grown& g) {
    for (const Build& b : g.builds) sizes_visited(g, b, true, 0);
    std::size_t held = 0;
    std::set<int> seen;
    for (const Build& b : g.builds)
      g.grown.above(b, g.around, -(1 << 30), [&](int i) { return seen.insert(i), true; });
    for (const int i : seen) {
      const SizeClass& k = g.grown.at(i);
      held += k.builds.size();
      for (std::size_t n = 1; n < k.builds.size(); ++n) EXPECT_GE(k.builds[n - 1].priced, k.builds[n].priced);
      EXPECT_EQ(k.copies.size(), k.builds.size() * static_cast<std::size_t>(g.counting.words()));
    }
    EXPECT_LE(held, g.builds.size());
  });
}

// One that holds all that another of its size does, and more.
TEST(GrownBuilds, SaysWhichBuildIsCovered) {
  LimitedProblem problem;
  problem.width = problem.height = Length::units(4);
  problem.shapes = {{Length::units(2), Length::units(2), 0, false, false, 1, 3},
                    {Length::units(1), Length::units(1), 1, false, false, 1, 1}};
  problem.limits = {2, 2};
  const Cloth cloth(problem);
  const Counting counting(cloth);
  GrownBuilds grown(cloth, counting);
  Build more;
  more.width = 4;
  more.height = 2;
  more.copies = counting.one(0, 1) + counting.one(1, 2);
  more.priced = 5 * kScale;
  grown.add(more, 0);
  Build less = more;
  less.copies = counting.one(0, 1) + counting.one(1, 1);
  less.priced = 4 * kScale;
  EXPECT_TRUE(grown.is_covered(less));
  EXPECT_FALSE(grown.is_covered(more)) << "not by itself";
  Build other = less;
  other.copies = counting.one(0, 2);
  EXPECT_FALSE(grown.is_covered(other));
  less.height = 4;
  EXPECT_FALSE(grown.is_covered(less)) << "of another size";
}

}  // namespace
}  // namespace foldyard::limited
