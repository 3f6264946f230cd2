#include "job/start_job.h"

#include <gtest/gtest.h>

#include "goods/cut_size.h"
#include "job/check_job.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

TEST(StartJob, OfEveryClothAndAllGoodsStands) {
  for (const ClothKind& kind : cloth_kinds()) {
    Job job = default_job();
    add_roll(job, kind, Length::mm(20'000));
    for (const ReadyGoods& goods : ready_goods()) {
      EXPECT_FALSE(add_goods(job, std::string(goods.name), goods.goods, goods.is_lined));
    }
    const auto problem = check_job(job);
    EXPECT_FALSE(problem) << kind.key << ": " << problem->sentence();
  }
}

TEST(StartJob, TakesTheClothAsItsKindSays) {
  Job job = default_job();
  add_roll(job, *cloth_kind("velvet"), Length::mm(20'000));
  EXPECT_EQ(job.rolls[0].name, "Velvet");
  EXPECT_EQ(job.rolls[0].fabric, cloth_kind("velvet")->fabric);
  EXPECT_EQ(job.rolls[0].length, Length::mm(20'000));
}

TEST(StartJob, GivesEachItsOwnName) {
  Job job = default_job();
  const ReadyGoods& cushion = *goods_by_key("cushion");
  for (int i = 0; i < 2; ++i) {
    add_roll(job, *cloth_kind("velvet"), Length::mm(20'000));
    EXPECT_FALSE(add_goods(job, "Oak", cushion.goods, false));
  }
  EXPECT_EQ(job.rolls[1].name, "Velvet 2");
  EXPECT_EQ(job.panels[2].name, "Oak 2, front");
  EXPECT_EQ(job.panels[3].name, "Oak 2, back");
}

TEST(StartJob, TakesSizeAndWorthFromTheGoods) {
  Job job = default_job();
  const Goods& goods = goods_by_key("carrier")->goods;
  EXPECT_FALSE(add_goods(job, "Carrier", goods, false));
  const Panel& panel = job.panels.at(0);
  EXPECT_EQ((CutSize{panel.across, panel.along}), cut_size({goods}).value());
  EXPECT_EQ(panel.sewn->goods, goods);
  EXPECT_EQ(panel.worth, default_worth(panel.area()));
}

TEST(StartJob, AddsNothingOfGoodsThatCannotBeSewn) {
  Job job = default_job();
  EXPECT_TRUE(add_goods(job, "Nothing", Goods(), false));
  EXPECT_TRUE(job.panels.empty());
}

}  // namespace
}  // namespace foldyard
