#include "drawing/front_page.h"

#include <QPainter>
#include <algorithm>

#include "drawing/calibration_square.h"
#include "drawing/comparison_table.h"
#include "drawing/cut_list.h"
#include "drawing/flaw_words.h"
#include "drawing/list_flow.h"
#include "drawing/pattern_data.h"
#include "drawing/range_words.h"
#include "drawing/repeat_words.h"
#include "drawing/roll_picture.h"
#include "drawing/strokes.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr double kMargin = 12;
constexpr double kFoot = 5;
constexpr double kBesideSquare = 4;
constexpr double kBetweenLists = 6;
const TextStyle kTitle{17, true, true, palette::ink()};
const TextStyle kAnswer{9.5, false, false, palette::ink()};
const TextStyle kBody{7.5, false, false, palette::ink()};
const TextStyle kSoft{7.5, false, false, palette::soft_ink()};
const TextStyle kFootText{kSmallestPoints, false, false, palette::soft_ink()};
const TextStyle kHeading{9, true, true, palette::chalk()};

constexpr double kTableHeading = 6;
constexpr double kLeastRoll = 48;
constexpr qsizetype kMostFlawLines = 8;

std::vector<TableRow> rows_of_table(const Sheet& sheet, double width) {
  if (!sheet.options().comparison) return {};
  return comparison_rows(sheet.job(), sheet.comparison(), sheet.chosen(), width);
}

// How good the plan is, and what matching a pattern costs it.
QString judgement(const Sheet& sheet) {
  return QStringList{proof_words(sheet.plan()), repeat_words(sheet.job(), sheet.plan()),
                     matching_words(sheet.job(), sheet.plan())}
      .join(QLatin1Char(' '))
      .trimmed();
}

// What stands below the answer: the judgement, and what flaws cost and where.
QString below_answer(const Sheet& sheet) {
  QString words = judgement(sheet);
  const QString flaws = flaws_words(sheet.job(), sheet.plan());
  if (flaws.isEmpty()) return words;
  QStringList lines = flaw_lines(sheet.job(), sheet.plan());
  if (lines.size() > kMostFlawLines) {
    const auto more = lines.size() - kMostFlawLines;
    lines = lines.mid(0, kMostFlawLines);
    lines << tr("and %1 more, on the roll below").arg(more);
  }
  return words + QLatin1Char(' ') + flaws + QLatin1Char(' ') + lines.join(QStringLiteral("; ")) +
         QLatin1Char('.');
}

// What is known of the length, and what the roll gives by it; empty where it is known.
QString length_of_roll_words(const Sheet& sheet) {
  const Roll& roll = sheet.job().rolls[ix(sheet.plan().roll)];
  QString words = estimated_words(sheet.job(), roll);
  if (sheet.range())
    words += QLatin1Char(' ') + range_words(sheet.job(), *sheet.range()) +
             tr(" What to cut first stands on a page of its own.");
  return words;
}

// Room below what is said of the length.
double length_height(const Sheet& sheet, double width) {
  const QString words = length_of_roll_words(sheet);
  return words.isEmpty() ? 0 : paragraph_height(words, kBody, width) + 1;
}

double answer_height(const Sheet& sheet) {
  const double width = text_area(sheet).width();
  return 9 + paragraph_height(roll_words(sheet.job(), sheet.plan()), kSoft, width) + 1.2 + 2.2 +
         length_height(sheet, width) +
         paragraph_height(answer_words(sheet.job(), sheet.plan()), kAnswer, width) + 1 +
         paragraph_height(below_answer(sheet), kBody, width) + 2.5;
}

int list_columns(double width) { return width > 140 ? 2 : 1; }

// What stands in the comparison's place.
std::vector<ListLine> lines_without_table(const Sheet& sheet) {
  if (sheet.plan().patterns.empty()) return {};
  std::vector<ListLine> lines = caution_lines(pattern_data(sheet.job(), sheet.plan(), 0));
  lines.push_back(gap_line());
  lines.push_back(heading_line(tr("Patterns")));
  for (int i = 0; i < static_cast<int>(sheet.plan().patterns.size()); ++i)
    lines.push_back(
        {LineKind::row,
         {pattern_letter(i),
          tr("%1 × %2, in %3")
              .arg(lengths_of(sheet.plan(), i))
              .arg(length_words(sheet.plan().patterns[ix(i)].length,
                                sheet.job().unit),
                   lays_words(sheet.plan(), i))},
         {0.08, 0.92},
         -1});
  return lines;
}

double needed_beside_square(const Sheet& sheet, double width, double most) {
  if (sheet.options().comparison)
    return kTableHeading + table_height(rows_of_table(sheet, width));
  const int columns = list_columns(width);
  return balanced_height(lines_without_table(sheet), 0,
                         (width - kBetweenLists * (columns - 1)) / columns, columns, most);
}

// Left of the square; higher than it where the rows need it and the roll keeps
// enough room.
QRectF table_area(const Sheet& sheet) {
  const QRectF page = text_area(sheet);
  const double width = page.width() - kSquare - kBesideSquare;
  const double most = page.height() - answer_height(sheet) - kLeastRoll;
  const double height =
      std::max(kSquare, std::min(needed_beside_square(sheet, width, most), most));
  return {page.left(), page.bottom() - height, width, height};
}

QRectF more_table_area(const Sheet& sheet) {
  return text_area(sheet).adjusted(0, 8, 0, 0);
}

