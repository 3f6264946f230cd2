#include "cutting/limited_prices.h"

#include <gtest/gtest.h>

#include "core/cutting/limited_throws.h"
#include "core/cutting/limited_witness.h"

namespace foldyard::limited {
namespace {

std::int64_t nothing_found(const InsideTable&, const Prices&) { return 0; }

// 4 × 1 of cloth, pieces of 1 × 1 with gain 5, one allowed, and of gain 3, four.
LimitedProblem one_dear() {
  LimitedProblem problem;
  problem.width = Length::units(4);
  problem.height = Length::units(1);
  problem.shapes = {{Length::units(1), Length::units(1), 0, false, false, 1, 5},
                    {Length::units(1), Length::units(1), 1, false, false, 1, 3}};
  problem.limits = {1, 4};
  return problem;
}

TEST(LimitedPrices, MakeDearWhatIsUsedTooOften) {
  // Without prices four of the first: 20. At a price of 2 each gains 3: 4 × 3
  // and 2 given back are 14, which is what one of 5 and three of 3 gain.
  const Cloth cloth(one_dear());
  const Priced priced = find_prices(cloth, nothing_found);
  EXPECT_GE(priced.bound, 14 * kScale);
  EXPECT_LT(priced.bound, 15 * kScale);
  EXPECT_GT(priced.prices.panel[0], 0);
  EXPECT_EQ(priced.prices.panel[1], 0);
}

TEST(LimitedPrices, StopWhereTheBoundIsReached) {
  const Cloth cloth(one_dear());
  int rounds = 0;
  find_prices(cloth, [&](const InsideTable&, const Prices&) {
    ++rounds;
    return 20;  // the bound of the first round
  });
  EXPECT_EQ(rounds, 1);
}

TEST(LimitedPrices, BoundEveryCutting) {
  const unsigned first = test::first_seed();
  for (unsigned seed = first; seed < first + 200 && !testing::Test::HasFailure(); ++seed) {
    const LimitedProblem problem = test::throw_limited(seed, seed % 2 == 0);
    SCOPED_TRACE("FOLDYARD_SEED=" + std::to_string(seed) + ": " + test::text(problem));
    const Cloth cloth(problem);
    const Priced priced = find_prices(cloth, nothing_found);
    EXPECT_GE(priced.bound, test::LimitedWitness(problem).best() * kScale);
    // Never worse than without prices, nor than all copies together.
    const Prices none{std::vector<std::int64_t>(cloth.limits.size(), 0)};
    EXPECT_LE(priced.bound, InsideTable(cloth, none).most(cloth.root, cloth.width, cloth.height));
    for (const std::int64_t price : priced.prices.panel) EXPECT_GE(price, 0);
  }
}

}  // namespace
}  // namespace foldyard::limited
