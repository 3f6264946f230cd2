#include "drawing/template_tile.h"

#include <algorithm>

#include "drawing/strokes.h"
#include "drawing/text.h"
#include "language/tr.h"

namespace foldyard {

namespace {

const TextStyle kName{12, true, true, palette::ink()};
const TextStyle kBody{9, false, false, palette::ink()};
const TextStyle kMark{7.5, true, false, palette::chalk()};
const TextStyle kSmall{kSmallestPoints, false, false, palette::soft_ink()};

QPen pen_of(const QColor& colour, double width, const QVector<qreal>& dashes = {}) {
  QPen pen(colour, width, Qt::SolidLine, Qt::FlatCap);
  if (!dashes.isEmpty()) pen.setDashPattern(dashes);
  return pen;
}

void draw_inside(QPainter& painter, const QLineF& line, const QRectF& tile, const QPen& pen) {
  const QLineF seen = inside(line, tile);
  if (seen.isNull()) return;
  painter.setPen(pen);
  painter.drawLine(seen);
}

std::vector<QLineF> sides_of(const QRectF& rect) {
  return {{rect.topLeft(), rect.topRight()},
          {rect.bottomLeft(), rect.bottomRight()},
          {rect.topLeft(), rect.bottomLeft()},
          {rect.topRight(), rect.bottomRight()}};
}

// The frame to cut along, and where the next pages' frames come to lie.
void draw_frame(QPainter& painter, const TemplateData& data, const QRectF& tile) {
  const QPen frame = pen_of(palette::soft_ink(), 0.12);
  const QPen next = pen_of(palette::soft_ink(), 0.12, {18, 12});
  for (const QLineF& side : sides_of(tile)) draw_inside(painter, side, tile, frame);
  const double right = tile.right() - kOverlap, bottom = tile.bottom() - kOverlap;
  if (right + kOverlap < data.grid.whole().right())
    draw_inside(painter, {right, tile.top(), right, tile.bottom()}, tile, next);
  if (bottom + kOverlap < data.grid.whole().bottom())
    draw_inside(painter, {tile.left(), bottom, tile.right(), bottom}, tile, next);
}

// From one end of the panel to the other, as deep inside an edge as a turning.
void draw_turning(QPainter& painter, const Turning& turning, const QLineF& line,
                  const QRectF& tile) {
  if (turning.depth.is_zero()) return;
  draw_inside(painter, line, tile,
              turning.is_seam ? pen_of(palette::ink(), 0.25, {14, 8})
                              : pen_of(palette::ink(), 0.25, {3, 6}));
}

void draw_turnings(QPainter& painter, const TemplateData& data, const QRectF& tile) {
  const double wide = data.across.in_mm(), high = data.along.in_mm();
  const Turnings& lie = data.turnings;
  const auto upright = [&](double x) { return QLineF(data.at(x, 0), data.at(x, high)); };
  const auto level = [&](double y) { return QLineF(data.at(0, y), data.at(wide, y)); };
  draw_turning(painter, lie.left, upright(lie.left.depth.in_mm()), tile);
  draw_turning(painter, lie.right, upright(wide - lie.right.depth.in_mm()), tile);
  draw_turning(painter, lie.far, level(lie.far.depth.in_mm()), tile);
  draw_turning(painter, lie.near, level(high - lie.near.depth.in_mm()), tile);
}

void draw_cross(QPainter& painter, const MatchMark& mark) {
  painter.setPen(pen_of(palette::ink(), 0.2));
  painter.drawLine(QLineF(mark.at - QPointF(kMarkArm, 0), mark.at + QPointF(kMarkArm, 0)));
  painter.drawLine(QLineF(mark.at - QPointF(0, kMarkArm), mark.at + QPointF(0, kMarkArm)));
  const QRectF name = mark.beside ? QRectF(mark.at.x() - 4.5, mark.at.y() + kMarkArm, 9, 4)
                                  : QRectF(mark.at.x() + kMarkArm + 0.8, mark.at.y() - 2, 9, 4);
  draw_text(painter, name, mark.name, kMark,
            mark.beside ? Qt::AlignCenter : Qt::AlignLeft | Qt::AlignVCenter);
}

void draw_marks(QPainter& painter, const TemplateData& data, const QRectF& tile) {
  const QRectF room = tile.adjusted(kMarkArm, kMarkArm, -kMarkArm, -kMarkArm);
  for (const MatchMark& mark : match_marks(data.grid))
    if (room.contains(mark.at)) draw_cross(painter, mark);
}

// Beside the words, along the roll; both heads, as without nap the cloth has
// no up and down, are left to the words.
void draw_grain(QPainter& painter, const TemplateData& data, const QRectF& seen, double below) {
  const double room = data.grid.turned ? seen.width() : seen.bottom() - below;
  const double length = std::min(60.0, room - 12);
  if (length < 15) return;
  const QPointF middle(seen.center().x(), data.grid.turned ? below + 8 : below + 6 + length / 2);
  if (middle.y() > seen.bottom() - 4) return;
  const QPointF half = data.grid.turned ? QPointF(length / 2, 0) : QPointF(0, -length / 2);
  draw_arrow(painter, QLineF(middle - half, middle + half), palette::chalk(), 0.5);
  const QPointF beside = data.grid.turned ? QPointF(-8, 1.5) : QPointF(2, -2);
  draw_text(painter, QRectF(middle + beside, QSizeF(16, 4)), tr("grain"), kSmall);
}

// What stands in the middle of the panel's part on this tile.
void draw_words(QPainter& painter, const TemplateData& data, const QRectF& tile,
                const QStringList& words) {
  const QRectF seen = tile.intersected(data.grid.panel_rect())
                          .adjusted(kOverlap + 2, kOverlap + 2, -kOverlap - 2, -kOverlap - 2);
  if (seen.width() < 24 || seen.height() < 16) return;
  double y = seen.top() + std::max(0.0, seen.height() / 2 - 45);
  for (qsizetype i = 0; i < words.size(); ++i) {
    const TextStyle& style = i == 0 ? kName : kBody;
    if (y + line_height(style) > seen.bottom()) return;
    draw_text(painter, QRectF(seen.left(), y, seen.width(), line_height(style)), words[i], style,
              Qt::AlignCenter);
    y += line_height(style) + 0.5;
  }
  draw_grain(painter, data, seen, y);
}

}  // namespace

QLineF inside(const QLineF& line, const QRectF& box) {
  const QRectF both = QRectF(line.p1(), line.p2()).normalized();
  const double left = std::max(both.left(), box.left()), right = std::min(both.right(), box.right());
  const double top = std::max(both.top(), box.top()), bottom = std::min(both.bottom(), box.bottom());
  return left > right || top > bottom ? QLineF() : QLineF(left, top, right, bottom);
}

void draw_tile(QPainter& painter, const TemplateData& data, int row, int column,
               const QStringList& words) {
  const QRectF tile = data.grid.tile_rect(row, column);
  painter.save();
  painter.translate(-tile.topLeft());
  painter.setBrush(Qt::NoBrush);
  draw_frame(painter, data, tile);
  for (const QLineF& side : sides_of(data.grid.panel_rect()))
    draw_inside(painter, side, tile, pen_of(palette::ink(), 0.35));
  draw_turnings(painter, data, tile);
  draw_marks(painter, data, tile);
  draw_words(painter, data, tile, words);
  painter.restore();
}

}  // namespace foldyard
