#include "window/fold_hand.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "sample.h"

namespace foldyard {
namespace {

struct FoldHandTest : testing::Test {
  FoldHandTest() {
    EXPECT_TRUE(way_from_key("off-centre", way));
    hand.set_question({job, 0, Aim::most_worth});
    QObject::connect(&hand, &FoldHand::planned, [this](const auto& plan) { plans.push_back(plan); });
    QObject::connect(&hand, &FoldHand::refused, [this](const QString& reason) { reasons.push_back(reason); });
    QObject::connect(&hand, &FoldHand::settled, [this] { ++settled; });
  }
  Length best() { return RollDesk(job, 0, Aim::most_worth).best(way)->patterns.front().fold.lines[0]; }
  void wait() { ASSERT_TRUE(sample::waited_for([this] { return !hand.is_busy(); }, 60000)); }
  static Length line_of(const HandPlan& plan) { return plan.plan.patterns.front().fold.lines[0]; }

  Job job = sample::job();
  FoldWay way;
  std::vector<HandPlanPtr> plans;
  std::vector<QString> reasons;
  int settled = 0;
  FoldHand hand;
};

TEST_F(FoldHandTest, GoesToATapeMarkWhereNothingElseIsNear) {
  RollDesk desk(job, 0, Aim::most_worth);
  const std::vector<Length> snaps = desk.snaps(way, 0);
  ASSERT_GE(snaps.size(), 2u);
  Length far;  // a whole centimetre away from every snap
  for (Length place = Length::mm(60); place < Length::mm(700) && far.is_zero(); place += Length::mm(10))
    if (std::none_of(snaps.begin(), snaps.end(), [&](Length s) { return s - place < Length::mm(9) && place - s < Length::mm(9); }))
      far = place;
  ASSERT_FALSE(far.is_zero());
  hand.move(way, {}, 0, far + Length::mm(1));
  wait();
  ASSERT_EQ(plans.size(), 1u);
  EXPECT_EQ(line_of(*plans[0]), far);
  EXPECT_EQ(plans[0]->hand.lines[0], far);
  EXPECT_EQ(plans[0]->snap, Snap::tape_mark);
}

TEST_F(FoldHandTest, IsDrawnToAPlaceWhereTheYieldChanges) {
  const Length there = best();
  hand.move(way, {}, 0, there + Length::mm(3));
  wait();
  ASSERT_EQ(plans.size(), 1u);
  EXPECT_EQ(line_of(*plans[0]), there);
  EXPECT_EQ(plans[0]->snap, Snap::yield_changes);
  EXPECT_EQ(plans[0]->plan.worth, RollDesk(job, 0, Aim::most_worth).best(way)->worth);
}

TEST_F(FoldHandTest, StepsFromPlaceToPlace) {
  const Length there = best();
  hand.step(way, {}, 0, there, -1);
  wait();
  ASSERT_EQ(plans.size(), 1u);
  EXPECT_LT(line_of(*plans[0]), there);
}

TEST_F(FoldHandTest, TheLatestPlaceWins) {
  for (int mm = 100; mm <= 400; mm += 20) hand.move(way, {}, 0, Length::mm(mm));
  ASSERT_TRUE(sample::waited_for([this] { return settled > 0; }, 60000));
  EXPECT_LE(plans.size(), 2u);
  EXPECT_NEAR(line_of(*plans.back()).in_mm(), 400, 10);
  EXPECT_EQ(settled, 1);
}

TEST_F(FoldHandTest, PlansWithWhatIsSetAndMovesNothing) {
  Hand set;
  set.length = Length::mm(900);
  hand.plan(way, set);
  wait();
  ASSERT_EQ(plans.size(), 1u);
  EXPECT_EQ(plans[0]->hand, set);
  EXPECT_EQ(plans[0]->moved, -1);
  for (const Pattern& pattern : plans[0]->plan.patterns) EXPECT_EQ(pattern.length, Length::mm(900));
}

TEST_F(FoldHandTest, TellsWhatCannotBe) {
  Hand set;
  set.length = Length::mm(20);
  hand.plan(way, set);
  wait();
  EXPECT_TRUE(plans.empty());
  ASSERT_EQ(reasons.size(), 1u);
  EXPECT_EQ(reasons[0], "off-centre: no panel fits lengths of 2 cm.");
}

TEST_F(FoldHandTest, AnotherQuestionForgetsWhatWasMoved) {
  hand.move(way, {}, 0, Length::mm(200));
  hand.set_question({job, 1, Aim::most_worth});
  wait();
  QTest::qWait(20);
  EXPECT_TRUE(plans.empty());
}

}  // namespace
}  // namespace foldyard
