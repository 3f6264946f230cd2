#include "window/tape_heading.h"

#include <QPainter>

#include "window/window_colours.h"

namespace foldyard {
namespace {

constexpr int kTick = 8;  // pixels from one to the next
constexpr int kInset = 10;
constexpr int kTicks = 9;  // height that the ticks need

// Beside the tenth ticks, behind the heading.
void draw_numbers(QPainter& painter, int from, const QSize& size) {
  auto small = painter.font();
  small.setBold(false);
  small.setPointSizeF(small.pointSizeF() * 0.75);
  painter.setFont(small);
  const int high = painter.fontMetrics().ascent();
  for (int i = 10; i * kTick + 24 < size.width(); i += 10)
    if (i * kTick > from) painter.drawText(i * kTick + 3, size.height() - kTicks + high / 2 + 1, QString::number(i));
}

}  // namespace

TapeHeading::TapeHeading(const QString& text, QWidget* parent) : QLabel(text, parent) {
  auto heading = font();
  heading.setBold(true);
  setFont(heading);
}

QSize TapeHeading::sizeHint() const {
  const auto size = fontMetrics().size(0, text());
  return {size.width() + 2 * kInset, size.height() + kTicks + 6};
}

QSize TapeHeading::minimumSizeHint() const { return sizeHint(); }

void TapeHeading::paintEvent(QPaintEvent*) {
  const auto& colours = window_colours(shade_of(palette()));
  QPainter painter(this);
  painter.fillRect(rect(), colours.tape);
  painter.setPen(QPen(colours.on_tape, 1));
  for (int i = 1; i * kTick < width(); ++i) {
    const int tall = i % 10 == 0 ? 9 : i % 5 == 0 ? 6 : 3;
    painter.drawLine(i * kTick, height() - tall, i * kTick, height());
  }
  draw_numbers(painter, 2 * kInset + fontMetrics().horizontalAdvance(text()), size());
  painter.setFont(font());
  painter.drawText(rect().adjusted(kInset, 2, -kInset, -kTicks), Qt::AlignLeft | Qt::AlignVCenter, text());
}

}  // namespace foldyard
