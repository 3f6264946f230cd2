#include "goods/turnings.h"

#include <gtest/gtest.h>

#include "core/support/any_goods.h"
#include "goods/cut_size.h"

namespace foldyard {
namespace {

using test::goods_of;

CutSize inside_of(const Sewn& sewn) {
  const Result<CutSize> size = cut_size(sewn);
  EXPECT_TRUE(size) << size.problem().sentence();
  const Turnings lie = turnings_of(sewn);
  return size ? CutSize{size->across - lie.left.depth - lie.right.depth,
                        size->along - lie.near.depth - lie.far.depth}
              : CutSize{};
}

// What is left between the turnings follows from the finished goods alone.
CutSize finished(const Sewn& sewn) {
  const Goods& g = sewn.goods;
  switch (g.kind) {
    case GoodsKind::one_piece_bag:
    case GoodsKind::flat_pouch: return {g.width + g.depth, 2 * g.height + g.depth};
    case GoodsKind::two_panel_bag: return {g.width + g.depth, g.height + g.depth / 2};
    case GoodsKind::wrap_round_bag: return {2 * (g.width + g.depth), g.height + g.depth / 2};
    case GoodsKind::cushion_cover:
      if (sewn.piece == Piece::back) return {(g.width + g.overlap) / 2, g.height};
      return {g.width, g.height};
    case GoodsKind::box_cover:
      if (sewn.piece == Piece::strip) return {g.depth, 2 * (g.width + g.height)};
      return {g.width, g.height};
    case GoodsKind::strap: return {g.height, 4 * g.width};
  }
  return {};
}

TEST(Turnings, AreWhatTheCutSizeHasBeyondTheFinishedOne) {
  constexpr unsigned kSeed = 20;
  test::Dice dice(kSeed);
  int tried = 0;
  for (int round = 0; round < 200; ++round)
    for (GoodsKind kind : kGoodsKinds)
      for (Piece piece : {Piece::body, Piece::back, Piece::strip}) {
        const Sewn sewn{test::any_goods(dice, kind), piece, false};
        if (!has_piece(kind, piece) || goods_problem(sewn)) continue;
        EXPECT_EQ(inside_of(sewn), finished(sewn)) << kind_name(kind) << ", seed " << kSeed;
        ++tried;
      }
  EXPECT_GT(tried, 1000);
}

TEST(Turnings, OfATwoPanelBagAreSeamsButForTheOpenEdge) {
  const Length seam = Length::mm(12), hem = Length::mm(40);
  const Goods bag = goods_of(GoodsKind::two_panel_bag, Length::mm(360), Length::mm(380),
                             Length::mm(100), seam, hem);
  const Turnings outside = turnings_of({bag, Piece::body, false});
  EXPECT_EQ(outside, (Turnings{{seam, true}, {seam, true}, {seam, true}, {hem, false}}));
  const Turnings lining = turnings_of({bag, Piece::body, true});
  EXPECT_EQ(lining.far, (Turning{seam, true}));
}

TEST(Turnings, OfACushionsBackHaveOneEdgeTurnedIn) {
  const Goods cushion = goods_of(GoodsKind::cushion_cover, Length::mm(400), Length::mm(400), {},
                                 Length::mm(10), Length::mm(25));
  const Turnings back = turnings_of({cushion, Piece::back, false});
  EXPECT_EQ(back.right, (Turning{Length::mm(25), false}));
  EXPECT_EQ(back.left, (Turning{Length::mm(10), true}));
}

TEST(Turnings, ChangePlacesWhereThePanelIsTurned) {
  const Turnings lie{{Length::mm(1)}, {Length::mm(2)}, {Length::mm(3)}, {Length::mm(4), false}};
  const Turnings other = turned(lie);
  EXPECT_EQ(other.left, lie.near);
  EXPECT_EQ(other.right, lie.far);
  EXPECT_EQ(other.near, lie.left);
  EXPECT_EQ(turned(other), lie);
}

}  // namespace
}  // namespace foldyard
