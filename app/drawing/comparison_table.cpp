#include "drawing/comparison_table.h"

#include <QPainter>
#include <algorithm>
#include <array>
#include <numeric>

#include "drawing/strokes.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "job/lift_room.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr double kMark = 3.4;  // room for the arrow or the dot
constexpr double kHead = 4.2;
const TextStyle kBody{kSmallestPoints, false, false, palette::ink()};
const TextStyle kBold{kSmallestPoints, true, false, palette::ink()};
const TextStyle kSoft{kSmallestPoints, false, false, palette::soft_ink()};

// Widths of the mark for end to end, panels, use, cuts, lengths that may lie in
// a lift, time, worth; the name takes what is left.
constexpr std::array<double, 7> kNumbers = {6.5, 9.0, 10.2, 6.5, 5.0, 6.0, 11.3};
QStringList heads() {
  return {tr("fold way"), tr("ends", "column: folded end to end"), tr("panels", "column"), tr("use", "column"),
          tr("cuts", "column"), tr("lift", "column"), tr("min", "column"), tr("worth", "column")};
}

// Wider where a language has a longer head.
std::array<double, 7> number_widths() {
  std::array<double, 7> widths = kNumbers;
  const QStringList words = heads();
  for (std::size_t i = 0; i < widths.size(); ++i)
    widths[i] = std::max(widths[i], text_width(words[static_cast<qsizetype>(i) + 1], kSoft) + 0.6);
  return widths;
}

double name_width(double width) {
  const std::array<double, 7> numbers = number_widths();
  return width - kMark - std::accumulate(numbers.begin(), numbers.end(), 0.0);
}

QString name_without_ends(FoldWay way) {
  way.end_to_end = false;
  return spoken(way_name(way));
}

const TextStyle& style_of(const TableRow& row) {
  return row.chosen ? kBold : kBody;
}

double height_of(const TableRow& row, double width) {
  return paragraph_height(row.cells[0], style_of(row), name_width(width) - 0.6) + 0.35;
}

TableRow plan_row(const Job& job, const WayResult& way) {
  const Plan& plan = *way.plan;
  const std::int64_t panels =
      std::accumulate(plan.yield.begin(), plan.yield.end(), std::int64_t{0});
  TableRow row;
  row.cells = {name_without_ends(way.way),
               way.way.end_to_end ? QStringLiteral("✓") : QString(),
               QString::number(panels),
               use_words(plan.used, plan.cloth),
               QString::number(plan.cuts + plan.cross_cuts),
               QString::number(lengths_in_a_lift(job, plan.roll, plan.way)),
               QString::number(plan.time.in_minutes(), 'f', 0),
               worth_words(plan.aim == Aim::most_worth ? plan.worth : plan.net)};
  return row;
}

// Ways that are refused for the same reason, in the order of the first.
std::vector<std::pair<QString, QStringList>> refusals(const Comparison& comparison) {
  std::vector<std::pair<QString, QStringList>> groups;
  for (const WayResult& way : comparison.ways) {
    if (way.plan) continue;
    const QString reason = spoken(way.refused);
    auto group = std::find_if(groups.begin(), groups.end(),
                              [&](const auto& each) { return each.first == reason; });
    if (group == groups.end()) group = groups.insert(groups.end(), {reason, {}});
    group->second << spoken(way_name(way.way));
  }
  return groups;
}

TableRow sentence_row(const QString& words, double width) {
  TableRow row;
  row.cells = {words};
  row.is_sentence = true;
  row.height = paragraph_height(words, kSoft, width - kMark) + 0.9;
  return row;
}

void draw_numbers(QPainter& painter, const QRectF& box, const QStringList& cells,
                  const TextStyle& style) {
  const std::array<double, 7> widths = number_widths();
  double right = box.right();
  for (std::size_t i = widths.size(); i-- > 0;) {
    draw_text(painter, QRectF(right - widths[i], box.top(), widths[i], line_height(style)),
              cells[static_cast<qsizetype>(i) + 1], style, Qt::AlignRight | Qt::AlignVCenter);
    right -= widths[i];
  }
}

void draw_mark(QPainter& painter, const QRectF& box, const TableRow& row) {
  const double y = box.top() + line_height(kBody) / 2;
  if (row.chosen)
    draw_arrow(painter, QLineF(box.left(), y, box.left() + 2.8, y), palette::chalk(), 0.5);
  else if (row.frontier) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette::chalk());
    painter.drawEllipse(QPointF(box.left() + 1.5, y), 0.55, 0.55);
  }
}

void draw_row(QPainter& painter, const QRectF& box, const TableRow& row) {
  const TextStyle& style = style_of(row);
  if (row.is_sentence) {
    draw_paragraph(painter, {box.left() + kMark, box.top() + 0.6}, box.width() - kMark,
                   row.cells[0], kSoft);
    return;
  }
  draw_mark(painter, box, row);
  draw_paragraph(painter, {box.left() + kMark, box.top()}, name_width(box.width()) - 0.6,
                 row.cells[0], style);
  draw_numbers(painter, box, row.cells, style);
  painter.setPen(QPen(palette::thread(), 0.12));
  painter.drawLine(QLineF(box.left(), box.bottom(), box.right(), box.bottom()));
}

}  // namespace

std::vector<TableRow> comparison_rows(const Job& job, const Comparison& comparison, int chosen,
                                      double width) {
  std::vector<TableRow> rows;
  for (int index : comparison.ranking) {
    rows.push_back(plan_row(job, comparison.ways[ix(index)]));
    rows.back().chosen = index == chosen;
    rows.back().height = height_of(rows.back(), width);
    rows.back().frontier = std::find(comparison.frontier.begin(), comparison.frontier.end(),
                                     index) != comparison.frontier.end();
  }
  for (const auto& [reason, names] : refusals(comparison))
    rows.push_back(sentence_row(
        tr("Not possible: %1. Reason: %2").arg(names.join(QStringLiteral("; ")), reason), width));
  return rows;
}

double table_height(const std::vector<TableRow>& rows) {
  double height = kHead + 0.1;
  for (const TableRow& row : rows) height += row.height;
  return height;
}

std::size_t fitting_rows(const std::vector<TableRow>& rows, std::size_t first, double height) {
  double y = kHead;
  std::size_t i = first;
  for (; i < rows.size(); ++i) {
    y += rows[i].height;
    if (y > height && i > first) break;
  }
  return i - first;
}

std::size_t draw_comparison(QPainter& painter, const QRectF& area,
                            const std::vector<TableRow>& rows, std::size_t first) {
  draw_text(painter, QRectF(area.left() + kMark, area.top(), name_width(area.width()), 3.6),
            heads()[0], kSoft);
  draw_numbers(painter, QRectF(area.left(), area.top() + 0.4, area.width(), 3), heads(), kSoft);
  painter.setPen(QPen(palette::ink(), 0.25));
  painter.drawLine(
      QLineF(area.left(), area.top() + kHead - 0.4, area.right(), area.top() + kHead - 0.4));
  const std::size_t end = first + fitting_rows(rows, first, area.height());
  double y = area.top() + kHead;
  for (std::size_t i = first; i < end; ++i) {
    draw_row(painter, QRectF(area.left(), y, area.width(), rows[i].height), rows[i]);
    y += rows[i].height;
  }
  return end;
}

}  // namespace foldyard
