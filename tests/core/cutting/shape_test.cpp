#include "cutting/shape.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

Panel panel(int across, int along, bool may_turn, bool on_fold) {
  return {"panel", Length::mm(across), Length::mm(along), may_turn, on_fold, Worth::whole(1)};
}

TEST(ShapesOf, GivesAPanelThatMayTurnTwoShapes) {
  const std::vector<Shape> shapes = shapes_of({panel(450, 900, true, false)}, Nap::none);
  ASSERT_EQ(shapes.size(), 2u);
  EXPECT_EQ(shapes[0].across, Length::mm(450));
  EXPECT_EQ(shapes[0].along, Length::mm(900));
  EXPECT_FALSE(shapes[0].turned);
  EXPECT_EQ(shapes[1].across, Length::mm(900));
  EXPECT_EQ(shapes[1].along, Length::mm(450));
  EXPECT_TRUE(shapes[1].turned);
  EXPECT_FALSE(shapes[1].on_fold);
}

TEST(ShapesOf, GivesOneShapeWhereTurningIsNoUseOrNotAllowed) {
  EXPECT_EQ(shapes_of({panel(450, 900, false, true)}, Nap::none).size(), 1u);
  EXPECT_EQ(shapes_of({panel(450, 450, true, true)}, Nap::none).size(), 1u);
  EXPECT_EQ(shapes_of({panel(450, 900, true, true)}, Nap::one_way).size(), 1u);
}

TEST(ShapesOf, NamesThePanelOfEachShape) {
  const std::vector<Shape> shapes =
      shapes_of({panel(450, 900, true, true), panel(200, 300, false, true)}, Nap::none);
  ASSERT_EQ(shapes.size(), 3u);
  EXPECT_EQ(shapes[0].panel, 0);
  EXPECT_EQ(shapes[1].panel, 0);
  EXPECT_EQ(shapes[2].panel, 1);
  EXPECT_TRUE(shapes[2].on_fold);
}

}  // namespace
}  // namespace foldyard
