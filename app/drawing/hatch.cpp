#include "drawing/hatch.h"

#include <QColor>
#include <QPainter>
#include <QPen>
#include <algorithm>
#include <cmath>

namespace foldyard {

namespace {

// Lines at 45 degrees: x − y' runs over the rectangle, y' counted from the
// bottom (rising) or from the top (falling).
void add_slanted(std::vector<QLineF>& lines, const QRectF& r, bool rising, double spacing) {
  const double step = spacing * std::sqrt(2.0);
  for (double d = -r.height() + step / 2; d < r.width(); d += step) {
    const double x0 = std::max(0.0, d), x1 = std::min(r.width(), d + r.height());
    if (x1 <= x0) continue;
    const double y0 = x0 - d, y1 = x1 - d;
    const auto y = [&](double up) { return rising ? r.bottom() - up : r.top() + up; };
    lines.emplace_back(r.left() + x0, y(y0), r.left() + x1, y(y1));
  }
}

void add_level(std::vector<QLineF>& lines, const QRectF& r, double spacing) {
  for (double y = r.top() + spacing / 2; y < r.bottom(); y += spacing)
    lines.emplace_back(r.left(), y, r.right(), y);
}

void add_upright(std::vector<QLineF>& lines, const QRectF& r, double spacing) {
  for (double x = r.left() + spacing / 2; x < r.right(); x += spacing)
    lines.emplace_back(x, r.top(), x, r.bottom());
}

bool has(Hatch hatch, std::initializer_list<Hatch> kinds) {
  return std::find(kinds.begin(), kinds.end(), hatch) != kinds.end();
}

}  // namespace

std::vector<QLineF> hatch_lines(const QRectF& rect, Hatch hatch, double spacing) {
  std::vector<QLineF> lines;
  if (rect.isEmpty() || spacing <= 0) return lines;
  const double step = hatch == Hatch::rising_dense ? spacing / 2 : spacing;
  if (has(hatch, {Hatch::rising, Hatch::crossed, Hatch::rising_dense}))
    add_slanted(lines, rect, true, step);
  if (has(hatch, {Hatch::falling, Hatch::crossed})) add_slanted(lines, rect, false, step);
  if (has(hatch, {Hatch::level, Hatch::squared})) add_level(lines, rect, step);
  if (has(hatch, {Hatch::upright, Hatch::squared})) add_upright(lines, rect, step);
  return lines;
}

void draw_hatch(QPainter& painter, const QRectF& rect, Hatch hatch, double spacing,
                const QColor& colour, double width) {
  const std::vector<QLineF> lines = hatch_lines(rect, hatch, spacing);
  if (lines.empty()) return;
  painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap));
  painter.drawLines(lines.data(), static_cast<int>(lines.size()));
}

}  // namespace foldyard
