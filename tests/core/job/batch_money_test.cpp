#include "job/batch_money.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

Roll roll(const char* name, const std::vector<std::string>& marks) {
  Roll roll;
  roll.name = name;
  roll.marks = marks;
  return roll;
}

// 20 bags at 24, four of them printed ones at 30; sewn in 9 min, cut in an hour.
struct Batch {
  Job job;
  BatchPlan plan;
};

Batch bags() {
  Batch b;
  b.job.rolls = {roll("moss", {}), roll("fern", {"printed"})};
  Product bag{"bag", {{0, 1}}, {}, Worth::whole(24)};
  bag.prices = {{"printed", Worth::whole(30)}};
  bag.seam = Length::mm(3'000);
  bag.labels = 1;
  bag.sewing = {{"edges first", {{"edges", Duration::seconds(110)}, {"rest", Duration::seconds(430)}}},
                {"side seams first", {{"seams", Duration::seconds(160)}, {"rest", Duration::seconds(430)}}}};
  b.job.products = {bag};
  b.job.order.lines = {{0, 18, 2}};
  b.job.pace.rate = Worth::whole(20);
  b.plan.made = {{0, "moss", 16}, {0, "fern", 4}};
  b.plan.cost = Worth::whole(150 - 2 * 24);  // two bags are more than must be made
  b.plan.time = Duration::seconds(3'600);
  return b;
}

TEST(BatchMoney, AddsUpWhatABatchCostsAndBrings) {
  const Batch b = bags();
  WebbingPlan handles;
  handles.price = Worth::whole(18);
  const BatchMoney money = batch_money(b.job, b.plan, {handles});
  EXPECT_EQ(money.income, Worth::whole(16 * 24 + 4 * 30));
  EXPECT_EQ(money.cloth, Worth::whole(150));
  EXPECT_EQ(money.webbing, Worth::whole(18));
  EXPECT_EQ(money.label_count, 20);
  EXPECT_EQ(money.labels, Worth::whole(4));
  // 60 m of seam take 168 m of thread: one reel of 500 m.
  EXPECT_EQ(money.reels, 1);
  EXPECT_EQ(money.thread, Worth::whole(4));
  EXPECT_EQ(money.earned(), Worth::whole(504 - 176));
  // 20 × 9 min are 3 h: 328 in 4 h.
  EXPECT_EQ(money.sewing, Duration::seconds(3 * 3'600));
  EXPECT_EQ(money.an_hour(), Worth::whole(82));
  EXPECT_TRUE(money.is_assumed);
}

TEST(BatchMoney, BuysWholeReels) {
  Batch b = bags();
  b.job.notions.reel = Length::mm(168'000);
  EXPECT_EQ(batch_money(b.job, b.plan, {}).reels, 1);
  b.job.notions.reel = Length::mm(167'999);
  EXPECT_EQ(batch_money(b.job, b.plan, {}).reels, 2);
}

TEST(BatchMoney, PutsTheAllowanceOnSewing) {
  Batch b = bags();
  b.job.pace.allowance_percent = 15;
  EXPECT_EQ(sewing_time(b.job, b.job.products[0]), Duration::seconds(621));  // 540 s and 81
  b.job.products[0].sewing.clear();
  EXPECT_EQ(batch_money(b.job, b.plan, {}).sewing, Duration());
}

TEST(BatchMoney, SaysNothingOfAnHourWithoutTime) { EXPECT_EQ(BatchMoney().an_hour(), std::nullopt); }

// Common practice, no source: edges first takes under 2 min where side seams first
// takes 2 min 40: here 110 s against 160 s. 600 pieces × 50 s are 8 h 20, at 20 an hour.
TEST(BatchMoney, ComparesOrdersOfOperations) {
  const Batch b = bags();
  EXPECT_EQ(saved_by_order(b.job, b.job.products[0], 600, 1), Worth() - Worth::parts(1'666'667));
  EXPECT_EQ(saved_by_order(b.job, b.job.products[0], 600, 0), Worth());
  EXPECT_EQ(saved_by_step(b.job, 600, Duration::seconds(50)), Worth::parts(1'666'666));
}

// A piece rate is standard minutes × money a minute: 6.5 min at 15 an hour are
// 1.625 (onlineclothingstudy.com, August 2014, after the US Department of Labor;
// the figures computed here).
TEST(BatchMoney, AgreesWithAPieceRate) {
  Batch b = bags();
  b.job.pace.rate = Worth::whole(15);
  EXPECT_EQ(saved_by_step(b.job, 1, Duration::seconds(390)), Worth::parts(16'250));
}

TEST(PriceOf, IsTheCommonOneForAClothThatNoRollIsOf) {
  const Batch b = bags();
  EXPECT_EQ(price_of(b.job, b.job.products[0], "fern"), Worth::whole(30));
  EXPECT_EQ(price_of(b.job, b.job.products[0], "moss"), Worth::whole(24));
  EXPECT_EQ(price_of(b.job, b.job.products[0], "printed"), Worth::whole(24));
}

}  // namespace
}  // namespace foldyard
