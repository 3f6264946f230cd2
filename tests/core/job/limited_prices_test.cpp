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

// A panel that is not worth its time is in no plan: it adds nothing to what all would gain, with
// a limit or without, and needs no price.
TEST(PriceSearch, LeavesOutWhatIsNotWorthItsTime) {
  Job job = two_panels();
  job.panels[0].worth = Worth::whole(100);
  job.panels[1].worth = Worth::parts(1);
  for (const std::optional<std::int64_t> most : {std::optional<std::int64_t>(6), std::optional<std::int64_t>()}) {
    job.panels[1].at_most = most;
    const LimitedCase c(job, 0, Aim::worth_less_time, FoldWay{}, {});
    ASSERT_GT(c.gains[0], 0);
    ASSERT_LE(c.gains[1], 0);
    PriceSearch search(c, {});
    EXPECT_EQ(search.bound(), 4 * c.gains[0]);
    EXPECT_TRUE(search.note({9, 20}, 4 * c.gains[0] - 1, 0));
    EXPECT_GT(search.prices()[0], 0);
    EXPECT_EQ(search.prices()[1], 0);
  }
}

}  // namespace
}  // namespace foldyard
