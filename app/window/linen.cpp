#include "window/linen.h"

#include <QPainter>
#include <QPixmap>

#include "window/window_colours.h"

namespace foldyard {
namespace {

// Two threads over, two under: one square of a plain weave.
QPixmap weave(const WindowColours& colours) {
  QPixmap square(8, 8);
  square.fill(colours.linen);
  QPainter painter(&square);
  painter.setPen(QPen(colours.weave, 1));
  painter.drawLine(0, 1, 2, 1);
  painter.drawLine(4, 5, 6, 5);
  painter.drawLine(5, 0, 5, 2);
  painter.drawLine(1, 4, 1, 6);
  return square;
}

}  // namespace

void Linen::paintEvent(QPaintEvent*) {
  QPainter(this).fillRect(rect(), QBrush(weave(window_colours(shade_of(palette())))));
}

}  // namespace foldyard
