#include "drawing/roll_rows.h"

#include <gtest/gtest.h>

#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

TEST(RollRows, StretchesCoverTheRollWithoutAGap) {
  for (const samples::Sample& sample : samples::all()) {
    Length at;
    for (const RollStretch& stretch : roll_stretches(sample.job, sample.plan())) {
      EXPECT_EQ(stretch.on_roll.from, at);
      at = stretch.on_roll.to;
    }
    EXPECT_EQ(at, sample.job.rolls.front().length);
  }
}

TEST(RollRows, StretchesNameWhatIsCutOut) {
  const samples::Sample sample = samples::carriers();
  Plan plan = sample.plan();
  const Length out = Length::mm(60);
  for (std::size_t i = 3; i < plan.lengths.size(); ++i) {
    plan.lengths[i].on_roll.from += out;
    plan.lengths[i].on_roll.to += out;
  }
  const Length end = plan.lengths[2].on_roll.to;
  plan.cut_out = {{end, end + out}};
  plan.remnant.from += out;
  const auto stretches = roll_stretches(sample.job, plan);
  EXPECT_EQ(stretches[4].kind, StretchKind::cut_out);  // behind the squared end and three lengths
  EXPECT_EQ(stretches[4].on_roll, plan.cut_out[0]);
  EXPECT_EQ(stretches[5].number, 3);
}

TEST(RollRows, RowsKeepOrderAndBreakNoLength) {
  const samples::Sample sample = samples::carriers();
  const auto stretches = roll_stretches(sample.job, sample.plan());
  // 14 lengths of 940 mm with allowance: rows of 3 m hold three, the first of
  // them after 100 mm of squaring.
  const auto rows = rows_of(stretches, Length::mm(3000));
  Length at;
  int lengths = 0;
  for (const RollRow& row : rows) {
    EXPECT_LE(row.on_roll().size(), Length::mm(3000));
    for (const RollStretch& stretch : row.stretches) {
      EXPECT_EQ(stretch.on_roll.from, at);
      at = stretch.on_roll.to;
      if (stretch.kind == StretchKind::length) {
        EXPECT_EQ(stretch.number, lengths++);
        EXPECT_EQ(stretch.on_roll.size(), Length::mm(940));
      }
    }
  }
  EXPECT_EQ(lengths, 14);
  EXPECT_EQ(rows.size(), 5u);
}

TEST(RollRows, ALengthLongerThanARowIsBroken) {
  const std::vector<RollStretch> one{{StretchKind::length, {Length(), Length::mm(2500)}, 0}};
  const auto rows = rows_of(one, Length::mm(1000));
  ASSERT_EQ(rows.size(), 3u);
  EXPECT_EQ(rows[2].on_roll().size(), Length::mm(500));
}

}  // namespace
}  // namespace foldyard
