#include "goods/goods_facts.h"

#include <gtest/gtest.h>

#include "goods/cut_size.h"
#include "core/support/any_goods.h"

namespace foldyard {
namespace {

using test::goods_of;
using test::inches;
using test::sixteenths;

Goods bag_of(Length width, Length height, Length depth, Length seam = {}) {
  return goods_of(GoodsKind::two_panel_bag, width, height, depth, seam, {});
}

TEST(Volume, OfABaseOf15By4InchesAnd14HighIs13Point77Litres) {
  // Source of the sizes: lazygirldesigns.com, tutorial on boxed corners. 15 × 4
  // × 14 = 840 cubic inches of 16.387064 cm³ are 13.765 litres.
  const Goods bag = bag_of(inches(15), inches(14), inches(4));
  EXPECT_TRUE(box_units(bag) == Wide{840} * 8128 * 8128 * 8128);
  EXPECT_EQ(centilitres(bag), 1377);
}

TEST(Volume, RoundsToTheNearestCentilitre) {
  const Goods litre = bag_of(Length::mm(100), Length::mm(100), Length::mm(100));
  EXPECT_EQ(centilitres(litre), 100);
  // 10 × 10 × 50 mm are 5 cm³, half a centilitre; 49 mm a little less.
  EXPECT_EQ(centilitres(bag_of(Length::mm(10), Length::mm(10), Length::mm(50))), 1);
  EXPECT_EQ(centilitres(bag_of(Length::mm(10), Length::mm(10), Length::mm(49))), 0);
}

TEST(Volume, StaysExactForTheLargestGoods) {
  // 10 m × 10 m × 1 km are 100 000 m³: ten thousand million centilitres.
  const Goods tent = bag_of(Length::mm(10'000), kLongest, Length::mm(10'000));
  EXPECT_EQ(centilitres(tent), 10'000'000'000);
}

TEST(Volume, IsNoneForFlatGoods) {
  EXPECT_EQ(centilitres(goods_of(GoodsKind::flat_pouch, inches(9), inches(6), {}, {}, {})), 0);
}

TEST(Corner, IsMarkedAtHalfTheBase) {
  // Source: forgetfulone.com, November 2022: a base of 5 in, mark 2 1/2 in from
  // the tip.
  EXPECT_EQ(corner_line(bag_of(inches(12), inches(12), inches(5))), sixteenths(40));
}

TEST(Corner, IsASquareOfHalfTheBaseAndTheSeam) {
  // Source: bestfabricstore.com: a base of 2 in, seams of 1/2 in, the square
  // measured from the raw edges: 1 1/2 in.
  EXPECT_EQ(corner_square(bag_of(inches(12), inches(12), inches(2), sixteenths(8))),
            sixteenths(24));
}

TEST(Corner, IsNoneWithoutDepthAndForABox) {
  EXPECT_EQ(corner_line(bag_of(inches(12), inches(12), {})), Length());
  EXPECT_EQ(corner_square(bag_of(inches(12), inches(12), {}, inches(1))), Length());
  EXPECT_EQ(corner_line(goods_of(GoodsKind::box_cover, inches(12), inches(12), inches(4), {}, {})),
            Length());
}

TEST(HandleMarks, LieAtTheQuarterPointsOfThePanel) {
  // Common practice, no source: the quarter points of a panel 18 in wide.
  Goods bag = goods_of(GoodsKind::one_piece_bag, inches(10), sixteenths(216), inches(7),
                       sixteenths(8), inches(1));
  EXPECT_TRUE(handle_marks(bag).empty());
  bag.handles = 2;
  bag.handle = Length::mm(550);
  ASSERT_EQ(cut_size({bag})->across, inches(18));
  EXPECT_EQ(handle_marks(bag), (std::vector<Length>{sixteenths(72), sixteenths(216)}));
}

TEST(HandleMarks, OfAWrapRoundBagLieOnBothFaces) {
  // Faces of 13 + 3 = 16 in behind a seam of 1/2 in: 4 and 12 in into each.
  Goods bag = goods_of(GoodsKind::wrap_round_bag, inches(13), inches(12), inches(3), sixteenths(8),
                       inches(1));
  bag.handles = 2;
  EXPECT_EQ(handle_marks(bag), (std::vector<Length>{sixteenths(72), sixteenths(200),
                                                    sixteenths(328), sixteenths(456)}));
}

TEST(HandleMarks, RoundDownToAWholeUnit) {
  Goods bag = bag_of(Length::units(1003), Length::mm(300), {});
  bag.handles = 1;
  // 1003 / 4 = 250.75 and 3 × 1003 / 4 = 752.25.
  EXPECT_EQ(handle_marks(bag), (std::vector<Length>{Length::units(250), Length::units(752)}));
}

TEST(Webbing, IsTwoHandlesOf55CentimetresFrom110) {
  // Common practice, no source.
  Goods bag = bag_of(inches(10), inches(13), inches(7));
  bag.handles = 2;
  bag.handle = Length::mm(550);
  EXPECT_EQ(webbing(bag), Length::mm(1100));
}

TEST(Webbing, OfHandlesThatRunAroundAToteIsWithinThePublishedRange) {
  // Source: instructables.com, How to make a tote bag: 12 × 12 × 10 in, webbing
  // four times the bag's height and 2 to 4 ft: 72 to 96 in. Each handle runs up
  // and down one face (sewn down over the height) and 12 to 24 in beyond it.
  Goods tote = bag_of(inches(12), inches(12), inches(10), sixteenths(8));
  tote.handles = 2;
  tote.handle = handle_for_drop(inches(5), inches(2), tote.height);
  EXPECT_EQ(webbing(tote), inches(72));
  tote.handle = handle_for_drop(inches(11), inches(2), tote.height);
  EXPECT_EQ(webbing(tote), inches(96));
}

TEST(HandleForDrop, OfEightInchesIsTwenty) {
  // Source: knittingcaboodle, April 2007: 8 + 8 in of drop, 2 in over the
  // shoulder, 2 in to put in (1 in at each end): 20 in.
  EXPECT_EQ(handle_for_drop(inches(8), inches(2), inches(1)), inches(20));
}

}  // namespace
}  // namespace foldyard
