#include "drawing/scale.h"

#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

#include "drawing/palette.h"
#include "drawing/text.h"
#include "language/local_numbers.h"
#include "measure/write_length.h"

namespace foldyard {

namespace {

constexpr std::array kSteps = {1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 6.0, 7.5, 8.0};

// Bars in centimetres, or in inches, from small to large.
constexpr std::array<std::int64_t, 12> kMetricBars = {10,   20,   50,   100,   200,   500,
                                                      1000, 2000, 5000, 10000, 20000, 50000};
constexpr std::array<std::int64_t, 10> kInchBars = {1, 2, 6, 12, 18, 36, 72, 180, 360, 1800};

}  // namespace

QString Scale::words() const {
  return QStringLiteral("1 : ") +
         local_number(denominator, denominator == std::floor(denominator) ? 0 : 1);
}

Scale round_scale(double needed) {
  for (double power = 1; power < 1e7; power *= 10)
    for (double step : kSteps)
      if (step * power >= needed * (1 - 1e-9)) return {step * power};
  return {needed};
}

Scale free_scale(double needed) {
  return {std::max(needed, 0.01)};
}

Length bar_length(const Scale& scale, Unit unit, double longest_mm) {
  Length best = is_imperial(unit) ? Length::inches64(64) : Length::mm(10);
  const auto try_length = [&](Length length) {
    if (scale.mm(length) <= longest_mm) best = std::max(best, length);
  };
  if (is_imperial(unit)) {
    for (std::int64_t inches : kInchBars) try_length(Length::inches64(64 * inches));
  } else {
    for (std::int64_t mm : kMetricBars) try_length(Length::mm(mm));
  }
  return best;
}

double draw_scale_bar(QPainter& painter, const QPointF& left, const Scale& scale, Unit unit,
                      double longest_mm) {
  const Length length = bar_length(scale, unit, longest_mm);
  const double width = scale.mm(length), high = 1.3;
  painter.setPen(QPen(palette::ink(), 0.18));
  for (int i = 0; i < 4; ++i) {
    painter.setBrush(i % 2 == 0 ? palette::ink() : palette::paper());
    painter.drawRect(QRectF(left.x() + width * i / 4, left.y() - high / 2, width / 4, high));
  }
  const QString words = local_numbers(QString::fromStdString(write_length(length, unit)));
  const TextStyle style{kSmallestPoints, false, false, palette::soft_ink()};
  const double text = text_width(words, style) + 0.5;
  draw_text(painter, QRectF(left.x() + width + 1.5, left.y() - 2, text, 4), words, style);
  return width + 1.5 + text;
}

}  // namespace foldyard