std::size_t rows_beside_square(const Sheet& sheet) {
  const QRectF area = table_area(sheet);
  return fitting_rows(rows_of_table(sheet, area.width()), 0, area.height() - kTableHeading);
}

void draw_answer(QPainter& painter, const Sheet& sheet) {
  const QRectF page = text_area(sheet);
  const double left = page.left(), width = page.width();
  double y = page.top();
  draw_text(painter, QRectF(left, y, width, 8), QString::fromStdString(sheet.job().name), kTitle);
  y += 9;
  y +=
      draw_paragraph(painter, {left, y}, width, roll_words(sheet.job(), sheet.plan()), kSoft) + 1.2;
  draw_stitches(painter, QLineF(left, y, page.right(), y));
  y += 2.2;
  y += draw_paragraph(painter, {left, y}, width, answer_words(sheet.job(), sheet.plan()), kAnswer) +
       1;
  y += draw_paragraph(painter, {left, y}, width, below_answer(sheet), kBody);
  draw_paragraph(painter, {left, y + 1}, width, length_of_roll_words(sheet), kBody);
}

void draw_roll_with_heading(QPainter& painter, const Sheet& sheet, const QRectF& area) {
  const RollLayout layout =
      lay_out_roll(sheet.job(), sheet.plan(), QSizeF(area.width(), area.height() - 7));
  draw_text(painter, QRectF(area.left(), area.top(), 30, 5), tr("The roll"), kHeading);
  const QString words = tr("scale %1; from the free end, tape and cross-cuts in %2")
                            .arg(layout.scale.words(), unit_words(sheet.job().unit));
  draw_text(painter, QRectF(area.left() + 20, area.top(), 110, 5.2), words, kSoft);
  draw_scale_bar(painter, {area.right() - 48, area.top() + 2.6}, layout.scale, sheet.job().unit,
                 32);
  draw_roll(painter, {area.left(), area.top() + 6}, layout, sheet.job(), sheet.plan());
}

void draw_table_beside_square(QPainter& painter, const Sheet& sheet) {
  const QRectF area = table_area(sheet);
  if (!sheet.options().comparison) {
    draw_list(painter, area, list_columns(area.width()), kBetweenLists, lines_without_table(sheet),
              0);
    return;
  }
  draw_text(painter, QRectF(area.left(), area.top() - 1, area.width(), 5),
            tr("Fold ways compared, best first"), kHeading);
  const std::vector<TableRow> rows = rows_of_table(sheet, area.width());
  draw_comparison(painter, area.adjusted(0, kTableHeading, 0, 0), rows, 0);
}

void draw_first(QPainter& painter, const Sheet& sheet) {
  const QRectF page = text_area(sheet);
  draw_answer(painter, sheet);
  const double y = page.top() + answer_height(sheet);
  draw_roll_with_heading(painter, sheet,
                         QRectF(page.left(), y, page.width(), table_area(sheet).top() - 4 - y));
  draw_table_beside_square(painter, sheet);
  draw_calibration_square(painter, {page.right() - kSquare, page.bottom() - kSquare});
}

void draw_more_table(QPainter& painter, const Sheet& sheet, int page) {
  const QRectF area = more_table_area(sheet);
  const std::vector<TableRow> rows = rows_of_table(sheet, area.width());
  std::size_t first = rows_beside_square(sheet);
  for (int i = 1; i < page; ++i) first += fitting_rows(rows, first, area.height());
  draw_text(painter, QRectF(area.left(), area.top() - 8, area.width(), 5),
            tr("Fold ways compared, continued"), kHeading);
  draw_comparison(painter, area, rows, first);
}

}  // namespace

QRectF text_area(const Sheet& sheet) { return text_area(sheet.page_size_mm()); }

QRectF text_area(const QSizeF& page) {
  return {kMargin, kMargin, page.width() - 2 * kMargin, page.height() - 2 * kMargin - kFoot + 3};
}

void draw_foot(QPainter& painter, const Sheet& sheet, int page, int pages) {
  const QRectF area = text_area(sheet);
  const QRectF box(area.left(), area.bottom() + 2.5, area.width(), 4);
  const QString number =
      tr("page %1 of %2").arg(QString::number(page + 1), QString::number(pages));
  const double right = text_width(number, kFootText) + 3;
  const QString scale = tr("print at 100 % (actual size)");
  const double middle = text_width(scale, kFootText) + 6;
  draw_text(painter, QRectF(box.left(), box.top(), box.width() - right - middle, 4),
            QStringLiteral("Foldyard · %1").arg(QString::fromStdString(sheet.job().name)), kFootText);
  draw_text(painter, QRectF(box.right() - right - middle, box.top(), middle, 4), scale, kFootText);
  draw_text(painter, box, number, kFootText, Qt::AlignRight | Qt::AlignVCenter);
}

int front_pages(const Sheet& sheet) {
  const QRectF area = more_table_area(sheet);
  const std::vector<TableRow> rows = rows_of_table(sheet, area.width());
  int pages = 1;
  for (std::size_t first = rows_beside_square(sheet); first < rows.size(); ++pages)
    first += fitting_rows(rows, first, area.height());
  return pages;
}

void draw_front(QPainter& painter, const Sheet& sheet, int page) {
  page == 0 ? draw_first(painter, sheet) : draw_more_table(painter, sheet, page);
}

}  // namespace foldyard
