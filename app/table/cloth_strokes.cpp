#include "table/cloth_strokes.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

#include "drawing/hatch.h"
#include "drawing/palette.h"
#include "table/board_colours.h"

namespace foldyard {
namespace {

constexpr double kLeastLabel = 26;  // pixels of a side below which no words stand
constexpr double kTag = 9;

QColor faint(QColor colour, int alpha) {
  colour.setAlpha(alpha);
  return colour;
}

// Panels stand out from the cloth away from the chalk, so that words read better.
QColor panel_tint(const ClothLook& look, bool lit) {
  const QColor away = look.chalk.lightness() < 128 ? QColor(Qt::white) : QColor(Qt::black);
  return faint(away, lit ? 120 : 52);
}

// The words run upwards where the box is narrow and tall.
bool runs_upwards(const QRectF& box, double text_width) {
  return text_width > box.width() - 8 && box.height() > box.width();
}

void paint_lines(QPainter& painter, const QRectF& box, const QStringList& lines, const QColor& ink) {
  const QFontMetricsF metrics(painter.font());
  const double height = metrics.height() * static_cast<double>(lines.size());
  double y = box.center().y() - height / 2;
  painter.setPen(ink);
  for (const QString& line : lines) {
    painter.drawText(QRectF(box.left(), y, box.width(), metrics.height()), Qt::AlignCenter,
                     metrics.elidedText(line, Qt::ElideRight, box.width()));
    y += metrics.height();
  }
}

double widest(const QFontMetricsF& metrics, const QStringList& lines) {
  double width = 0;
  for (const QString& line : lines) width = std::max(width, metrics.horizontalAdvance(line));
  return width;
}

// As many of the lines as the box is high for.
void paint_words(QPainter& painter, QRectF box, QStringList lines, const QColor& ink) {
  if (std::min(box.width(), box.height()) < kLeastLabel / 2 || std::max(box.width(), box.height()) < kLeastLabel)
    return;
  lines.removeAll(QString());
  const QFontMetricsF metrics(painter.font());
  const bool upwards = runs_upwards(box, widest(metrics, lines));
  painter.save();
  if (upwards) {
    painter.translate(box.center());
    painter.rotate(-90);
    box = QRectF(-box.height() / 2, -box.width() / 2, box.height(), box.width());
  }
  while (!lines.isEmpty() && metrics.height() * static_cast<double>(lines.size()) > box.height()) lines.removeLast();
  if (!lines.isEmpty()) paint_lines(painter, box.adjusted(3, 0, -3, 0), lines, ink);
  painter.restore();
}

// A sewn-in label at the corner: the panel's own colour and hatch.
void paint_label(QPainter& painter, const QRectF& box, int panel) {
  if (box.width() < 2.5 * kTag || box.height() < 2.5 * kTag) return;
  const PanelLook look = panel_look(panel);
  const double height = std::clamp(std::min(box.width(), box.height()) / 7, kTag, 2 * kTag);
  const QRectF label(box.left() + 5, box.top() + 5, height * 1.7, height);
  painter.setPen(QPen(QColor(Qt::black), 1));
  painter.setBrush(look.fill);
  painter.drawRect(label);
  draw_hatch(painter, label.adjusted(1, 1, -1, -1), look.hatch, 3, look.line, 1);
}

}  // namespace

void paint_weave(QPainter& painter, const QRectF& box, const ClothLook& look) {
  painter.fillRect(box, look.cloth);
  if (box.width() < 60) return;
  const QColor thread = faint(look.chalk, 15);
  draw_hatch(painter, box, Hatch::level, 3, thread, 1);
  draw_hatch(painter, box, Hatch::upright, 3, thread, 1);
}

void paint_panel(QPainter& painter, const QRectF& box, const ClothLook& look, int panel,
                 const PanelWords& words, bool lit) {
  const double least = std::min(box.width(), box.height());
  painter.fillRect(box, panel_tint(look, lit));
  if (least < 4) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look.chalk, lit ? 3 : 1.4, Qt::SolidLine, Qt::RoundCap));
  painter.drawRect(box.adjusted(1.5, 1.5, -1.5, -1.5));
  paint_label(painter, box, panel);
  paint_words(painter, box.adjusted(4, 4, -4, -4), {words.name, words.detail}, look.chalk);
}

void paint_rest(QPainter& painter, const QRectF& box, const ClothLook& look, const QString& size,
                bool remnant, bool lit) {
  painter.fillRect(box, QColor(0, 0, 0, remnant ? 18 : 60));
  draw_hatch(painter, box, Hatch::falling, remnant ? 14 : 6, faint(look.chalk, lit ? 220 : 120), 1);
  const QFontMetricsF metrics(painter.font());
  const QSizeF room(metrics.horizontalAdvance(size) + 14, metrics.height() + 6);
  const bool upwards = room.width() > box.width() && box.height() > box.width();
  const QSizeF needed = upwards ? room.transposed() : room;
  if (needed.width() > box.width() || needed.height() > box.height()) return;
  const QRectF tag(box.center() - QPointF(needed.width() / 2, needed.height() / 2), needed);
  painter.setPen(QPen(board_colours(look.dark).on_tag, 1, remnant ? Qt::SolidLine : Qt::DotLine));
  painter.setBrush(board_colours(look.dark).tag);
  painter.drawRoundedRect(tag, 3, 3);
  paint_words(painter, tag, {size}, board_colours(look.dark).on_tag);
}

void paint_selvedge(QPainter& painter, const QRectF& band, const ClothLook& look) {
  painter.fillRect(band, faint(look.chalk, 60));
  draw_hatch(painter, band, band.width() > band.height() ? Hatch::upright : Hatch::level, 3, faint(look.chalk, 150), 1);
}

void paint_fold_edge(QPainter& painter, const QLineF& edge, const QPointF& inward, const ClothLook& look) {
  for (int i = 1; i <= 5; ++i) {
    painter.setPen(QPen(QColor(0, 0, 0, 26), 2 * i, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(edge.translated(-inward * 1.5));
  }
  const QPointF a = inward * 1.5, b = -inward * 2.5;
  QPainterPath path;
  path.moveTo(edge.p1() + a);
  path.lineTo(edge.p2() + a);
  path.quadTo(edge.p2() + (a + b) / 2 + (edge.p2() - edge.p1()) / std::max(1.0, edge.length()) * 3, edge.p2() + b);
  path.lineTo(edge.p1() + b);
  path.quadTo(edge.p1() + (a + b) / 2 - (edge.p2() - edge.p1()) / std::max(1.0, edge.length()) * 3, edge.p1() + a);
  painter.setPen(QPen(look.chalk, 1.3));
  painter.setBrush(look.cloth);
  painter.drawPath(path);
}

void paint_fold_line(QPainter& painter, const QLineF& line, const ClothLook& look, bool held) {
  painter.setPen(QPen(QColor(0, 0, 0, 90), held ? 6 : 4));
  painter.drawLine(line);
  QPen chalk(held ? board_colours(false).tape : look.chalk, held ? 3 : 2, Qt::CustomDashLine);
  chalk.setDashPattern({7, 4});
  painter.setPen(chalk);
  painter.drawLine(line);
}

void paint_nap(QPainter& painter, const QLineF& arrow, const QColor& ink) {
  painter.setPen(QPen(ink, 2, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(arrow);
  QLineF side = QLineF::fromPolar(8, arrow.angle() + 150).translated(arrow.p2());
  painter.drawLine(side);
  side = QLineF::fromPolar(8, arrow.angle() - 150).translated(arrow.p2());
  painter.drawLine(side);
}

}  // namespace foldyard
