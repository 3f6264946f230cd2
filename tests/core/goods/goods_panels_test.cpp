#include "goods/goods_panels.h"

#include <gtest/gtest.h>

#include "core/support/any_goods.h"

namespace foldyard {
namespace {

using test::goods_of;

const Goods kCushion = goods_of(GoodsKind::cushion_cover, Length::mm(400), Length::mm(400), {},
                                Length::mm(10), Length::mm(25));

std::vector<GoodsPanel> good_panels(const Goods& goods, bool is_lined) {
  const auto panels = panels_of("Oak", goods, is_lined);
  EXPECT_TRUE(panels);
  return panels ? *panels : std::vector<GoodsPanel>();
}

std::vector<std::string> names_of(const Goods& goods, bool is_lined) {
  std::vector<std::string> names;
  for (const GoodsPanel& panel : good_panels(goods, is_lined)) {
    names.push_back(std::to_string(panel.count) + " " + panel.name);
  }
  return names;
}

TEST(PanelsOf, NameAndCountEveryPiece) {
  using Names = std::vector<std::string>;
  EXPECT_EQ(names_of(kCushion, false), (Names{"1 Oak, front", "2 Oak, back"}));
  EXPECT_EQ(names_of(kCushion, true), (Names{"1 Oak, front", "2 Oak, back",
                                             "1 Oak, lining of the front",
                                             "2 Oak, lining of the back"}));
  const Goods bag = goods_of(GoodsKind::two_panel_bag, Length::mm(300), Length::mm(300),
                             Length::mm(100), Length::mm(10), Length::mm(30));
  EXPECT_EQ(names_of(bag, true), (Names{"2 Oak", "2 Oak, lining"}));
  const Goods box = goods_of(GoodsKind::box_cover, Length::mm(300), Length::mm(300),
                             Length::mm(100), Length::mm(10), {});
  EXPECT_EQ(names_of(box, false), (Names{"2 Oak, top and bottom", "1 Oak, strip"}));
}

TEST(PanelsOf, HaveTheCutSizesOfTheirPieces) {
  for (const GoodsPanel& panel : good_panels(kCushion, true)) {
    EXPECT_EQ(panel.size, cut_size(panel.sewn).value());
    EXPECT_EQ(panel.sewn.goods, kCushion);
    EXPECT_EQ(panel.count, needed(panel.sewn));
  }
}

TEST(PanelsOf, RefuseWhatCannotBeSewn) {
  Goods strap = goods_of(GoodsKind::strap, Length::mm(25), Length::mm(600), {}, {}, {});
  EXPECT_TRUE(panels_of("Strap", strap, false));
  const auto lined = panels_of("Strap", strap, true);
  ASSERT_FALSE(lined);
  EXPECT_EQ(lined.problem().where, "lining");
  strap.width = {};
  EXPECT_FALSE(panels_of("Strap", strap, false));
}

TEST(PanelsOf, NamePiecesInTheMakersLanguage) {
  const auto panels = panels_of("Kissen", kCushion, false, [](const Words& piece) { return piece == "front" ? "vorn" : "hinten"; });
  ASSERT_TRUE(panels);
  EXPECT_EQ((*panels)[0].name, "Kissen, vorn");
  EXPECT_EQ((*panels)[1].name, "Kissen, hinten");
}

TEST(GoodsName, LeavesThePieceOut) {
  std::vector<std::string> names;
  for (const GoodsPanel& panel : good_panels(kCushion, true)) names.push_back(panel.name);
  EXPECT_EQ(goods_name(names), "Oak");
  EXPECT_EQ(goods_name({"Kissen 2, groß, vorn", "Kissen 2, groß, hinten"}), "Kissen 2, groß");
}

TEST(GoodsName, IsTheFirstWhereNothingIsShared) {
  EXPECT_EQ(goods_name({"Square", "Square, back"}), "Square");
  EXPECT_EQ(goods_name({"Oak, front", "Fir, back"}), "Oak, front");
  EXPECT_EQ(goods_name({", back"}), ", back");
}

}  // namespace
}  // namespace foldyard
