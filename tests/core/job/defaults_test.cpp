#include "job/defaults.h"

#include <gtest/gtest.h>

#include <set>

namespace foldyard {
namespace {

TEST(Defaults, EachHasAKeyOfItsOwnAValueAndABasis) {
  std::set<std::string_view> keys;
  for (const Default& entry : defaults()) {
    EXPECT_TRUE(keys.insert(entry.key).second) << entry.key;
    EXPECT_FALSE(entry.value.empty()) << entry.key;
    EXPECT_EQ(entry.is_assumption, entry.basis.starts_with("assumption")) << entry.key;
    EXPECT_GT(entry.basis.size(), 20u) << entry.key;
  }
}

TEST(Defaults, MakeTheJobThatTheTableSays) {
  const Job job = default_job();
  EXPECT_EQ(job.table, (Table{Length::mm(2500), Length::mm(1600), Length::mm(800), true}));
  EXPECT_EQ(job.cutter, (Cutter{Length::mm(25), 12}));
  EXPECT_EQ(job.losses, (Losses{Length::mm(100), Length::mm(40), Length::mm(5), Length::mm(300),
                                Length::mm(300)}));
  EXPECT_EQ(job.pace.ms_per_metre, 20'000);
  EXPECT_EQ(job.pace.unroll, Duration::seconds(120));
  EXPECT_EQ(job.pace.cross_cut, Duration::seconds(60));
  EXPECT_EQ(job.pace.fold, Duration::seconds(30));
  EXPECT_EQ(job.pace.lift, Duration::seconds(60));
  EXPECT_EQ(job.pace.mark, Duration::seconds(15));
  EXPECT_EQ(job.pace.handle, Duration::seconds(4));
  EXPECT_EQ(job.pace.allowance_percent, 15);
  EXPECT_EQ(job.pace.rate, Worth::whole(20));
  EXPECT_EQ(job.longest_fan, 6);
  EXPECT_EQ(job.notions, (Notions{28, Length::mm(500'000), Worth::whole(4), Worth::parts(2'000)}));
  EXPECT_EQ(job.sitting, Duration::seconds(10'800));
  EXPECT_EQ(job.cloth_price, Worth::whole(10));
  EXPECT_EQ(job.cloth_price, Job().cloth_price);
  EXPECT_EQ(job.notions, Job().notions);
  EXPECT_EQ(job.sitting, Job().sitting);
  EXPECT_TRUE(job.rolls.empty());
  EXPECT_TRUE(job.panels.empty());
}

TEST(Defaults, MakeTheFabricThatTheTableSays) {
  EXPECT_EQ(default_fabric(), (Fabric{Length::mm(1400), Length::mm(15), Length::mm(1), Nap::none,
                                      "#c9b79c"}));
}

TEST(DefaultWorth, IsTheAreaAtTwentyASquareMetreRoundedDown) {
  // 0.45 m × 0.9 m = 0.405 m², 8.10.
  EXPECT_EQ(default_worth(Length::mm(450) * Length::mm(900)), Worth::parts(81'000));
  // 0.333 m × 0.777 m = 0.258741 m², 5.17482, rounded down to 5.1748.
  EXPECT_EQ(default_worth(Length::mm(333) * Length::mm(777)), Worth::parts(51'748));
  // 5 mm × 5 mm = 0.000025 m², 0.0005.
  EXPECT_EQ(default_worth(Length::mm(5) * Length::mm(5)), Worth::parts(5));
  EXPECT_EQ(default_worth(Area{}), Worth::parts(1));
  // 1 km × 10 m = 10 000 m², 200 000: larger than 64 bits in one product.
  EXPECT_EQ(default_worth(kLongest * Length::mm(10'000)), Worth::whole(200'000));
}

}  // namespace
}  // namespace foldyard
