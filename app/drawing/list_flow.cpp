#include "drawing/list_flow.h"

#include <QPainter>
#include <algorithm>
#include <functional>
#include <numeric>

#include "drawing/flat_picture.h"
#include "drawing/strokes.h"
#include "drawing/text.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

const TextStyle kHeading{8.5, true, true, palette::chalk()};
const TextStyle kHeadRow{kSmallestPoints, false, false, palette::soft_ink()};
const TextStyle kRow{7, false, false, palette::ink()};
const TextStyle kBody{7.5, false, false, palette::ink()};
constexpr double kSwatch = 5;

TextStyle style_of(LineKind kind) {
  switch (kind) {
    case LineKind::heading:
      return kHeading;
    case LineKind::head_row:
      return kHeadRow;
    case LineKind::row:
      return kRow;
    default:
      return kBody;
  }
}

constexpr double kBetweenCells = 1.4;

bool wraps(const ListLine& line, qsizetype cell) { return line.all_wrap || cell + 1 == line.cells.size(); }

// The width that the words of a cell have.
double width_of_cell(const ListLine& line, qsizetype cell, double width) {
  if (line.shares.empty()) return width;
  const double share = line.shares[ix(cell)] * width;
  return cell + 1 == line.cells.size() ? share : share - kBetweenCells;
}

double height_of_cells(const ListLine& line, const TextStyle& style, double width) {
  double height = line_height(style);
  for (qsizetype i = 0; i < line.cells.size(); ++i)
    if (wraps(line, i)) height = std::max(height, paragraph_height(line.cells[i], style, width_of_cell(line, i, width)));
  return height;
}

std::vector<double> heights_of(const std::vector<ListLine>& lines, double width) {
  std::vector<double> heights;
  for (const ListLine& line : lines) heights.push_back(line_height_of(line, width));
  return heights;
}

void draw_nothing(const ListLine&, int, double) {}

// A heading keeps its list with it if that is short, else its head row and first row. Both
// judge the same list and the same rows, so both stay or both go.
double height_kept_together(const std::vector<ListLine>& lines, const std::vector<double>& heights,
                            std::size_t first) {
  constexpr std::size_t kShort = 9;
  const LineKind kind = lines[first].kind;
  if (kind != LineKind::heading && kind != LineKind::head_row) return heights[first];
  std::size_t end = first + 1;
  while (end < lines.size() && lines[end].kind != LineKind::gap) ++end;
  const std::size_t above = kind == LineKind::head_row ? 1 : 0;
  if (end - first + above > kShort) end = std::min(end, first + 3 - above);
  return std::accumulate(heights.begin() + static_cast<std::ptrdiff_t>(first),
                         heights.begin() + static_cast<std::ptrdiff_t>(end), 0.0);
}

// Calls visit(line, column, y) for each line that fits; returns the first not.
using Visit = std::function<void(const ListLine&, int, double)>;
std::size_t walk(const std::vector<ListLine>& lines, const std::vector<double>& heights,
                 std::size_t first, double column_height, int columns, const Visit& visit) {
  int at = 0;
  double y = 0;
  for (std::size_t i = first; i < lines.size(); ++i) {
    const double needed = height_kept_together(lines, heights, i);
    if (y > 0 && y + needed > column_height + 1e-6) {
      if (++at >= columns) return i;
      y = 0;
    }
    if (y == 0 && lines[i].kind == LineKind::gap) continue;
    visit(lines[i], at, y);
    y += heights[i];
  }
  return lines.size();
}

// What stands above the rows that a page goes on with.
using LineAt = std::vector<ListLine>::const_iterator;
std::vector<ListLine> said_again(const std::vector<ListLine>& lines, LineAt first) {
  if (first->kind != LineKind::row) return {};
  LineAt head = first;
  while (head != lines.begin() && head->kind == LineKind::row) --head;
  if (head->kind != LineKind::head_row) return {};
  const bool has_heading = head != lines.begin() && std::prev(head)->kind == LineKind::heading;
  if (!has_heading) return {*head};
  return {heading_line(tr("%1, continued").arg(std::prev(head)->cells.front())), *head};
}

