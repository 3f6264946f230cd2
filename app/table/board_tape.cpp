#include "table/board_tape.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

#include "drawing/tape.h"
#include "language/local_numbers.h"
#include "table/board_colours.h"

namespace foldyard {
namespace {

constexpr double kNumberApart = 46;  // pixels
constexpr double kDotsPerMm = 96 / 25.4;

// Steps of the tape for so many pixels a millimetre of cloth.
TapeSteps steps_for(double pixels_per_mm, Unit unit) {
  return tape_steps(Scale{kDotsPerMm / pixels_per_mm}, unit, kNumberApart / kDotsPerMm);
}

QString number_of(Length at, Unit unit) {
  return local_numbers(QString::fromStdString(unit == Unit::yard ? write_length(at, unit) : write_number(at, unit)));
}

void paint_ground(QPainter& painter, const QRectF& box) {
  painter.fillRect(box, board_colours(false).tape);
  painter.setPen(QPen(board_colours(false).on_tape, 1));
}

// The first mark not before a place, in steps.
std::int64_t first_mark(double mm, Length step) {
  return std::max<std::int64_t>(0, static_cast<std::int64_t>(std::ceil(mm / step.in_mm())));
}

template <class Mark>
void each_mark(double from_mm, double to_mm, const TapeSteps& steps, const Mark& mark) {
  for (std::int64_t i = first_mark(from_mm, steps.tick);; ++i) {
    const Length at = steps.tick * i;
    if (at.in_mm() > to_mm) return;
    mark(at, at.units() % steps.number.units() == 0);
  }
}

}  // namespace

void paint_tape_across(QPainter& painter, const QTransform& to_screen, const QRectF& table, const QRectF& view,
                       Unit unit) {
  const QTransform back = to_screen.inverted();
  const double top = std::min(table.bottom() + kTapeGap, view.bottom() - kTapeWidth);
  const QRectF box(table.left(), top, table.width(), kTapeWidth);
  paint_ground(painter, box.intersected(view));
  const double from = back.map(QPointF(std::max(table.left(), view.left()), 0)).x();
  const double to = back.map(QPointF(std::min(table.right(), view.right()), 0)).x();
  each_mark(from, to, steps_for(to_screen.m11(), unit), [&](Length at, bool number) {
    const double x = to_screen.map(QPointF(at.in_mm(), 0)).x();
    painter.drawLine(QLineF(x, top, x, top + (number ? 9 : 5)));
    if (number && !at.is_zero())
      painter.drawText(QRectF(x - 40, top + 7, 80, kTapeWidth - 7), Qt::AlignCenter, number_of(at, unit));
  });
}

void paint_tape_along(QPainter& painter, const QTransform& to_screen, const QRectF& table, const QRectF& view,
                      Unit unit) {
  const QTransform back = to_screen.inverted();
  const double left = std::max(table.left() - kTapeGap - kTapeWidth, view.left());
  const QRectF box(left, table.top(), kTapeWidth, table.height());
  paint_ground(painter, box.intersected(view));
  const double from = -back.map(QPointF(0, std::min(table.bottom(), view.bottom()))).y();
  const double to = -back.map(QPointF(0, std::max(table.top(), view.top()))).y();
  each_mark(from, to, steps_for(to_screen.m22(), unit), [&](Length at, bool number) {
    const double y = to_screen.map(QPointF(0, -at.in_mm())).y(), right = left + kTapeWidth;
    painter.drawLine(QLineF(right - (number ? 9 : 5), y, right, y));
    if (!number || at.is_zero()) return;
    painter.save();
    painter.translate(left + 8, y);
    painter.rotate(-90);
    painter.drawText(QRectF(-40, -8, 80, 16), Qt::AlignCenter, number_of(at, unit));
    painter.restore();
  });
}

}  // namespace foldyard
