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
  }
  FoldPlan best() { return RollDesk(job, 0, Aim::most_worth).best(way)->patterns.front().fold; }
  void wait() { ASSERT_TRUE(sample::waited_for([this] { return !hand.is_busy(); }, 60000)); }

  Job job = sample::job();
  FoldWay way;
  std::vector<std::shared_ptr<const Plan>> plans;
  std::vector<QString> reasons;
  FoldHand hand;
};

TEST_F(FoldHandTest, GoesToATapeMarkWhereNothingElseIsNear) {
  const FoldPlan fold = best();
  RollDesk desk(job, 0, Aim::most_worth);
  const std::vector<Length> snaps = desk.snaps(way, 0);
  ASSERT_GE(snaps.size(), 2u);
  Length far;  // a whole centimetre away from every snap
  for (Length place = Length::mm(60); place < Length::mm(700) && far.is_zero(); place += Length::mm(10))
    if (std::none_of(snaps.begin(), snaps.end(), [&](Length s) { return s - place < Length::mm(9) && place - s < Length::mm(9); }))
      far = place;
  ASSERT_FALSE(far.is_zero());
  hand.move(fold, 0, far + Length::mm(1));
  wait();
  ASSERT_EQ(plans.size(), 1u);
  EXPECT_EQ(plans[0]->patterns.front().fold.lines[0], far);
}

TEST_F(FoldHandTest, IsDrawnToAPlaceWhereTheYieldChanges) {
  const FoldPlan fold = best();
  hand.move(fold, 0, fold.lines[0] + Length::mm(3));
  wait();
  ASSERT_EQ(plans.size(), 1u);
  EXPECT_EQ(plans[0]->patterns.front().fold.lines, fold.lines);
  EXPECT_EQ(plans[0]->worth, RollDesk(job, 0, Aim::most_worth).best(way)->worth);
}

TEST_F(FoldHandTest, StepsFromPlaceToPlace) {
  const FoldPlan fold = best();
  hand.step(fold, 0, -1);
  wait();
  ASSERT_EQ(plans.size(), 1u);
  EXPECT_LT(plans[0]->patterns.front().fold.lines[0], fold.lines[0]);
}

TEST_F(FoldHandTest, TheLatestPlaceWins) {
  const FoldPlan fold = best();
  for (int mm = 100; mm <= 400; mm += 20) hand.move(fold, 0, Length::mm(mm));
  ASSERT_TRUE(sample::waited_for([this] { return !hand.is_busy() && !plans.empty(); }, 60000));
  EXPECT_LE(plans.size(), 2u);
  EXPECT_NEAR(plans.back()->patterns.front().fold.lines[0].in_mm(), 400, 10);
}

TEST_F(FoldHandTest, AnotherQuestionForgetsWhatWasMoved) {
  hand.move(best(), 0, Length::mm(200));
  hand.set_question({job, 1, Aim::most_worth});
  wait();
  QTest::qWait(20);
  EXPECT_TRUE(plans.empty());
}

}  // namespace
}  // namespace foldyard
