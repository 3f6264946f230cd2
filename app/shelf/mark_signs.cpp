#include "shelf/mark_signs.h"

#include <QPainter>
#include <QPainterPath>

namespace foldyard {
namespace {

// From tail to head, with two barbs of the given length.
void paint_arrow(QPainter& painter, const QLineF& line, double barb) {
  painter.drawLine(line);
  for (const double turn : {150.0, -150.0})
    painter.drawLine(QLineF::fromPolar(barb, line.angle() + turn).translated(line.p2()));
}

void paint_nap_sign(QPainter& painter, const QRectF& box, bool to_the_right) {
  const QPointF c = box.center();
  const QLineF line = to_the_right ? QLineF(box.left() + 1, c.y(), box.right() - 1, c.y())
                                   : QLineF(c.x(), box.bottom() - 1, c.x(), box.top() + 1);
  paint_arrow(painter, line, box.width() * 0.42);
}

void paint_rails(QPainter& painter, const QRectF& box) {
  const double high = box.height() / 4;
  for (const double y : {box.center().y() - high, box.center().y() + high})
    painter.drawLine(QLineF(box.left(), y, box.right(), y));
  for (int i = 0; i < 3; ++i) {
    const double x = box.left() + box.width() * (0.2 + 0.3 * i);
    painter.drawLine(QLineF(x, box.center().y() - high * 1.7, x, box.center().y() + high * 1.7));
  }
}

void paint_diamond(QPainter& painter, const QPointF& centre, double half) {
  painter.drawPolygon(QPolygonF{centre + QPointF(0, -half * 1.5), centre + QPointF(half, 0), centre + QPointF(0, half * 1.5),
                                centre + QPointF(-half, 0)});
}

void paint_repeat_sign(QPainter& painter, const QRectF& box) {
  const double quarter = box.width() / 4;
  paint_diamond(painter, box.center() - QPointF(quarter, 0), quarter);
  paint_diamond(painter, box.center() + QPointF(quarter, 0), quarter);
}

void paint_shrinkage_sign(QPainter& painter, const QRectF& box) {
  const QPointF c = box.center();
  paint_arrow(painter, QLineF(box.left(), c.y(), c.x() - 1.5, c.y()), box.width() * 0.26);
  paint_arrow(painter, QLineF(box.right(), c.y(), c.x() + 1.5, c.y()), box.width() * 0.26);
}

void paint_count(QPainter& painter, const QRectF& box, std::size_t count) {
  painter.drawEllipse(box.adjusted(0.5, 0.5, -0.5, -0.5));
  QFont small = painter.font();
  small.setPixelSize(static_cast<int>(box.height() * (count < 10 ? 0.68 : 0.52)));
  small.setBold(true);
  painter.setFont(small);
  painter.drawText(box, Qt::AlignCenter, count < 100 ? QString::number(count) : QStringLiteral("99+"));
}

}  // namespace

void paint_mark(QPainter& painter, const QRectF& box, const Roll& roll, RollMark mark, const QColor& ink) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(ink, 1.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  switch (mark) {
    case RollMark::nap: paint_nap_sign(painter, box, roll.fabric.railroaded); break;
    case RollMark::railroaded: paint_rails(painter, box); break;
    case RollMark::repeat: paint_repeat_sign(painter, box); break;
    case RollMark::shrinkage: paint_shrinkage_sign(painter, box); break;
    case RollMark::flaws: paint_count(painter, box, roll.flaws.size()); break;
  }
  painter.restore();
}

}  // namespace foldyard
