#include "goods/sewn.h"

#include <gtest/gtest.h>

#include <set>

namespace foldyard {
namespace {

TEST(GoodsKinds, HaveEachTheirOwnName) {
  std::set<std::string> names;
  for (GoodsKind kind : kGoodsKinds) names.insert(kind_name(kind));
  EXPECT_EQ(names.size(), kGoodsKinds.size());
  EXPECT_EQ(kind_name(GoodsKind::wrap_round_bag), "wrap-round bag");
}

TEST(GoodsKinds, HaveABodyAndOnlyTheirOwnPieces) {
  for (GoodsKind kind : kGoodsKinds) {
    EXPECT_TRUE(has_piece(kind, Piece::body)) << kind_name(kind);
    EXPECT_EQ(has_piece(kind, Piece::back), kind == GoodsKind::cushion_cover) << kind_name(kind);
    EXPECT_EQ(has_piece(kind, Piece::strip), kind == GoodsKind::box_cover) << kind_name(kind);
  }
}

TEST(GoodsKinds, SayWhatTheyCanHave) {
  EXPECT_TRUE(has_depth(GoodsKind::two_panel_bag));
  EXPECT_TRUE(has_depth(GoodsKind::box_cover));
  EXPECT_FALSE(has_depth(GoodsKind::flat_pouch));
  EXPECT_FALSE(has_depth(GoodsKind::cushion_cover));
  EXPECT_FALSE(has_depth(GoodsKind::strap));
  EXPECT_TRUE(has_handles(GoodsKind::flat_pouch));
  EXPECT_FALSE(has_handles(GoodsKind::box_cover));
  EXPECT_FALSE(has_seam(GoodsKind::strap));
  EXPECT_FALSE(has_hem(GoodsKind::box_cover));
  EXPECT_FALSE(has_lining(GoodsKind::strap));
}

TEST(PieceName, IsEmptyForTheOnlyPanelOfItsGoods) {
  EXPECT_EQ(piece_name(GoodsKind::one_piece_bag, Piece::body, false), "");
  EXPECT_EQ(piece_name(GoodsKind::one_piece_bag, Piece::body, true), "lining");
  EXPECT_EQ(piece_name(GoodsKind::cushion_cover, Piece::body, false), "front");
  EXPECT_EQ(piece_name(GoodsKind::cushion_cover, Piece::back, true), "lining of the back");
  EXPECT_EQ(piece_name(GoodsKind::box_cover, Piece::body, false), "top and bottom");
  EXPECT_EQ(piece_name(GoodsKind::box_cover, Piece::strip, false), "strip");
}

TEST(Needed, CountsThePanelsOfOnePiece) {
  const auto count = [](GoodsKind kind, Piece piece) { return needed({{kind}, piece}); };
  EXPECT_EQ(count(GoodsKind::one_piece_bag, Piece::body), 1);
  EXPECT_EQ(count(GoodsKind::two_panel_bag, Piece::body), 2);
  EXPECT_EQ(count(GoodsKind::wrap_round_bag, Piece::body), 1);
  EXPECT_EQ(count(GoodsKind::cushion_cover, Piece::body), 1);
  EXPECT_EQ(count(GoodsKind::cushion_cover, Piece::back), 2);
  EXPECT_EQ(count(GoodsKind::box_cover, Piece::body), 2);
  EXPECT_EQ(count(GoodsKind::box_cover, Piece::strip), 1);
  EXPECT_EQ(count(GoodsKind::strap, Piece::body), 1);
}

}  // namespace
}  // namespace foldyard
