#include "cutting/shape.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

Panel panel(int across, int along, bool may_turn, bool on_fold) {
  return {"panel", Length::mm(across), Length::mm(along), may_turn, on_fold, Worth::whole(1)};
}

Fabric cloth(Nap nap = Nap::none) {
  return {Length::mm(1500), Length::mm(10), Length::mm(1), nap, ""};
}

TEST(ShapesOf, GivesAPanelThatMayTurnTwoShapes) {
  const std::vector<Shape> shapes = shapes_of({panel(450, 900, true, false)}, cloth());
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
  EXPECT_EQ(shapes_of({panel(450, 900, false, true)}, cloth()).size(), 1u);
  EXPECT_EQ(shapes_of({panel(450, 450, true, true)}, cloth()).size(), 1u);
  EXPECT_EQ(shapes_of({panel(450, 900, true, true)}, cloth(Nap::one_way)).size(), 1u);
}

TEST(ShapesOf, NamesThePanelOfEachShape) {
  const std::vector<Shape> shapes =
      shapes_of({panel(450, 900, true, true), panel(200, 300, false, true)}, cloth());
  ASSERT_EQ(shapes.size(), 3u);
  EXPECT_EQ(shapes[0].panel, 0);
  EXPECT_EQ(shapes[1].panel, 0);
  EXPECT_EQ(shapes[2].panel, 1);
  EXPECT_TRUE(shapes[2].on_fold);
}

// 3 % along and 4 % across: 970 along is cut 1000, 960 across 1000; turned, 970
// across is cut 970 / 0.96 = 1010.417 mm = 323 333.3 units, 960 along 960 / 0.97
// = 989.691 mm = 316 701.03 units.
TEST(ShapesOf, CutsEachSizeLargerByWhatItsDirectionLoses) {
  Fabric fabric = cloth();
  fabric.shrinkage = {300, 400};
  const std::vector<Shape> shapes = shapes_of({panel(960, 970, true, true)}, fabric);
  ASSERT_EQ(shapes.size(), 2u);
  EXPECT_EQ(shapes[0].across, Length::mm(1000));
  EXPECT_EQ(shapes[0].along, Length::mm(1000));
  EXPECT_EQ(shapes[1].across, Length::units(323'334));
  EXPECT_EQ(shapes[1].along, Length::units(316'702));
}

TEST(ShapesOf, LaysWhatFollowsThePatternSidewaysOnRailroadedCloth) {
  Fabric fabric = cloth();
  fabric.railroaded = true;
  fabric.shrinkage = {300, 0};
  Panel follows = panel(970, 400, true, true), keeps = follows;
  keeps.grain = Grain::warp;
  const std::vector<Shape> shapes = shapes_of({follows, keeps}, fabric);
  ASSERT_EQ(shapes.size(), 4u);
  EXPECT_EQ(size_on_cloth(follows, fabric, false), (SizeOnCloth{Length::mm(400), Length::mm(1000)}));
  EXPECT_EQ(shapes[0].along, Length::mm(1000));  // its width, along the roll
  EXPECT_FALSE(shapes[0].turned);
  EXPECT_EQ(shapes[1].across, Length::mm(970));
  EXPECT_TRUE(shapes[1].turned);
  EXPECT_EQ(shapes[2].across, Length::mm(970));
  EXPECT_FALSE(shapes[2].turned);
  EXPECT_TRUE(lies_sideways(keeps, fabric, true));
}

TEST(ShapesOf, TurnsNothingOnOneWayClothWhicheverWayTheNapRuns) {
  Fabric fabric = cloth(Nap::one_way);
  fabric.railroaded = true;
  const std::vector<Shape> shapes = shapes_of({panel(450, 900, true, true)}, fabric);
  ASSERT_EQ(shapes.size(), 1u);
  EXPECT_EQ(shapes[0].across, Length::mm(900));
}

}  // namespace
}  // namespace foldyard
