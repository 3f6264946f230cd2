#pragma once

// Lists set in columns: headings, rows of cells and paragraphs, one after
// another, filling columns from left to right and going on over pages.
//
// A heading never ends a column, and keeps a short list together with it. Cells take fixed
// shares of the column's width; the last cell of a row wraps, the others are elided, unless
// all wrap.
// place_lines draws nothing: it says how many lines fit, so that pages can be
// counted before any is painted.

#include <QRectF>
#include <QStringList>
#include <vector>

class QPainter;

namespace foldyard {

enum class LineKind { heading, head_row, row, paragraph, gap };

struct ListLine {
  LineKind kind = LineKind::paragraph;
  QStringList cells;
  std::vector<double> shares;  // of the width, one for each cell
  int swatch = -1;             // a panel's look in the first cell
  bool all_wrap = false;
};

ListLine heading_line(const QString& words);
ListLine paragraph_line(const QString& words);
ListLine gap_line();

double line_height_of(const ListLine& line, double width);

// How many lines, from `first` on, fit `columns` columns of this size.
std::size_t fitting_lines(const std::vector<ListLine>& lines, std::size_t first,
                          const QSizeF& column, int columns);
// The lines of each page, where a page has one column of this size. A page that goes on with
// a table says its heading ("Cuts, continued") and its head row again.
std::vector<std::vector<ListLine>> list_pages(const std::vector<ListLine>& lines, const QSizeF& column);
// The least height at which all from `first` on fit, at most `limit`.
double balanced_height(const std::vector<ListLine>& lines, std::size_t first, double column_width,
                       int columns, double limit);
// Draws what fits the area; returns the first line not drawn.
std::size_t draw_list(QPainter& painter, const QRectF& area, int columns, double between,
                      const std::vector<ListLine>& lines, std::size_t first);

}  // namespace foldyard
