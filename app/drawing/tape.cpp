#include "drawing/tape.h"

#include <QPainter>
#include <array>

#include "drawing/palette.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "language/local_numbers.h"
#include "measure/write_length.h"

namespace foldyard {

namespace {

constexpr std::array<TapeSteps, 13> metric_steps() {
  std::array<TapeSteps, 13> steps;
  constexpr std::int64_t mm[] = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000};
  for (std::size_t i = 0; i < 13; ++i) steps[i] = {Length::mm(mm[i] * 10), Length::mm(mm[i])};
  return steps;
}

constexpr std::array<TapeSteps, 9> inch_steps() {
  std::array<TapeSteps, 9> steps;
  constexpr std::int64_t inches[][2] = {{1, 1},   {2, 1},    {6, 1},    {12, 2},    {36, 6},
                                        {72, 12}, {180, 36}, {360, 36}, {1800, 180}};
  for (std::size_t i = 0; i < 9; ++i)
    steps[i] = {Length::inches64(64 * inches[i][0]), Length::inches64(64 * inches[i][1])};
  return steps;
}

template <class Steps>
TapeSteps first_readable(const Steps& steps, const Scale& scale, double number_mm) {
  for (const TapeSteps& each : steps)
    if (scale.mm(each.number) >= number_mm && scale.mm(each.tick) >= 0.9) return each;
  return steps.back();
}

void draw_ground(QPainter& painter, const QRectF& box) {
  painter.setPen(QPen(palette::soft_ink(), 0.18));
  painter.setBrush(palette::tape());
  painter.drawRect(box);
}

void draw_ticks(QPainter& painter, const QRectF& box, const Scale& scale, Span shown,
                const TapeSteps& steps) {
  painter.setPen(QPen(palette::ink(), 0.16, Qt::SolidLine, Qt::FlatCap));
  const std::int64_t first = (shown.from + steps.tick - Length::units(1)) / steps.tick;
  for (Length at = steps.tick * first; at <= shown.to; at += steps.tick) {
    const bool number = at.units() % steps.number.units() == 0;
    const double x = box.left() + scale.mm(at - shown.from);
    painter.drawLine(QLineF(x, box.top(), x, box.top() + box.height() * (number ? 1.0 : 0.38)));
  }
}

void draw_numbers(QPainter& painter, const QRectF& box, const Scale& scale, Span shown,
                  const TapeSteps& steps, Unit unit) {
  const TextStyle style{kSmallestPoints, false, false, palette::ink()};
  for (Length at = steps.number * (shown.from / steps.number); at <= shown.to; at += steps.number) {
    if (at < shown.from) continue;
    const QString words = local_numbers(QString::fromStdString(unit == Unit::yard ? write_length(at, unit)
                                                                                  : write_number(at, unit)));
    const double width = text_width(words, style) + 0.2,
                 left = box.left() + scale.mm(at - shown.from) + 0.5;
    if (left + width <= box.right())
      draw_text(painter, QRectF(left, box.bottom() - 2.6, width, 2.6), words, style);
  }
}

}  // namespace

TapeSteps tape_steps(const Scale& scale, Unit unit, double number_mm) {
  return is_imperial(unit) ? first_readable(inch_steps(), scale, number_mm)
                           : first_readable(metric_steps(), scale, number_mm);
}

void draw_tape(QPainter& painter, const QRectF& box, const Scale& scale, Span shown, Unit unit) {
  const TapeSteps steps = tape_steps(scale, unit, unit == Unit::yard ? 14 : 10);
  draw_ground(painter, box);
  draw_ticks(painter, box, scale, shown, steps);
  draw_numbers(painter, box, scale, shown, steps, unit);
}

void draw_plain_tape(QPainter& painter, const QRectF& box, const Scale& scale, Length length,
                     Unit unit) {
  draw_ground(painter, box);
  draw_ticks(painter, box, scale, {Length(), length}, tape_steps(scale, unit, 8));
}

void draw_plain_tape_upright(QPainter& painter, const QRectF& box, const Scale& scale,
                             Length length, Unit unit) {
  painter.save();
  painter.translate(box.right(), box.bottom());
  painter.rotate(-90);
  painter.scale(1, -1);
  draw_plain_tape(painter, QRectF(0, 0, box.height(), box.width()), scale, length, unit);
  painter.restore();
}

}  // namespace foldyard
