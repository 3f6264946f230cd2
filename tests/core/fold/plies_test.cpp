#include "fold/plies.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"

namespace foldyard {
namespace {

using test::kPlainFanOf5;

std::vector<Ply> plies(const FoldPlan& fold) {
  return plies_of(fold_map(fold, Length::mm(1500), Length::mm(900)));
}

FoldPlan half(bool end_to_end) {
  return {{FoldKind::selvedge_to_selvedge, 2, end_to_end, true}, {Length::mm(750)}, {1, 0}};
}

TEST(Plies, OpenClothIsOneFaceUp) {
  const std::vector<Ply> open = plies({{}, {}, {0}});
  ASSERT_EQ(open.size(), 1u);
  EXPECT_TRUE(open[0].is_face_up());
  EXPECT_EQ(nap_run(open[0], false), NapRun::away);
  EXPECT_EQ(nap_run(open[0], true), NapRun::right);
}

TEST(Plies, AFoldAlongTheRollTurnsTheFaceAndKeepsTheNap) {
  const std::vector<Ply> two = plies(half(false));
  ASSERT_EQ(two.size(), 2u);
  EXPECT_TRUE(two[0].is_face_up());
  EXPECT_FALSE(two[1].is_face_up());
  EXPECT_EQ(two[1].flat.across, (Span{Length(), Length::mm(750)}));
  EXPECT_EQ(nap_run(two[1], false), NapRun::away);
  EXPECT_EQ(nap_run(two[1], true), NapRun::left);
}

// The far half lies as before; the near one is turned over onto it as a whole:
// what was on top lies lowest, face up again, its nap the other way.
TEST(Plies, EndToEndTurnsTheStackOverOntoItself) {
  const std::vector<Ply> four = plies(half(true));
  ASSERT_EQ(four.size(), 4u);
  for (int i = 0; i < 4; ++i) EXPECT_EQ(four[static_cast<std::size_t>(i)].level, i);
  const Span near_half{Length(), Length::mm(450)}, left{Length(), Length::mm(750)};
  EXPECT_EQ(four[2].flat.along, near_half);
  EXPECT_EQ(four[2].flat.across, left);
  EXPECT_TRUE(four[2].is_face_up());
  EXPECT_FALSE(four[3].is_face_up());
  EXPECT_EQ(nap_run(four[1], false), NapRun::away);
  EXPECT_EQ(nap_run(four[2], false), NapRun::towards);
  EXPECT_EQ(nap_run(four[3], true), NapRun::right);
}

// Neighbours in a fan of five lie face to face or back to back.
TEST(Plies, FacesOfAFanTakeTurns) {
  const FoldPlan fan{kPlainFanOf5,
                     {Length::mm(300), Length::mm(600), Length::mm(900), Length::mm(1200)},
                     {0, 1, 2, 3, 4}};
  const std::vector<Ply> five = plies(fan);
  ASSERT_EQ(five.size(), 5u);
  for (std::size_t i = 0; i < 5; ++i) EXPECT_EQ(five[i].is_face_up(), i % 2 == 0) << i;
}

TEST(Plies, TheWaysANapRunsHaveNames) {
  EXPECT_STREQ(nap_run_name(NapRun::away), "away");
  EXPECT_STREQ(nap_run_name(NapRun::towards), "towards");
  EXPECT_STREQ(nap_run_name(NapRun::right), "right");
  EXPECT_STREQ(nap_run_name(NapRun::left), "left");
}

}  // namespace
}  // namespace foldyard
