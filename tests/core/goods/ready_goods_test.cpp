#include "goods/ready_goods.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "goods/goods_facts.h"
#include "goods/goods_panels.h"

namespace foldyard {
namespace {

TEST(ReadyGoods, StandInTheOrderOfTheirKeysAndAreFoundByThem) {
  const auto& all = ready_goods();
  EXPECT_TRUE(std::is_sorted(all.begin(), all.end(),
                             [](const auto& a, const auto& b) { return a.key < b.key; }));
  for (const ReadyGoods& each : all) EXPECT_EQ(goods_by_key(each.key), &each);
  EXPECT_EQ(goods_by_key("Tote"), nullptr);
}

TEST(ReadyGoods, HaveEveryKindAndItsPanels) {
  std::set<GoodsKind> kinds;
  for (const ReadyGoods& each : ready_goods()) {
    kinds.insert(each.goods.kind);
    const auto panels = panels_of(std::string(each.name), each.goods, each.is_lined);
    ASSERT_TRUE(panels) << each.key << ": " << panels.problem().sentence();
    for (const GoodsPanel& panel : *panels) {
      EXPECT_LT(panel.size.across, Length::mm(1370)) << panel.name;  // a roll of 54 in holds it
    }
  }
  EXPECT_EQ(kinds.size(), kGoodsKinds.size());
}

TEST(ReadyGoods, HaveTheHalfYardCarriersPanel) {
  // Common practice, no source: 18 × 36 in, twice as long as wide, from which a
  // bag of 10 × 7 × 13 1/2 in (945 cubic inches, 15.49 litres) is sewn.
  const Goods& goods = goods_by_key("half-yard-carrier")->goods;
  EXPECT_EQ(cut_size({goods}).value(), (CutSize{Length::inches64(18 * 64), Length::inches64(36 * 64)}));
  EXPECT_EQ(centilitres(goods), 1549);
  EXPECT_EQ(webbing(goods), Length::mm(1100));
}

TEST(ReadyGoods, CarryWhatShoppingBagsDo) {
  // Ordinary shopping bags hold 10 to 20 litres (an old encyclopaedia text, seen
  // as a copy); the largest here a little more.
  for (const ReadyGoods& each : ready_goods()) {
    if (each.goods.handles == 0) continue;
    EXPECT_GE(centilitres(each.goods), 1000) << each.key;
    EXPECT_LE(centilitres(each.goods), 2200) << each.key;
  }
}

}  // namespace
}  // namespace foldyard
