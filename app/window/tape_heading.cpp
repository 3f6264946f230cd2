#include "window/tape_heading.h"

#include <QPainter>

#include "window/window_colours.h"

namespace foldyard {
namespace {

constexpr int kTick = 8;  // pixels from one to the next
constexpr int kInset = 10;
constexpr int kTicks = 9;  // height that the ticks need

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
    const int tall = i % 10 == 0 ? 8 : i % 5 == 0 ? 6 : 3;
    painter.drawLine(i * kTick, height() - tall, i * kTick, height());
  }
  painter.drawText(rect().adjusted(kInset, 2, -kInset, -kTicks), Qt::AlignLeft | Qt::AlignVCenter, text());
}

}  // namespace foldyard
