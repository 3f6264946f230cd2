#include "drawing/disc_places.h"

#include <gtest/gtest.h>

#include "drawing/strokes.h"

namespace foldyard {
namespace {

TEST(DiscPlaces, StandOnTheirCut) {
  const std::vector<QLineF> cuts{QLineF(0, 50, 0, 0), QLineF(0, 20, 40, 20)};
  const auto places = disc_places(cuts, {});
  EXPECT_DOUBLE_EQ(places[0].x(), 0);
  EXPECT_DOUBLE_EQ(places[1].y(), 20);
}

TEST(DiscPlaces, MoveAlongTheCutWhereOneStandsAlready) {
  const std::vector<QLineF> cuts{QLineF(0, 0, 40, 0), QLineF(0, 0.5, 40, 0.5)};
  const auto places = disc_places(cuts, {});
  EXPECT_GE(QLineF(places[0], places[1]).length(), 2 * kDiscRadius - 1e-6);
}

TEST(DiscPlaces, KeepClearOfNames) {
  const QRectF name(0, -2, 20, 4);
  const auto places = disc_places({QLineF(0, 0, 40, 0)}, {name});
  EXPECT_GE(places[0].x(), 20 + kDiscRadius - 1e-6);
}

TEST(DiscPlaces, AShortCutHasItsNumberInTheMiddle) {
  EXPECT_EQ(disc_places({QLineF(0, 0, 2, 0)}, {})[0], QPointF(1, 0));
}

}  // namespace
}  // namespace foldyard
