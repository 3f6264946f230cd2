#include "cutting/limited_tables.h"

#include <gtest/gtest.h>

#include "core/cutting/limited_throws.h"

namespace foldyard::limited {
namespace {

Prices no_prices(const Cloth& cloth) {
  return {std::vector<std::int64_t>(cloth.limits.size(), 0)};
}

Prices thrown_prices(const Cloth& cloth, test::Dice& dice) {
  Prices prices = no_prices(cloth);
  for (std::int64_t& price : prices.panel) price = dice.from_to(0, 8 * kScale);
  return prices;
}

// The most with copies not limited, by trying every cut at every unit; and the
// most around a hole of the given size, which a cutting must keep whole.
class SlowTable {
 public:
  static constexpr std::int64_t kNever = -(std::int64_t{1} << 40);

  SlowTable(const Cloth& cloth, const Prices& prices) : cloth_(cloth), prices_(prices) {
    for (auto& rim : inside_) rim.assign(count(), 0);
    for_all([&](int r, int w, int h) { inside_[r][at(w, h)] = most_inside(r, w, h); });
  }

  std::int64_t inside(int rim, int w, int h) const { return inside_[rim][at(w, h)]; }

  std::int64_t around(int rim, int width, int height) {
    std::vector<std::int64_t> hole[2];
    for (auto& side : hole) side.assign(count(), kNever);
    for_all([&](int r, int w, int h) {
      std::int64_t most = r == rim && w == width && h == height ? 0 : kNever;
      for (int u = nearest(r); u < w; ++u)
        most = std::max({most, hole[r][at(u, h)] + inside(kLoose, w - u, h),
                         inside(r, u, h) + hole[kLoose][at(w - u, h)]});
      for (int v = 1; v < h; ++v)
        most = std::max({most, hole[r][at(w, v)] + inside(r, w, h - v)});
      hole[r][at(w, h)] = most;
    });
    return hole[cloth_.root][at(cloth_.width, cloth_.height)];
  }

 private:
  std::size_t count() const {
    return static_cast<std::size_t>((cloth_.width + 1) * (cloth_.height + 1));
  }
  std::size_t at(int w, int h) const {
    return static_cast<std::size_t>(w * (cloth_.height + 1) + h);
  }
  int nearest(int rim) const { return rim == kJoint ? std::max(cloth_.fold_trim, 1) : 1; }

  template <class Visit>
  void for_all(Visit visit) const {
    for (int w = 1; w <= cloth_.width; ++w)
      for (int h = 1; h <= cloth_.height; ++h)
        for (const int rim : {kLoose, kJoint}) visit(rim, w, h);
  }

  std::int64_t most_inside(int r, int w, int h) const {
    std::int64_t most = 0;
    for (const UnitShape& s : cloth_.shapes)
      if (s.rim == r && s.across == w && s.along == h) most = std::max(most, prices_.priced(s));
    for (int u = nearest(r); u < w; ++u)
      most = std::max(most, inside(r, u, h) + inside(kLoose, w - u, h));
    for (int v = 1; v < h; ++v) most = std::max(most, inside(r, w, v) + inside(r, w, h - v));
    return most;
  }

  const Cloth& cloth_;
  const Prices& prices_;
  std::vector<std::int64_t> inside_[2];
};

// Limits so high that they leave out no place.
LimitedProblem throw_unlimited(unsigned seed) {
  LimitedProblem problem = test::throw_limited(seed, seed % 2 == 0);
  for (std::int64_t& limit : problem.limits) limit = 1000;
  return problem;
}

template <class Check>
void for_thrown_prices(Check check) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 150 && !testing::Test::HasFailure(); ++seed) {
    const LimitedProblem problem = throw_unlimited(seed);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(problem));
    const Cloth cloth(problem);
    test::Dice dice(seed);
    const Prices prices = thrown_prices(cloth, dice);
    check(cloth, prices);
  }
}

TEST(InsideTable, HoldsTheMostOfEveryRectangle) {
  for_thrown_prices([](const Cloth& cloth, const Prices& prices) {
    const InsideTable table(cloth, prices);
    const SlowTable slow(cloth, prices);
    for (int w = 1; w <= cloth.width; ++w)
      for (int h = 1; h <= cloth.height; ++h) {
        EXPECT_EQ(table.most(kLoose, w, h), slow.inside(kLoose, w, h)) << w << " x " << h;
        if (cloth.root == kLoose) continue;
        EXPECT_EQ(table.most(kJoint, w, h), slow.inside(kJoint, w, h)) << w << " x " << h;
      }
  });
}

TEST(InsideTable, UsesCopiesThatGainWhatItSays) {
  for_thrown_prices([](const Cloth& cloth, const Prices& prices) {
    const InsideTable table(cloth, prices);
    const std::vector<std::int64_t> used = table.copies_used();
    // What a copy gains at most, whichever way it lies.
    std::int64_t most = 0;
    for (std::size_t p = 0; p < used.size(); ++p) {
      std::int64_t best = 0;
      for (const UnitShape& s : cloth.shapes)
        if (s.panel == static_cast<int>(p)) best = std::max(best, prices.priced(s) / s.uses);
      most += best * used[p];
    }
    EXPECT_EQ(table.most(cloth.root, cloth.width, cloth.height), most);
  });
}

// By place: exact where a cutting can hold such a build.
TEST(AroundTable, HoldsTheMostAroundEveryBuild) {
  for_thrown_prices([](const Cloth& cloth, const Prices& prices) {
    const InsideTable inside(cloth, prices);
    const AroundTable table(cloth, inside);
    SlowTable slow(cloth, prices);
    for (const Rim rim : {kLoose, kJoint}) {
      if (rim == kJoint && cloth.root == kLoose) continue;
      for (const int w : cloth.across[rim].list)
        for (const int h : cloth.along.list)
          if (const std::int64_t most = slow.around(rim, w, h); most >= 0) {
            EXPECT_EQ(table.most(rim, w, h), most) << rim << ": " << w << " x " << h;
          } else {
            EXPECT_LT(table.most(rim, w, h), 0) << rim << ": " << w << " x " << h;
          }
    }
  });
}

TEST(Prices, AreGivenBackForEveryCopyAllowed) {
  LimitedProblem problem;
  problem.width = problem.height = Length::units(4);
  problem.shapes = {{Length::units(2), Length::units(4), 0, false, false, 1, 5}};
  problem.limits = {3};
  const Cloth cloth(problem);
  const Prices prices{{7}};
  EXPECT_EQ(prices.given_back(cloth), 3 * 7);
  EXPECT_EQ(prices.priced(cloth.shapes[0]), 5 * kScale - 7);
  // Two fit: 2 × (80 − 7).
  EXPECT_EQ(InsideTable(cloth, prices).most(kLoose, 2, 2), 2 * 73);
}

}  // namespace
}  // namespace foldyard::limited
