// The values of goods are told apart by each member.
#include <gtest/gtest.h>

#include "core/support/told_apart.h"
#include "goods/cut_size.h"
#include "goods/goods_panels.h"
#include "goods/turnings.h"

namespace foldyard {

Turning another(const Turning& turning) { return with_another(turning, &Turning::depth); }
CutSize another(const CutSize& size) { return with_another(size, &CutSize::across); }

namespace {

TEST(ValuesOfGoods, AreToldApartByEachMember) {
  expect_told_apart(Goods(), &Goods::kind, &Goods::width, &Goods::height, &Goods::depth, &Goods::seam, &Goods::hem,
                    &Goods::overlap, &Goods::handles, &Goods::handle);
  expect_told_apart(Sewn(), &Sewn::goods, &Sewn::piece, &Sewn::lining);
  expect_told_apart(CutSize(), &CutSize::across, &CutSize::along);
  expect_told_apart(GoodsPanel(), &GoodsPanel::name, &GoodsPanel::sewn, &GoodsPanel::size, &GoodsPanel::count);
  expect_told_apart(Turning(), &Turning::depth, &Turning::is_seam);
  expect_told_apart(Turnings(), &Turnings::left, &Turnings::right, &Turnings::near, &Turnings::far);
}

TEST(ValuesOfAPanel, AreToldApartByEachMember) {
  expect_told_apart(Panel(), &Panel::name, &Panel::across, &Panel::along, &Panel::may_turn, &Panel::on_fold,
                    &Panel::worth, &Panel::at_most, &Panel::grain, &Panel::match, &Panel::sewn);
}

TEST(ValuesOfAProduct, AreToldApartByEachMember) {
  expect_told_apart(PanelCount(), &PanelCount::panel, &PanelCount::count, &PanelCount::from);
  expect_told_apart(WebbingCut(), &WebbingCut::webbing, &WebbingCut::length, &WebbingCut::count);
  expect_told_apart(SalePrice(), &SalePrice::of, &SalePrice::price);
  expect_told_apart(Product(), &Product::name, &Product::panels, &Product::webbing, &Product::worth, &Product::price,
                    &Product::prices, &Product::seam, &Product::labels, &Product::sewing);
}

TEST(ValuesOfWhatIsSewnWith, AreToldApartByEachMember) {
  expect_told_apart(SewingStep(), &SewingStep::name, &SewingStep::usual, &SewingStep::timed);
  expect_told_apart(SewingOrder(), &SewingOrder::name, &SewingOrder::steps);
  expect_told_apart(Webbing(), &Webbing::name, &Webbing::roll, &Webbing::price, &Webbing::ends, &Webbing::loss);
  expect_told_apart(Notions(), &Notions::thread_tenths, &Notions::reel, &Notions::reel_price, &Notions::label_price);
}

}  // namespace
}  // namespace foldyard
