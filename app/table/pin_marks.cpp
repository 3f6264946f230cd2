#include "table/pin_marks.h"

#include "drawing/hatch.h"

namespace foldyard {
namespace {

constexpr double kHead = 8;   // radius of a pin head
constexpr double kTick = 11;  // height of a tick

}  // namespace

void paint_pin(QPainter& painter, const QPointF& head, const QString& words, double right, const BoardColours& colours) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QFontMetricsF metrics(painter.font());
  const double width = metrics.horizontalAdvance(words) + 12;
  QRectF tag(head.x() + kHead + 2, head.y() - metrics.height() / 2 - 2, width, metrics.height() + 4);
  if (tag.right() > right) tag.moveRight(head.x() - kHead - 2);
  painter.setPen(QPen(colours.on_tag, 1));
  painter.setBrush(colours.tag);
  painter.drawRoundedRect(tag, 3, 3);
  painter.drawText(tag, Qt::AlignCenter, words);
  painter.setBrush(colours.tape);
  painter.setPen(Qt::NoPen);
  painter.drawEllipse(head, kHead, kHead);
  painter.setRenderHint(QPainter::Antialiasing, false);
  draw_hatch(painter, QRectF(head.x() - 5, head.y() - 5, 10, 10), Hatch::falling, 3, colours.on_tape, 1);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(colours.on_tape, 2));
  painter.drawEllipse(head, kHead, kHead);
  painter.restore();
}

void paint_tick(QPainter& painter, const QPointF& tip, Snap snap, const BoardColours& colours) {
  if (snap == Snap::none) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(colours.on_tape, 1.6));
  painter.setBrush(snap == Snap::yield_changes ? QBrush(colours.on_tape) : QBrush(colours.tape));
  painter.drawPolygon(QPolygonF({tip, tip + QPointF(-kTick / 2, -kTick), tip + QPointF(kTick / 2, -kTick)}));
  painter.restore();
}

}  // namespace foldyard
