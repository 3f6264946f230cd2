#include "job/hand_edit.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::kOffCentre;
using test::kThirds;

TEST(Hand, IsEmptyWhereAllPinsAreTakenOut) {
  Hand hand = with_line({}, kThirds, 1, Length::mm(900));
  EXPECT_FALSE(hand.is_empty());
  EXPECT_EQ(hand.lines.size(), 2u);
  EXPECT_FALSE(hand.has_line(0));
  EXPECT_TRUE(hand.has_line(1));
  hand = with_line(hand, kThirds, 1, std::nullopt);
  EXPECT_TRUE(hand.is_empty());
  EXPECT_EQ(hand, Hand{});
}

TEST(Hand, TakesNoPinForALineThatTheWayDoesNotHave) {
  EXPECT_EQ(with_line({}, kOffCentre, 1, Length::mm(300)), Hand{});
  EXPECT_EQ(with_line({}, kOffCentre, -1, Length::mm(300)), Hand{});
  EXPECT_EQ(with_line({}, {}, 0, Length::mm(300)), Hand{});
}

TEST(Hand, AsksForNoneBelowOne) {
  const Hand hand = with_at_least(with_at_least({}, "seat", 4), "arm", 2);
  EXPECT_EQ(hand.at_least.size(), 2u);
  EXPECT_EQ(with_at_least(with_at_least(hand, "seat", 0), "arm", -3), Hand{});
}

TEST(HandSet, KeepsEachRollAndWayApart) {
  const HandSet::Place here{"Moss", kOffCentre}, there{"Slate", kOffCentre}, other{"Moss", kThirds};
  const HandSet set = with_hand({}, here, with_line({}, kOffCentre, 0, Length::mm(405)));
  EXPECT_TRUE(hand_at(set, here).has_line(0));
  EXPECT_TRUE(hand_at(set, there).is_empty());
  EXPECT_TRUE(hand_at(set, other).is_empty());
  EXPECT_EQ(with_hand(set, here, {}), HandSet{});
}

TEST(LeastOf, GoesByTheNamesOfThePanels) {
  Job job = default_job();
  job.panels = {{"seat", Length::mm(450), Length::mm(900), false, true, Worth::whole(3)},
                {"arm", Length::mm(300), Length::mm(400), true, true, Worth::whole(1)}};
  EXPECT_EQ(least_of(job, with_at_least(with_at_least({}, "arm", 7), "unknown", 2)), (std::vector<std::int64_t>{0, 7}));
}

}  // namespace
}  // namespace foldyard
