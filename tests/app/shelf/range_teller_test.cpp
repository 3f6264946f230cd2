#include "shelf/range_teller.h"

#include <gtest/gtest.h>

#include <QTest>

#include <atomic>

#include "shelf_sample.h"

namespace foldyard {
namespace {

RangeQuestion question(int roll) { return {sample::shelf_job(), roll, FoldWay{}, Aim::most_worth}; }

struct Told {
  explicit Told(RangeTeller& teller) {
    QObject::connect(&teller, &RangeTeller::told, [this](const std::shared_ptr<const RangeAnswer>& answer) { rolls.push_back(answer->question.roll); });
    QObject::connect(&teller, &RangeTeller::refused, [this](const QString& reason) { reasons.push_back(reason); });
  }
  std::vector<int> rolls;
  std::vector<QString> reasons;
};

bool calm(RangeTeller& teller) { return QTest::qWaitFor([&] { return !teller.is_busy(); }, 60000); }

TEST(RangeTeller, TellsWhatTheJobRoomFinds) {
  RangeTeller teller;
  std::shared_ptr<const RangeAnswer> told;
  QObject::connect(&teller, &RangeTeller::told, [&](const auto& answer) { told = answer; });
  teller.ask(question(4));
  ASSERT_TRUE(calm(teller));
  ASSERT_TRUE(told);
  const auto expected = yield_range(sample::shelf_job(), 4, FoldWay{}, Aim::most_worth);
  ASSERT_TRUE(expected);
  EXPECT_EQ(told->range, *expected);
}

TEST(RangeTeller, SaysWhyThereIsNone) {
  RangeTeller teller;
  Told told(teller);
  teller.ask(question(0));  // its length is known
  ASSERT_TRUE(calm(teller));
  EXPECT_TRUE(told.rolls.empty());
  EXPECT_EQ(told.reasons.size(), 1u);
}

// Waits until it is stopped, unless it is asked about the last roll.
Result<YieldRange> patient(const RangeQuestion& asked, const std::atomic<bool>& stopped) {
  while (asked.roll != 4 && !stopped) QThread::msleep(1);
  return YieldRange{};
}

TEST(RangeTeller, TheLatestQuestionWins) {
  RangeTeller teller(patient);
  Told told(teller);
  for (int roll = 0; roll <= 4; ++roll) teller.ask(question(roll));
  ASSERT_TRUE(calm(teller));
  EXPECT_EQ(told.rolls, std::vector<int>{4});
}

TEST(RangeTeller, WhatIsForgottenIsNotTold) {
  RangeTeller teller(patient);
  Told told(teller);
  teller.ask(question(0));
  teller.forget();
  ASSERT_TRUE(calm(teller));
  EXPECT_TRUE(told.rolls.empty());
  EXPECT_TRUE(told.reasons.empty());
}

TEST(RangeTeller, AFaultIsToldInASentence) {
  RangeTeller teller([](const RangeQuestion&, const std::atomic<bool>&) -> Result<YieldRange> { throw std::bad_alloc(); });
  Told told(teller);
  teller.ask(question(4));
  ASSERT_TRUE(calm(teller));
  ASSERT_EQ(told.reasons.size(), 1u);
  EXPECT_TRUE(told.reasons[0].startsWith("What the roll yields could not be found"));
}

TEST(RangeTeller, GoesWhileItIsAsked) {
  RangeTeller teller(patient);
  teller.ask(question(0));
}

}  // namespace
}  // namespace foldyard
