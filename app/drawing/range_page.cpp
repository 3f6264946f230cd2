#include "drawing/range_page.h"

#include <QPainter>
#include <algorithm>

#include "drawing/front_page.h"
#include "drawing/list_flow.h"
#include "drawing/range_words.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr double kHeadHeight = 12;
const TextStyle kTitle{13, true, true, palette::ink()};
const std::vector<double> kShares{0.17, 0.13, 0.7};

ListLine head(const QString& from) {
  return {LineKind::head_row,
          {from, tr("worth"), tr("what")},
          kShares,
          -1};
}

void add_rows(std::vector<ListLine>& lines, const QString& from, const std::vector<RangeRow>& rows) {
  if (rows.empty()) return;
  lines.push_back(head(from));
  for (const RangeRow& row : rows)
    lines.push_back({LineKind::row, {row.from, row.worth, row.what}, kShares, -1});
}

// The order of work first: that is what the page is for at the table.
std::vector<ListLine> range_lines(const Sheet& sheet) {
  const YieldRange& range = *sheet.range();
  std::vector<ListLine> lines{heading_line(tr("What to cut first"))};
  lines.push_back(paragraph_line(order_words(sheet.job(), range)));
  lines.push_back(gap_line());
  add_rows(lines, tr("what is left, from"), further_rows(sheet.job(), range));
  lines.push_back(paragraph_line(further_note(range)));
  lines.push_back(gap_line());
  lines.push_back(heading_line(tr("What the roll gives by its length")));
  lines.push_back(paragraph_line(range_words(sheet.job(), range)));
  lines.push_back(paragraph_line(steps_note(range)));
  lines.push_back(gap_line());
  add_rows(lines, tr("roll, from"), step_rows(sheet.job(), range));
  return lines;
}

QRectF list_area(const Sheet& sheet) { return text_area(sheet).adjusted(0, kHeadHeight, 0, 0); }

}  // namespace

int range_pages(const Sheet& sheet) {
  if (!sheet.range()) return 0;
  return static_cast<int>(list_pages(range_lines(sheet), list_area(sheet).size()).size());
}

void draw_range_page(QPainter& painter, const Sheet& sheet, int page) {
  const QRectF area = text_area(sheet);
  draw_text(painter, QRectF(area.left(), area.top(), area.width(), 7),
            tr("If the roll is longer"), kTitle);
  const QRectF list = list_area(sheet);
  draw_list(painter, list, 1, 0, list_pages(range_lines(sheet), list.size())[ix(page)], 0);
}

}  // namespace foldyard
