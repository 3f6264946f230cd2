#include "goods/cut_size.h"

#include <gtest/gtest.h>

#include <functional>

#include "core/support/any_goods.h"

namespace foldyard {
namespace {

using test::any_goods;
using test::goods_of;
using test::inches;
using test::sixteenths;
using test::tenths;

CutSize size_of(const Goods& goods, Piece piece = Piece::body, bool lining = false) {
  const Result<CutSize> size = cut_size({goods, piece, lining});
  EXPECT_TRUE(size) << size.problem().sentence();
  return size ? *size : CutSize{};
}

Goods known(GoodsKind kind, Length depth, Length seam, Length hem) {
  return goods_of(kind, {}, {}, depth, seam, hem);
}

// Outside checks, each with its source.

TEST(CutSize, OfAFlatBagWithSquaresOfTwoInchesGivesTheTutorialsBase) {
  // Source: lazygirldesigns.com, tutorial on boxed corners: a flat bag of 19 ×
  // 16 in with squares of 2 in gets a base of 15 × 4 in and is 14 in high. Sizes
  // between the seam lines, so no turnings.
  const Result<Goods> bag = finished_of(known(GoodsKind::two_panel_bag, inches(4), {}, {}),
                                        {inches(19), inches(16)});
  ASSERT_TRUE(bag);
  EXPECT_EQ(bag->width, inches(15));
  EXPECT_EQ(bag->height, inches(14));
}

TEST(CutSize, OfAWrapRoundPieceIsThePublishedOne) {
  // Source: ktgreendesign.com/lets-calculate: 12 1/2 in high, 13 in wide, 4 in
  // deep, seams of 1/2 in (at the top, too): cut 35 × 15 1/2 in.
  const Goods bag = goods_of(GoodsKind::wrap_round_bag, inches(13), sixteenths(200), inches(4),
                             sixteenths(8), sixteenths(8));
  EXPECT_EQ(size_of(bag), (CutSize{inches(35), sixteenths(248)}));
}

TEST(CutSize, OfSquaresOfOneAndAHalfInchesIsABaseOfThree) {
  // Source: captiveillusions.com: squares of 1 1/2 in give about 3 in of depth.
  // A flat bag of 12 × 10 in then loses 3 in of width and 1 1/2 in of height.
  const Result<Goods> bag = finished_of(known(GoodsKind::two_panel_bag, inches(3), {}, {}),
                                        {inches(12), inches(10)});
  ASSERT_TRUE(bag);
  EXPECT_EQ(bag->width, inches(9));
  EXPECT_EQ(bag->height, sixteenths(136));
}

TEST(CutSize, OfACushionCoverWithAZipIsThePublishedOne) {
  // Source: busywork.wordpress.com, 2007: a cushion of 40 × 40 cm, seams of
  // 1 cm, 2.5 cm at the zip: front 42 × 42 cm, two backs of 23.5 × 42 cm.
  const Goods cover = goods_of(GoodsKind::cushion_cover, Length::mm(400), Length::mm(400), {},
                               Length::mm(10), Length::mm(25));
  EXPECT_EQ(size_of(cover), (CutSize{Length::mm(420), Length::mm(420)}));
  EXPECT_EQ(size_of(cover, Piece::back), (CutSize{Length::mm(235), Length::mm(420)}));
}

TEST(CutSize, OfAOnePieceBagIsTwiceAsLongAsWide) {
  // Common practice, no source: a panel of 18 × 36 in, hems of 1 in, corners
  // boxed at 3 1/2 in. With seams of 1/2 in: 18 − 7 − 1 = 10 in wide and
  // (36 − 7) / 2 − 1 = 13 1/2 in high.
  const Result<Goods> bag =
      finished_of(known(GoodsKind::one_piece_bag, inches(7), sixteenths(8), inches(1)),
                  {inches(18), inches(36)});
  ASSERT_TRUE(bag);
  EXPECT_EQ(bag->width, inches(10));
  EXPECT_EQ(bag->height, sixteenths(216));
  EXPECT_EQ(size_of(*bag), (CutSize{inches(18), inches(36)}));
}

TEST(CutSize, OfAStrapIsAStripFourTimesItsWidth) {
  // Common practice, no source: a strip of 4 in makes a strap of 1 in. Across
  // cloth 54 in wide, with 1 in turned in at each end, it is 52 in long.
  const Goods strap = goods_of(GoodsKind::strap, inches(1), inches(52), {}, {}, inches(1));
  EXPECT_EQ(size_of(strap), (CutSize{inches(54), inches(4)}));
}

// By hand, from the header's formulas: width 30, height 35, depth 12, seam 1,
// hem 3, all cm.
TEST(CutSize, FollowsFromEachKindsSeams) {
  const auto cm = [](std::int64_t n) { return Length::mm(n * 10); };
  const auto of = [&](GoodsKind kind, Length depth, Length hem) {
    return goods_of(kind, cm(30), cm(35), depth, cm(1), hem);
  };
  EXPECT_EQ(size_of(of(GoodsKind::one_piece_bag, cm(12), cm(3))), (CutSize{cm(44), cm(88)}));
  EXPECT_EQ(size_of(of(GoodsKind::flat_pouch, {}, cm(3))), (CutSize{cm(32), cm(76)}));
  EXPECT_EQ(size_of(of(GoodsKind::two_panel_bag, cm(12), cm(3))), (CutSize{cm(44), cm(45)}));
  EXPECT_EQ(size_of(of(GoodsKind::wrap_round_bag, cm(12), cm(3))), (CutSize{cm(86), cm(45)}));
  const Goods box = of(GoodsKind::box_cover, cm(12), {});
  EXPECT_EQ(size_of(box), (CutSize{cm(32), cm(37)}));
  EXPECT_EQ(size_of(box, Piece::strip), (CutSize{cm(14), cm(132)}));
  Goods cushion = of(GoodsKind::cushion_cover, {}, cm(3));
  cushion.overlap = cm(10);
  EXPECT_EQ(size_of(cushion, Piece::back), (CutSize{cm(24), cm(37)}));
}

TEST(CutSize, OfALiningHasASeamWhereTheClothHasAHem) {
  const auto cm = [](std::int64_t n) { return Length::mm(n * 10); };
  const Goods bag = goods_of(GoodsKind::one_piece_bag, cm(30), cm(35), cm(12), cm(1), cm(3));
  EXPECT_EQ(size_of(bag, Piece::body, true), (CutSize{cm(44), cm(84)}));
  const Goods cover = goods_of(GoodsKind::cushion_cover, cm(40), cm(40), {}, cm(1), cm(4));
  EXPECT_EQ(size_of(cover, Piece::body, true), size_of(cover));
  EXPECT_EQ(size_of(cover, Piece::back, true), (CutSize{cm(22), cm(42)}));
}

// Fold and stitch, apart from the formulas. A bag's cloth between its seam and
// hem lines is a plane sheet. Sewn up, it covers the base and four walls once,
// and what is left lies in the corners that were flattened: each holds two
// plies of a right triangle whose long side is the depth, so d²/4 a ply.
Area box_and_corners(const Goods& bag) {
  const Area base = bag.width * bag.depth;
  const Area walls = bag.width * bag.height * 2 + bag.depth * bag.height * 2;
  const Length line = bag.depth / 2;              // from a corner's tip
  const Area triangle_twice = bag.depth * line;   // base times height
  return base + walls + triangle_twice * 2;       // two corners of two plies, half each
}

TEST(CutSize, OfBagsIsTheSurfaceOfTheirBoxAndTheirCorners) {
  test::Dice dice(test::first_seed());
  for (int i = 0; i < 300; ++i) {
    const Goods one = any_goods(dice, GoodsKind::one_piece_bag);
    const CutSize a = size_of(one);
    EXPECT_EQ((a.across - one.seam * 2) * (a.along - one.hem * 2), box_and_corners(one));
    const Goods two = any_goods(dice, GoodsKind::two_panel_bag);
    const CutSize b = size_of(two);
    EXPECT_EQ((b.across - two.seam * 2) * (b.along - two.seam - two.hem) * 2, box_and_corners(two));
    const Goods round = any_goods(dice, GoodsKind::wrap_round_bag);
    const CutSize c = size_of(round);
    EXPECT_EQ((c.across - round.seam * 2) * (c.along - round.seam - round.hem),
              box_and_corners(round));
  }
}

TEST(CutSize, OfCoversIsTheSurfaceOfWhatTheyCover) {
  test::Dice dice(test::first_seed());
  for (int i = 0; i < 300; ++i) {
    const Goods box = any_goods(dice, GoodsKind::box_cover);
    const CutSize top = size_of(box);
    const CutSize strip = size_of(box, Piece::strip);
    const Length s = box.seam * 2;
    const Area surface = box.width * box.height * 2 + (box.width + box.height) * box.depth * 2;
    EXPECT_EQ((top.across - s) * (top.along - s) * 2 + (strip.across - s) * (strip.along - s),
              surface);
    const Goods cushion = any_goods(dice, GoodsKind::cushion_cover);
    if (!cut_size({cushion, Piece::back})) continue;
    const CutSize back = size_of(cushion, Piece::back);
    const Length between = back.across - cushion.seam - cushion.hem;
    EXPECT_EQ(between * 2, cushion.width + cushion.overlap);
  }
}

TEST(FinishedOf, UndoesTheCutSize) {
  test::Dice dice(test::first_seed());
  for (int i = 0; i < 100; ++i) {
    for (GoodsKind kind : kGoodsKinds) {
      const Goods goods = any_goods(dice, kind);
      Goods without = goods;
      without.width = without.height = Length();
      if (!cut_size({goods})) continue;
      const Result<Goods> back = finished_of(without, size_of(goods));
      ASSERT_TRUE(back) << kind_name(kind) << ": " << back.problem().sentence();
      EXPECT_EQ(*back, goods) << kind_name(kind);
    }
  }
}

TEST(FinishedOf, RefusesAPanelThatItsTurningsTake) {
  const Goods bag = known(GoodsKind::one_piece_bag, Length::mm(100), Length::mm(10), Length::mm(20));
  // Width 121 − 20 − 100 = 1 mm; height (142 − 100) / 2 − 20 = 1 mm.
  EXPECT_TRUE(finished_of(bag, {Length::mm(121), Length::mm(142)}));
  const Result<Goods> narrow = finished_of(bag, {Length::mm(120), Length::mm(142)});
  ASSERT_FALSE(narrow);
  EXPECT_EQ(narrow.problem().where, "across");
  const Result<Goods> low = finished_of(bag, {Length::mm(121), Length::mm(140)});
  ASSERT_FALSE(low);
  EXPECT_EQ(low.problem().where, "along");
}

// Each back is half of the cover and its overlap.
TEST(FinishedOf, RefusesACoverWhoseBackIsNoWholeUnit) {
  Goods cover = known(GoodsKind::cushion_cover, {}, Length::mm(10), Length::mm(25));
  cover.overlap = Length::mm(100);
  EXPECT_TRUE(finished_of(cover, {Length::mm(420), Length::mm(420)}));
  const Result<Goods> odd = finished_of(cover, {Length::mm(420) + Length::units(1), Length::mm(420)});
  ASSERT_FALSE(odd);
  EXPECT_EQ(odd.problem().where, "overlap");
}

TEST(FinishedOf, RefusesSharesThatAreNoWholeUnit) {
  const Length odd = Length::mm(400) + Length::units(1);
  const Goods bag = known(GoodsKind::one_piece_bag, {}, {}, {});
  EXPECT_FALSE(finished_of(bag, {Length::mm(300), odd}));
  EXPECT_TRUE(finished_of(bag, {odd, Length::mm(300)}));
  EXPECT_FALSE(finished_of(known(GoodsKind::wrap_round_bag, {}, {}, {}), {odd, Length::mm(300)}));
  const Goods strap = known(GoodsKind::strap, {}, {}, {});
  EXPECT_FALSE(finished_of(strap, {Length::mm(900), Length::units(402)}));
  EXPECT_TRUE(finished_of(strap, {Length::mm(900), Length::units(404)}));
}

// What is refused: each row spoils good goods in one field.
struct Refusal {
  const char* where;
  GoodsKind kind;
  std::function<void(Sewn&)> spoil;
};

TEST(GoodsProblem, NamesTheFieldThatIsWrong) {
  const Length odd = Length::units(1);
  const Refusal rows[] = {
      {"width", GoodsKind::flat_pouch, [](Sewn& s) { s.goods.width = {}; }},
      {"height", GoodsKind::flat_pouch, [](Sewn& s) { s.goods.height = -Length::mm(1); }},
      {"depth", GoodsKind::flat_pouch, [](Sewn& s) { s.goods.depth = Length::mm(2); }},
      {"depth", GoodsKind::box_cover, [](Sewn& s) { s.goods.depth = {}; }},
      {"depth", GoodsKind::one_piece_bag, [=](Sewn& s) { s.goods.depth += odd; }},
      {"depth", GoodsKind::wrap_round_bag, [=](Sewn& s) { s.goods.depth += odd; }},
      {"seam", GoodsKind::strap, [](Sewn& s) { s.goods.seam = Length::mm(2); }},
      {"hem", GoodsKind::box_cover, [](Sewn& s) { s.goods.hem = Length::mm(2); }},
      {"overlap", GoodsKind::two_panel_bag, [](Sewn& s) { s.goods.overlap = Length::mm(2); }},
      {"overlap", GoodsKind::cushion_cover, [=](Sewn& s) { s.goods.overlap = odd; }},
      {"handles", GoodsKind::cushion_cover, [](Sewn& s) { s.goods.handles = 1; }},
      {"handles", GoodsKind::one_piece_bag, [](Sewn& s) { s.goods.handles = -1; }},
      {"handle", GoodsKind::one_piece_bag, [](Sewn& s) { s.goods.handles = 2; }},
      {"handle", GoodsKind::one_piece_bag, [](Sewn& s) { s.goods.handle = Length::mm(2); }},
      {"piece", GoodsKind::one_piece_bag, [](Sewn& s) { s.piece = Piece::back; }},
      {"piece", GoodsKind::cushion_cover, [](Sewn& s) { s.piece = Piece::strip; }},
      {"lining", GoodsKind::strap, [](Sewn& s) { s.lining = true; }},
  };
  for (const Refusal& row : rows) {
    Sewn sewn;
    sewn.goods = goods_of(row.kind, Length::mm(300), Length::mm(350), {}, {}, {});
    if (has_depth(row.kind)) sewn.goods.depth = Length::mm(120);
    EXPECT_FALSE(goods_problem(sewn)) << row.where << ", " << kind_name(row.kind);
    row.spoil(sewn);
    const auto problem = goods_problem(sewn);
    ASSERT_TRUE(problem) << row.where << ", " << kind_name(row.kind);
    EXPECT_EQ(problem->where, row.where);
    EXPECT_FALSE(problem->next.empty());
    EXPECT_FALSE(cut_size(sewn));
  }
}

TEST(CutSize, OfABoxCoverNeedsNoHalfOfItsDepth) {
  const Goods box = goods_of(GoodsKind::box_cover, Length::mm(300), Length::mm(300),
                             Length::mm(50) + Length::units(1), Length::mm(10), {});
  EXPECT_EQ(size_of(box, Piece::strip).across, Length::mm(70) + Length::units(1));
}

}  // namespace
}  // namespace foldyard
