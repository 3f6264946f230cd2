#include "drawing/strokes.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "drawing/palette.h"
#include "drawing/text.h"
#include "language/tr.h"

namespace foldyard {

namespace {

const TextStyle kDiscText{kSmallestPoints, true, false, palette::paper()};

const TextStyle kNapText{kSmallestPoints, false, false, palette::soft_ink()};

QPen dashed(const QColor& colour, double width, const QList<qreal>& pattern) {
  QPen pen(colour, width, Qt::CustomDashLine, Qt::RoundCap);
  pen.setDashPattern(pattern);
  return pen;
}

}  // namespace

QPen outline_pen(double width) {
  return QPen(palette::ink(), width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

QPen cut_pen() {
  return QPen(palette::blade(), 0.42, Qt::SolidLine, Qt::RoundCap);
}

void draw_fold_line(QPainter& painter, const QLineF& line) {
  painter.setPen(QPen(palette::paper(), 0.9, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(line);
  painter.setPen(dashed(palette::chalk(), 0.4, {5.5, 3.5}));
  painter.drawLine(line);
}

void draw_repeat_line(QPainter& painter, const QLineF& line) {
  painter.setPen(QPen(palette::paper(), 0.5, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(line);
  painter.setPen(dashed(palette::soft_ink(), 0.22, {9, 4, 0.5, 4}));
  painter.drawLine(line);
}

void draw_fold_edge(QPainter& painter, const QLineF& line) {
  if (line.length() <= 0) return;
  const double half = 0.75;
  painter.save();
  painter.translate(line.p1());
  painter.rotate(-line.angle());
  painter.setPen(QPen(palette::chalk(), 0.32));
  painter.setBrush(palette::paper());
  painter.drawRoundedRect(QRectF(0, -half, line.length(), 2 * half), half, half);
  painter.restore();
}

void draw_stitches(QPainter& painter, const QLineF& line) {
  painter.setPen(dashed(palette::thread(), 0.45, {4.5, 3.2}));
  painter.drawLine(line);
}

void draw_selvedge(QPainter& painter, const QLineF& line, double depth) {
  const double length = line.length(), step = 1.1;
  if (length <= 0) return;
  const QPointF along = (line.p2() - line.p1()) / length;
  const QPointF inward = QPointF(along.y(), -along.x()) * depth;
  painter.setPen(QPen(palette::soft_ink(), 0.16, Qt::SolidLine, Qt::FlatCap));
  for (double at = step / 2; at < length; at += step) {
    const QPointF foot = line.p1() + along * at;
    painter.drawLine(QLineF(foot, foot + inward));
  }
  painter.setPen(outline_pen(0.4));
  painter.drawLine(line);
}

double disc_width(const QString& number) {
  return std::max(2 * kDiscRadius, text_width(number, kDiscText) + 1.8);
}

void draw_disc(QPainter& painter, const QPointF& centre, const QString& number) {
  const double width = disc_width(number);
  const QRectF box(centre.x() - width / 2, centre.y() - kDiscRadius, width, 2 * kDiscRadius);
  painter.setPen(QPen(palette::paper(), 0.3));
  painter.setBrush(palette::blade());
  painter.drawRoundedRect(box, kDiscRadius, kDiscRadius);
  draw_text(painter, box, number, kDiscText, Qt::AlignCenter);
}

void draw_arrow(QPainter& painter, const QLineF& line, const QColor& colour, double width) {
  if (line.length() <= 0) return;
  const double head = std::min(2.2, line.length() / 2);
  painter.save();
  painter.translate(line.p1());
  painter.rotate(-line.angle());
  painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(QLineF(0, 0, line.length() - head, 0));
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  painter.drawPolygon(
      QPolygonF({QPointF(line.length(), 0), QPointF(line.length() - head, -head * 0.42),
                 QPointF(line.length() - head, head * 0.42)}));
  painter.restore();
}

void draw_nap_away(QPainter& painter, const QPointF& foot, double most) {
  const double high = std::min(15.0, most);
  draw_arrow(painter, QLineF(foot, foot - QPointF(0, high)), palette::chalk(), 0.45);
  draw_upward(painter, QRectF(foot.x() + 0.8, foot.y() - 15, 3, 15), tr("nap"),
              kNapText, Qt::AlignLeft | Qt::AlignVCenter);
}

void draw_nap_right(QPainter& painter, const QPointF& foot) {
  draw_arrow(painter, QLineF(foot, foot + QPointF(12, 0)), palette::chalk(), 0.45);
  draw_text(painter, QRectF(foot.x() + 13, foot.y() - 1.6, 8, 3), tr("nap"), kNapText);
}

void draw_blade(QPainter& painter, const QPointF& tip) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(palette::blade());
  painter.drawPolygon(QPolygonF({tip, tip + QPointF(-1.2, -2.2), tip + QPointF(1.2, -2.2)}));
}

}  // namespace foldyard
