#include "batch/order_pieces.h"

#include <gtest/gtest.h>

#include "core/support/small_case.h"

namespace foldyard {
namespace {

const PiecesMade kNone = {{0, 0}, {0, 0}};

TEST(OrderPieces, CountsWhatThePanelsCover) {
  OrderCase order = test::small_case();
  order.lines[1].needs = {{0, 1, {}}, {1, 2, {}}};  // a body and two pockets
  order.lines[1].must = 9;
  order.lines[0].must = 0;
  PieceCounter counter(order, {{5, 8}, {9, 9}});
  for (int n = 0; n < 4; ++n) EXPECT_TRUE(counter.add(1, 0));
  EXPECT_FALSE(counter.add(1, 0));                             // one body and no pocket left
  EXPECT_EQ(counter.spare(), (ByClothAndPanel{{1, 0}, {9, 9}}));  // nothing is taken by what fails
  EXPECT_FALSE(counter.add(1, 1));                             // this cloth does not serve
  EXPECT_EQ(counter.pieces(), (PiecesMade{{0, 0}, {4, 0}}));
}

TEST(OrderPieces, FillsWhatIsWantedFirstThenWhatMustThenWhatMay) {
  const OrderCase order = test::small_case();
  EXPECT_EQ(pieces_from(order, {{3, 6}, {4, 0}}, {{1, 2}, {0, 0}}), (PiecesMade{{2, 2}, {3, 0}}));
  EXPECT_EQ(pieces_from(order, {{1, 3}, {1, 0}}, kNone), (PiecesMade{{1, 1}, {1, 0}}));
}

TEST(OrderPieces, MakesAndTakesNoMoreThanThereIs) {
  const OrderCase order = test::small_case();
  EXPECT_EQ(pieces_from(order, {{1, 0}, {1, 0}}, {{3, 3}, {2, 0}}), (PiecesMade{{1, 1}, {0, 0}}));
  EXPECT_EQ(panels_taken(order, {{3, 0}, {2, 0}}, {{2, 3}, {5, 5}}), (ByClothAndPanel{{2, 2}, {0, 0}}));
}

TEST(OrderPieces, KeepsRules) {
  OrderCase order = test::small_case();
  order.lines[0].rules = {{{0}, 0, 1}, {{1}, 2, kAnyNumber}};
  EXPECT_EQ(pieces_from(order, {{4, 0}, {4, 0}}, kNone), (PiecesMade{{1, 3}, {0, 0}}));
}

TEST(OrderPieces, TakesNamedPanelsWhereMostAreLeft) {
  OrderCase order = test::small_case();
  order.lines[1].needs[0].from = {0, 1};
  const ByClothAndPanel yield = {{0, 1}, {0, 5}};
  const PiecesMade made = pieces_from(order, yield, kNone);
  EXPECT_EQ(made, (PiecesMade{{0, 0}, {3, 0}}));
  EXPECT_EQ(panels_taken(order, made, yield), yield);
  EXPECT_EQ(panels_taken(order, {{0, 0}, {1, 0}}, yield), (ByClothAndPanel{{0, 0}, {0, 2}}));
}

// The third cloth is red too, set apart for a line that is kept on its roll.
TEST(OrderPieces, TakesWhatIsSetApartLast) {
  OrderCase order = test::small_case();
  order.cloths.push_back("red");
  order.also = {{2}};
  order.lines[1].needs[0].from = {1, 0};
  const PiecesMade none(2, std::vector<std::int64_t>(3, 0));
  const ByClothAndPanel yield = {{0, 1}, {0, 2}, {0, 3}};
  const PiecesMade made = pieces_from(order, yield, none);
  EXPECT_EQ(made, (PiecesMade{{0, 0, 0}, {3, 0, 0}}));  // of two panels each
  EXPECT_EQ(panels_taken(order, made, yield), yield);
  EXPECT_EQ(panels_taken(order, {{0, 0, 0}, {1, 0, 0}}, yield), (ByClothAndPanel{{0, 0}, {0, 2}, {0, 0}}));
  EXPECT_EQ(panels_taken(order, {{0, 0, 0}, {2, 0, 0}}, yield), (ByClothAndPanel{{0, 1}, {0, 2}, {0, 1}}));
  order.lines[1].needs[0].from = {1};
  EXPECT_EQ(pieces_from(order, yield, none), (PiecesMade{{0, 0, 0}, {1, 0, 0}}));  // blue has none set apart
}

TEST(OrderPieces, MakesNoMoreThanTheLineTakes) {
  OrderCase order = test::small_case();
  PieceCounter counter(order, {{9, 9}, {9, 9}});
  for (int n = 0; n < 3; ++n) EXPECT_TRUE(counter.add(1, 0)) << n;  // two that must be, one that may
  EXPECT_FALSE(counter.add(1, 0));
  EXPECT_EQ(counter.spare(), (ByClothAndPanel{{9, 3}, {9, 9}}));
}

}  // namespace
}  // namespace foldyard
