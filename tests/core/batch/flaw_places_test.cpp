#include "batch/flaw_places.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::u;
using test::u_rect;

// A roll usable from 2 to 40, 10 wide; a stain, a long flaw along the left edge
// and a seam. Every pattern begins 1 behind its length.
class FlawPlacesOf : public testing::Test {
 protected:
  FlawedCloth cloth_{u(2, 40), Length::units(1),
                     {u_rect(4, 6, 8, 9), u_rect(0, 1, 10, 30), u_rect(0, 10, 20, 21)}};
  // Two panels: one beside the stain at the start, one under it 5 further.
  std::vector<FlawedEntry> entries_{
      {Length::units(12), 7, 0, {{{u_rect(0, 4, 0, 5), 3}, {u_rect(0, 10, 5, 11), 4}}}}};
};

TEST_F(FlawPlacesOf, AreWhereAPanelJustClearsAFlaw) {
  // Flaws end at 9, 30, 21. Behind the stain only the second panel clears it: 9
  // − 5 − 1 = 3. Both clear the others: 30 − 1 and 21 − 1, less 5 as well; a
  // length from 29 would pass 40.
  std::vector<int> from;
  const FlawPlaces places(entries_, cloth_);
  for (const FlawPlaces::Start& start : places.starts())
    from.push_back(static_cast<int>(start.from.units()));
  EXPECT_EQ(from, (std::vector<int>{3, 15, 20, 24}));
}

TEST_F(FlawPlacesOf, NameTheFlawsUnderALength) {
  const FlawPlaces places(entries_, cloth_);
  const auto under = [&](int from, int to) {
    const FlawPlaces::Range range = places.under(u(from, to));
    return std::pair(range.first, range.last);
  };
  EXPECT_EQ(under(2, 8), std::pair(0, 0));    // ends where the stain begins
  EXPECT_EQ(under(2, 9), std::pair(0, 1));
  EXPECT_EQ(under(9, 10), std::pair(0, 0));
  EXPECT_EQ(under(25, 28), std::pair(1, 3));  // the long flaw goes on; the seam is passed by
  EXPECT_EQ(under(30, 40), std::pair(0, 0));
}

TEST_F(FlawPlacesOf, LoseEveryPanelThatTouchesAFlawOnce) {
  const FlawPlaces places(entries_, cloth_);
  const auto loss = [&](int from) {
    const Span on_roll = u(from, from + 12);
    return places.loss(places.under(on_roll), entries_[0].layouts[0], on_roll.from);
  };
  EXPECT_EQ(loss(2), 4);   // panels on 3 … 8 and 8 … 14
  EXPECT_EQ(loss(3), 4);   // the second from 9 on, but over the long flaw
  EXPECT_EQ(loss(12), 7);  // both over the long flaw, one over the seam, too
  EXPECT_EQ(loss(28), 3);  // the first on 29 … 34
}

}  // namespace
}  // namespace foldyard
