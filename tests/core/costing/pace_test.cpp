#include "costing/pace.h"

#include <gtest/gtest.h>

#include <random>

namespace foldyard {
namespace {

Duration s(std::int64_t n) { return Duration::seconds(n); }

TEST(TimeOf, IsTheHeadersExample) {
  Pace pace;
  pace.mark = s(10);
  pace.ms_per_metre = 20000;
  Work work;
  work.lifts = 2;
  work.cuts = 8;
  work.cut_travel = Length::mm(6000);
  // 8 × 10 s + 6 × 20 s = 200 s.
  EXPECT_EQ(time_of(work, pace), s(200));
}

// A worked example of time study: observed 20 s, rated 120 %, so basic 24 s;
// with an allowance of 20 % of basic time the standard time is 28.8 s.
// Source: University of Nairobi, examination paper on work measurement,
// indextestingapp.uonbi.ac.ke.
TEST(TimeOf, PutsTheAllowanceOnBasicTime) {
  Pace pace;
  pace.unroll = Duration::ms(20 * 1200);
  pace.allowance_percent = 20;
  EXPECT_EQ(time_of(Work{}, pace), Duration::ms(28800));
}

TEST(TimeOf, CountsEveryStepOnce) {
  // Each step a power of ten of seconds, each count a digit of its own.
  const Pace pace{s(1), s(10), s(100), s(1000), s(10000), 0, s(100000), 0, Worth()};
  const Work work{2, 3, 4, 5, 6, Length::mm(1000), Length::mm(1000)};
  EXPECT_EQ(time_of(work, pace), s(654321));
}

TEST(TimeOf, TakesTravelUnderTheCutterAndAcrossTheRollAtOnePace) {
  Pace pace;
  pace.ms_per_metre = 20000;
  Work work;
  work.cut_travel = Length::mm(1000);
  work.cross_cut_travel = Length::mm(1500);
  EXPECT_EQ(time_of(work, pace), s(50));
}

TEST(TimeOf, RoundsTheAllowanceDownToATick) {
  Pace pace;
  pace.unroll = Duration::ticks(199);
  pace.allowance_percent = 1;
  EXPECT_EQ(time_of(Work{}, pace), Duration::ticks(200));  // 199 + ⌊1.99⌋
  pace.unroll = Duration::ticks(200);
  EXPECT_EQ(time_of(Work{}, pace), Duration::ticks(202));
}

// Piece rate: standard minutes × money a minute; 6.5 min at 15 an hour = 1.625.
// Source of the rule: onlineclothingstudy.com, August 2014; the figures are ours.
TEST(CostOf, IsTheTimeAtTheHourlyRate) {
  Pace pace;
  pace.rate = Worth::whole(15);
  EXPECT_EQ(cost_of(s(390), pace), Worth::parts(16250));
  EXPECT_EQ(cost_of(s(3600), pace), Worth::whole(15));
  EXPECT_EQ(cost_of(Duration(), pace), Worth());
}

TEST(CostOf, RoundsDownToAPart) {
  Pace pace;
  pace.rate = Worth::parts(3600);  // a part a second
  EXPECT_EQ(cost_of(Duration::ms(1999), pace), Worth::parts(1));
  EXPECT_EQ(cost_of(Duration::ms(2000), pace), Worth::parts(2));
  EXPECT_EQ(cost_of(Duration::ms(2000) - Duration::ticks(1), pace), Worth::parts(1));
}

TEST(CostOf, HoldsForLongTimesAndHighRates) {
  Pace pace;
  pace.rate = Worth::whole(1'000'000);
  // 1000 h at 1e6 an hour is 1e9; the product on the way passes 64 bits.
  EXPECT_EQ(cost_of(s(3600) * 1000, pace), Worth::whole(1'000'000'000));
}

TEST(CostOf, NeverSplitsIntoMoreThanTheWhole) {
  Pace pace;
  pace.rate = Worth::parts(123457);
  std::mt19937 random(7);
  std::uniform_int_distribution<std::int64_t> ticks(0, s(3600).ticks());
  for (int trial = 0; trial < 200; ++trial) {
    const Duration a = Duration::ticks(ticks(random)), b = Duration::ticks(ticks(random));
    const Worth rest = cost_of(a + b, pace) - (cost_of(a, pace) + cost_of(b, pace));
    EXPECT_GE(rest, Worth());
    EXPECT_LE(rest, Worth::parts(1));
  }
}

}  // namespace
}  // namespace foldyard
