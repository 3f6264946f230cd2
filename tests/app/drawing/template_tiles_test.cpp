#include "drawing/template_tiles.h"

#include <gtest/gtest.h>

#include <random>

namespace foldyard {
namespace {

const QSizeF kTile(186, 260);

TEST(TileGrid, TakesTheFewestPages) {
  // 458 wide with its rim: 186, then 176 more a page: 3 columns reach 538. 908
  // high: 260, then 250 more a page: 4 rows reach 1010.
  const TileGrid grid = tile_grid({450, 900}, kTile);
  EXPECT_FALSE(grid.turned);
  EXPECT_EQ(grid.columns, 3);
  EXPECT_EQ(grid.rows, 4);
  EXPECT_EQ(grid.pages(), 13);
  // 188 wide does not fit 186, but 258 and 188 do once it is turned.
  EXPECT_TRUE(tile_grid({240, 170}, kTile).turned);
  EXPECT_EQ(tile_grid({240, 170}, kTile).tiles(), 1);
}

TEST(TileGrid, HoldsWhatJustFits) {
  EXPECT_EQ(tile_grid({178, 252}, kTile).tiles(), 1);
  EXPECT_EQ(tile_grid({178.1, 252}, kTile).tiles(), 2);
  EXPECT_EQ(tile_grid({178 + 176, 252}, kTile).tiles(), 2);
  EXPECT_EQ(tile_grid({178 + 176.1, 252.1}, kTile).tiles(), 4);  // turned: 2 × 2
}

TEST(TileGrid, CountsPagesOfTheLongestPanelWithoutOverflow) {
  EXPECT_GT(tile_grid({1e6, 1e6}, kTile).pages(), 20'000'000);
}

TEST(TileGrid, CoversTheTemplateAndLapsOver) {
  std::mt19937 dice(7);
  std::uniform_real_distribution<double> size(5, 2000);
  for (int round = 0; round < 300; ++round) {
    const TileGrid grid = tile_grid({size(dice), size(dice)}, kTile);
    const int rows = static_cast<int>(grid.rows), columns = static_cast<int>(grid.columns);
    EXPECT_TRUE((QRectF(QPointF(), grid.tile_rect(rows - 1, columns - 1).bottomRight()) + QMarginsF(1e-6, 1e-6, 1e-6, 1e-6))
                    .contains(grid.whole()));
    if (columns > 1) {
      EXPECT_DOUBLE_EQ(grid.tile_rect(0, 0).intersected(grid.tile_rect(0, 1)).width(), kOverlap);
      // One column less would not reach.
      EXPECT_LT(grid.tile_rect(0, columns - 2).right(), grid.whole().right());
    }
  }
}

TEST(MatchMarks, LieWithTheirArmsInBothTilesTheyJoin) {
  std::mt19937 dice(8);
  std::uniform_real_distribution<double> size(100, 1500);
  for (int round = 0; round < 200; ++round) {
    const TileGrid grid = tile_grid({size(dice), size(dice)}, kTile);
    const double across = kMarkArm, along = kMarkArm;
    for (const MatchMark& mark : match_marks(grid)) {
      int holding = 0;
      for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column)
          holding += grid.tile_rect(row, column)
                         .adjusted(mark.beside ? across : 0, mark.beside ? 0 : along,
                                   mark.beside ? -across : 0, mark.beside ? 0 : -along)
                         .contains(mark.at);
      EXPECT_GE(holding, 2) << mark.name.toStdString();
      EXPECT_TRUE(grid.whole().contains(mark.at));
    }
  }
}

TEST(MatchMarks, NameEveryJoinOnce) {
  const TileGrid grid = tile_grid({450, 900}, kTile);  // 3 × 4: 8 + 9 joins
  std::vector<QString> firsts;
  for (const MatchMark& mark : match_marks(grid))
    if (mark.name.endsWith(u'a')) firsts.push_back(mark.name);
  std::sort(firsts.begin(), firsts.end());
  EXPECT_EQ(firsts.size(), 17u);
  EXPECT_EQ(std::unique(firsts.begin(), firsts.end()), firsts.end());
  EXPECT_TRUE(match_marks(tile_grid({100, 100}, kTile)).empty());
}

}  // namespace
}  // namespace foldyard
