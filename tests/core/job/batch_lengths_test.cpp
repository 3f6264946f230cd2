#include "job/batch_lengths.h"

#include <gtest/gtest.h>

#include "core/support/order_job.h"
#include "job/length_pricer.h"

namespace foldyard {
namespace {

TEST(BatchLengths, KeepsEachLengthOnceWithItsPattern) {
  const Job job = test::order_job();
  const Result<BatchCase> c = batch_case(job);
  BatchLengths lengths(job, *c);
  LengthPricer pricer(job, job.rolls[0], {5, 0, 0}, 40'000'000);
  const auto priced = pricer.lengths(c->kinds[0].ways);
  const Pattern first = pricer.pattern(priced[0], c->kinds[0].ways);
  EXPECT_EQ(lengths.add(0, 0, first), 0);
  EXPECT_EQ(lengths.add(0, 0, pricer.pattern(priced[1], c->kinds[0].ways)), 1);
  EXPECT_EQ(lengths.add(0, 0, first), 0);
  ASSERT_EQ(lengths.pool().size(), 2u);
  EXPECT_EQ(lengths.pool()[0].size, Length::mm(940));  // with its allowance
  EXPECT_EQ(lengths.pool()[1].yield, (std::vector<std::int64_t>{6, 0, 0}));
  EXPECT_EQ(lengths.pool()[0].plies, 1);
  const Pace& pace = job.pace;
  EXPECT_EQ(lengths.pool()[0].each, pace.cross_cut + travel_time(Length::mm(1400), pace.ms_per_metre) + pace.handle * 3);
  EXPECT_EQ(lengths.pool()[0].lay,
            pace.lift + pace.mark * std::ssize(first.cuts) + travel_time(first.travel, pace.ms_per_metre));
  EXPECT_EQ(lengths.pattern(0), first);
  EXPECT_EQ(lengths.way(0), FoldWay{});
}

// Of these bytes each panel takes a part.
TEST(BatchLengths, HaveRoomForSoManyPanels) {
  const Job job = test::order_job();
  const Result<BatchCase> c = batch_case(job);
  BatchLengths lengths(job, *c);
  EXPECT_EQ(lengths.room(), BatchLengths::kMostPanels);
  Pattern pattern;
  pattern.panels.resize(BatchLengths::kMostBytes / sizeof(PlacedPanel) / 2);
  lengths.add(0, 0, pattern);
  const std::int64_t room = lengths.room();
  EXPECT_NEAR(room, BatchLengths::kMostPanels / 2, 10);
  lengths.add(0, 0, pattern);  // the same again takes none
  EXPECT_EQ(lengths.room(), room);
  pattern.length = Length::mm(900);
  lengths.keep(0, 0, pattern);
  EXPECT_EQ(lengths.room(), 0);
}

// Each length takes something however few panels it has.
TEST(BatchLengths, HaveRoomForSoManyLengths) {
  const Job job = test::order_job();
  const Result<BatchCase> c = batch_case(job);
  BatchLengths lengths(job, *c);
  for (int mm = 1; mm <= 1000; ++mm) {
    Pattern pattern;
    pattern.length = Length::mm(mm);
    lengths.add(0, 0, pattern);
  }
  EXPECT_LT(lengths.room(), BatchLengths::kMostPanels - 1000);
}

}  // namespace
}  // namespace foldyard
