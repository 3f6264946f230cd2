#include "measure/rect.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::mm;

TEST(Span, ThatOnlyTouchesDoesNotOverlap) {
  EXPECT_FALSE(mm(0, 10).overlaps(mm(10, 20)));
  EXPECT_FALSE(mm(10, 20).overlaps(mm(0, 10)));
  EXPECT_TRUE(mm(0, 11).overlaps(mm(10, 20)));
  EXPECT_TRUE(mm(0, 20).overlaps(mm(5, 6)));
}

TEST(Span, CoversItselfAndWhatLiesInside) {
  EXPECT_TRUE(mm(0, 10).covers(mm(0, 10)));
  EXPECT_TRUE(mm(0, 10).covers(mm(3, 4)));
  EXPECT_FALSE(mm(0, 10).covers(mm(3, 11)));
  EXPECT_FALSE(mm(1, 10).covers(mm(0, 10)));
}

TEST(Span, IsEmptyFromOneEndOn) {
  EXPECT_TRUE(mm(5, 5).is_empty());
  EXPECT_TRUE(mm(6, 5).is_empty());
  EXPECT_FALSE(mm(5, 6).is_empty());
}

TEST(Span, IntersectsInWhatBothHold) {
  EXPECT_EQ(intersection(mm(0, 10), mm(4, 20)), mm(4, 10));
  EXPECT_EQ(intersection(mm(4, 20), mm(0, 10)), mm(4, 10));
  EXPECT_TRUE(intersection(mm(0, 4), mm(4, 8)).is_empty());
  EXPECT_TRUE(intersection(mm(0, 4), mm(6, 8)).is_empty());
}

TEST(Rect, OverlapsOnlyWhereBothSpansDo) {
  const Rect a{mm(0, 10), mm(0, 10)};
  EXPECT_TRUE(a.overlaps({mm(9, 12), mm(9, 12)}));
  EXPECT_FALSE(a.overlaps({mm(10, 12), mm(0, 10)})) << "side by side";
  EXPECT_FALSE(a.overlaps({mm(0, 10), mm(10, 12)})) << "one behind the other";
  EXPECT_FALSE(a.overlaps({mm(10, 12), mm(10, 12)})) << "corner to corner";
}

TEST(Rect, CoversOnlyWhereBothSpansDo) {
  const Rect a{mm(0, 10), mm(0, 20)};
  EXPECT_TRUE(a.covers(a));
  EXPECT_TRUE(a.covers({mm(2, 10), mm(0, 5)}));
  EXPECT_FALSE(a.covers({mm(2, 11), mm(0, 5)}));
  EXPECT_FALSE(a.covers({mm(2, 10), mm(0, 21)}));
}

TEST(Rect, HasTheAreaOfItsSides) {
  EXPECT_EQ((Rect{mm(10, 30), mm(5, 10)}.area()), Length::mm(20) * Length::mm(5));
  EXPECT_TRUE((Rect{mm(10, 30), mm(5, 5)}.is_empty()));
  EXPECT_TRUE((Rect{mm(10, 10), mm(5, 6)}.is_empty()));
}

}  // namespace
}  // namespace foldyard