void draw_cells(QPainter& painter, const QRectF& box, const ListLine& line) {
  const TextStyle style = style_of(line.kind);
  double x = box.left();
  for (qsizetype i = 0; i < line.cells.size(); ++i) {
    const double share = line.shares[ix(i)] * box.width();
    if (i == 0 && line.swatch >= 0) {
      draw_panel_ground(painter, QRectF(x, box.top() + 0.5, kSwatch, 2.6), line.swatch);
      draw_text(painter,
                QRectF(x + kSwatch + 1, box.top(), share - kSwatch - 1.5, line_height(style)),
                line.cells[i], style);
    } else if (wraps(line, i)) {
      draw_paragraph(painter, {x, box.top()}, width_of_cell(line, i, box.width()), line.cells[i], style);
    } else {
      draw_text(painter, QRectF(x, box.top(), share - 0.8, line_height(style)), line.cells[i],
                style);
    }
    x += share;
  }
}

void draw_line(QPainter& painter, const QRectF& box, const ListLine& line) {
  const TextStyle style = style_of(line.kind);
  switch (line.kind) {
    case LineKind::gap:
      return;
    case LineKind::paragraph:
      draw_paragraph(painter, box.topLeft(), box.width(), line.cells.front(), style);
      return;
    case LineKind::heading:
      draw_text(painter, box.adjusted(0, 0, 0, -1.2), line.cells.front(), style);
      draw_stitches(painter,
                    QLineF(box.left(), box.bottom() - 0.6, box.right(), box.bottom() - 0.6));
      return;
    case LineKind::head_row:
    case LineKind::row:
      draw_cells(painter, box, line);
  }
}

}  // namespace

ListLine heading_line(const QString& words) {
  return {LineKind::heading, {words}, {}, -1};
}
ListLine paragraph_line(const QString& words) {
  return {LineKind::paragraph, {words}, {}, -1};
}
ListLine gap_line() {
  return {LineKind::gap, {}, {}, -1};
}

double line_height_of(const ListLine& line, double width) {
  const TextStyle style = style_of(line.kind);
  switch (line.kind) {
    case LineKind::gap:
      return 2;
    case LineKind::heading:
      return line_height(style) + 2;
    case LineKind::paragraph:
      return paragraph_height(line.cells.front(), style, width) + 0.5;
    case LineKind::head_row:
    case LineKind::row:
      return height_of_cells(line, style, width) + 0.3;
  }
  return 0;
}

std::size_t fitting_lines(const std::vector<ListLine>& lines, std::size_t first,
                          const QSizeF& column, int columns) {
  return walk(lines, heights_of(lines, column.width()), first, column.height(), columns,
              draw_nothing) -
         first;
}

std::vector<std::vector<ListLine>> list_pages(const std::vector<ListLine>& lines, const QSizeF& column) {
  std::vector<std::vector<ListLine>> pages;
  for (auto first = lines.begin(); first != lines.end();) {
    std::vector<ListLine> page = said_again(lines, first);
    const std::size_t again = page.size();
    page.insert(page.end(), first, lines.end());
    page.resize(std::max(again + 1, fitting_lines(page, 0, column, 1)));
    first += static_cast<std::ptrdiff_t>(page.size() - again);
    pages.push_back(std::move(page));
  }
  return pages;
}

double balanced_height(const std::vector<ListLine>& lines, std::size_t first, double column_width,
                       int columns, double limit) {
  const std::vector<double> heights = heights_of(lines, column_width);
  for (double height = 10; height < limit; height += 2)
    if (walk(lines, heights, first, height, columns, draw_nothing) == lines.size()) return height;
  return limit;
}

std::size_t draw_list(QPainter& painter, const QRectF& area, int columns, double between,
                      const std::vector<ListLine>& lines, std::size_t first) {
  const double width = (area.width() - between * (columns - 1)) / columns;
  return walk(lines, heights_of(lines, width), first, area.height(), columns,
              [&](const ListLine& line, int column, double y) {
                draw_line(painter,
                          QRectF(area.left() + column * (width + between), area.top() + y, width,
                                 line_height_of(line, width)),
                          line);
              });
}

}  // namespace foldyard
