#include "drawing/list_flow.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

std::vector<ListLine> rows(int n) {
  std::vector<ListLine> lines{heading_line("Cuts")};
  for (int i = 0; i < n; ++i)
    lines.push_back({LineKind::row, {QString::number(i), "along"}, {0.2, 0.8}, -1});
  return lines;
}

TEST(ListFlow, WhatDoesNotFitGoesOnFromTheFirstLeftOut) {
  const auto lines = rows(100);
  std::size_t next = 0;
  int pages = 0;
  while (next < lines.size() && pages < 50) {
    next += fitting_lines(lines, next, {80, 50}, 2);
    ++pages;
  }
  EXPECT_EQ(next, lines.size());
  EXPECT_GT(pages, 2);
}

TEST(ListFlow, AHeadingNeverEndsAColumn) {
  auto lines = rows(3);
  lines.push_back(heading_line("Left over"));
  lines.push_back(paragraph_line("none"));
  double before = 0;
  for (int i = 0; i < 4; ++i) before += line_height_of(lines[static_cast<std::size_t>(i)], 80);
  // Room for the heading, but not for the line it leads.
  const double room = before + line_height_of(lines[4], 80) + 0.5;
  EXPECT_EQ(fitting_lines(lines, 0, {80, room}, 1), 4u);
}

std::vector<QString> first_cells(const std::vector<ListLine>& lines) {
  std::vector<QString> cells;
  for (const ListLine& line : lines) cells.push_back(line.cells.value(0));
  return cells;
}

TEST(ListFlow, APageThatGoesOnWithATableSaysItsHeadAgain) {
  std::vector<ListLine> lines = rows(40);
  lines.insert(lines.begin() + 1, {LineKind::head_row, {"Cut", "Direction"}, {0.2, 0.8}, -1});
  const auto pages = list_pages(lines, {80, 60});
  ASSERT_GT(pages.size(), 2u);
  std::size_t row = 0;
  for (const std::vector<ListLine>& page : pages) {
    const std::vector<QString> cells = first_cells(page);
    EXPECT_EQ(cells[0], row == 0 ? "Cuts" : "Cuts, continued");
    EXPECT_EQ(cells[1], "Cut");
    EXPECT_EQ(fitting_lines(page, 0, {80, 60}, 1), page.size());
    for (std::size_t i = 2; i < cells.size(); ++i) EXPECT_EQ(cells[i], QString::number(row++));
  }
  EXPECT_EQ(row, 40u);
}

TEST(ListFlow, APageThatBeginsWithAParagraphSaysNothingAgain) {
  std::vector<ListLine> lines = rows(2);
  lines.push_back(paragraph_line("none"));
  double room = 0;
  for (int i = 0; i < 3; ++i) room += line_height_of(lines[static_cast<std::size_t>(i)], 80);
  const auto pages = list_pages(lines, {80, room});
  ASSERT_EQ(pages.size(), 2u);
  EXPECT_EQ(first_cells(pages[1]), (std::vector<QString>{"none"}));
}

// However low a page is, the pages end and have all rows in their order.
TEST(ListFlow, PagesEndHoweverLowTheyAre) {
  std::vector<ListLine> lines = rows(3);
  lines.insert(lines.begin() + 1, {LineKind::head_row, {"Cut", "Direction"}, {0.2, 0.8}, -1});
  std::vector<QString> rows_shown;
  for (const std::vector<ListLine>& page : list_pages(lines, {80, 1}))
    if (page.back().kind == LineKind::row) rows_shown.push_back(page.back().cells[0]);
  EXPECT_EQ(rows_shown, (std::vector<QString>{"0", "1", "2"}));
}

TEST(ListFlow, BalancedColumnsHoldAll) {
  const auto lines = rows(41);
  const double height = balanced_height(lines, 0, 80, 2, 500);
  EXPECT_EQ(fitting_lines(lines, 0, {80, height}, 2), lines.size());
  EXPECT_LT(fitting_lines(lines, 0, {80, height - 2}, 2), lines.size());
}

TEST(ListFlow, TheLastCellWraps) {
  const ListLine one{LineKind::row, {"1", "short"}, {0.2, 0.8}, -1};
  const ListLine many{LineKind::row, {"1", QString("many words ").repeated(20)}, {0.2, 0.8}, -1};
  EXPECT_GT(line_height_of(many, 60), 3 * line_height_of(one, 60));
}

TEST(ListFlow, OtherCellsWrapOnlyWhereAllDo) {
  ListLine line{LineKind::row, {QString("many words ").repeated(20), "short"}, {0.5, 0.5}, -1};
  const double elided = line_height_of(line, 60);
  line.all_wrap = true;
  EXPECT_GT(line_height_of(line, 60), 3 * elided);
}

// Whatever room there is and however long the list, no heading is the last line.
TEST(ListFlow, AHeadingNeverStandsAloneAboveItsHeadRow) {
  for (int count = 1; count < 14; ++count) {
    std::vector<ListLine> lines{paragraph_line("before"), gap_line(), heading_line("Cuts"),
                                {LineKind::head_row, {"number", "way"}, {0.2, 0.8}, -1}};
    for (int i = 0; i < count; ++i) lines.push_back({LineKind::row, {QString::number(i), "along"}, {0.2, 0.8}, -1});
    for (double room = 10; room < 70; room += 0.5)
      EXPECT_NE(fitting_lines(lines, 0, {80, room}, 1), 3u) << count << " rows, " << room << " mm";
  }
}

}  // namespace
}  // namespace foldyard
