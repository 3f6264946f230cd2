#include "drawing/comparison_table.h"

#include <gtest/gtest.h>

#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

TEST(ComparisonTable, RanksWaysAndGroupsTheRefusedByReason) {
  const samples::Sample sample = samples::carriers();
  const auto rows = comparison_rows(sample.job, sample.comparison, sample.chosen, 82);
  const std::size_t ranked = sample.comparison.ranking.size();
  // Two reasons in the sample: depth of the table, plies under the cutter.
  ASSERT_EQ(rows.size(), ranked + 2);
  EXPECT_TRUE(rows[0].chosen);
  EXPECT_EQ(rows[0].cells[0], "selvedge to selvedge");
  EXPECT_TRUE(rows[ranked].is_sentence);
}

TEST(ComparisonTable, EveryRefusedWayIsNamed) {
  const samples::Sample sample = samples::carriers();
  QString words;
  for (const TableRow& row : comparison_rows(sample.job, sample.comparison, sample.chosen, 82))
    if (row.is_sentence) words += row.cells[0];
  for (const WayResult& way : sample.comparison.ways) {
    if (way.plan) continue;
    EXPECT_TRUE(words.contains(QString::fromStdString(way_name(way.way))));
  }
}

TEST(ComparisonTable, SaysHowManyLengthsMayLieInALift) {
  samples::Sample sample = samples::carriers();
  sample.job.cutter = {Length::mm(25), 12};
  sample.job.rolls.front().fabric.thickness = Length::mm(1);
  const auto rows = comparison_rows(sample.job, sample.comparison, sample.chosen, 82);
  ASSERT_EQ(rows[0].cells.size(), 8);
  EXPECT_EQ(rows[0].cells[5], "6");  // two plies a length, twelve in all
}

TEST(ComparisonTable, GoesOnWhereItDoesNotFit) {
  const samples::Sample sample = samples::carriers();
  const auto rows = comparison_rows(sample.job, sample.comparison, sample.chosen, 82);
  std::size_t next = 0;
  for (int pages = 0; next < rows.size() && pages < 50; ++pages)
    next += fitting_rows(rows, next, 20);
  EXPECT_EQ(next, rows.size());
}

}  // namespace
}  // namespace foldyard
