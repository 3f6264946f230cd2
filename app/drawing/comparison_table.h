#pragma once

// The fold ways side by side: those that work, best first, with panels, use,
// cuts, how many lengths may lie in a lift, time and worth; then those that are refused, grouped by their reason.
//
// The table is a list of rows of known height, so that what does not fit a
// page can go on on the next. The chosen way is marked by a chalk arrow and
// bold words, those of the frontier (no other is better in worth and time at
// once) by a dot.

#include <QRectF>
#include <QStringList>
#include <vector>

#include "job/job.h"
#include "job/plan.h"

class QPainter;

namespace foldyard {

struct TableRow {
  QStringList cells;  // name, end to end, panels, use, cuts, lift, time, worth; or a sentence
  bool is_sentence = false;
  bool chosen = false;
  bool frontier = false;
  double height = 0;
};

std::vector<TableRow> comparison_rows(const Job& job, const Comparison& comparison, int chosen,
                                      double width);
// Draws a head and the rows from `first` on that fit; returns the first not drawn.
std::size_t draw_comparison(QPainter& painter, const QRectF& area,
                            const std::vector<TableRow>& rows, std::size_t first);
// The height of the head and all rows.
double table_height(const std::vector<TableRow>& rows);
// How many rows, from `first` on, draw_comparison would draw.
std::size_t fitting_rows(const std::vector<TableRow>& rows, std::size_t first, double height);

}  // namespace foldyard
