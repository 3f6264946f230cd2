#include "job/limited_prices.h"

#include <gtest/gtest.h>

#include "job/defaults.h"

namespace foldyard {
namespace {

Job two_panels() {
  Job job = default_job();
  job.rolls = {{"grey", default_fabric(), Length::mm(3000)}};
  job.panels = {{"a", Length::mm(450), Length::mm(900), false, true, Worth::parts(100), 4},
                {"b", Length::mm(300), Length::mm(400), false, true, Worth::parts(10), 6}};
  return job;
}

TEST(PriceSearch, BeginsWithAllThatIsWanted) {
  const Job job = two_panels();
  const LimitedCase c(job, 0, Aim::most_worth, FoldWay{}, {});
  EXPECT_EQ(PriceSearch(c, {}).bound(), (4 * 100 + 6 * 10) * c.scale);
}

TEST(PriceSearch, RaisesThePriceOfWhatIsCutTooOften) {
  const Job job = two_panels();
  const LimitedCase c(job, 0, Aim::most_worth, FoldWay{}, {});
  PriceSearch search(c, {});
  EXPECT_TRUE(search.note({9, 2}, 459 * c.scale, 0));
  EXPECT_EQ(search.bound(), 459 * c.scale);  // less than 460: at no prices nothing is given back
  EXPECT_GT(search.prices()[0], 0);
  EXPECT_LE(search.prices()[0], 100 * c.scale);
  EXPECT_EQ(search.prices()[1], 0);  // never below nothing
}

TEST(PriceSearch, EndsWhereThePlanReachesTheBound) {
  const Job job = two_panels();
  const LimitedCase c(job, 0, Aim::most_worth, FoldWay{}, {});
  EXPECT_FALSE(PriceSearch(c, {}).note({4, 2}, 420 * c.scale, 420 * c.scale));
  EXPECT_FALSE(PriceSearch(c, {}).note({4, 6}, 459 * c.scale, 0));  // nothing is over or short
}

TEST(PriceSearch, GivesBackThePriceOfEveryCopyAllowed) {
  const Job job = two_panels();
  const LimitedCase c(job, 0, Aim::most_worth, FoldWay{}, {});
  EXPECT_EQ(PriceSearch(c, {}).given_back({7, 5}), 4 * 7 + 6 * 5);
}

}  // namespace
}  // namespace foldyard
