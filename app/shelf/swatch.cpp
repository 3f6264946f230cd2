#include "shelf/swatch.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>
#include <QPalette>

#include <algorithm>
#include <cmath>

#include "drawing/hatch.h"
#include "table/board_colours.h"

namespace foldyard {
namespace {

constexpr double kTooth = 5;     // pixels from one to the next
constexpr double kThreads = 4;   // pixels apart
constexpr int kThreadAlpha = 46;
constexpr int kDragSide = 46;
constexpr int kLongestTag = 220;

QPainterPath pinked(const QRectF& box) {
  const int teeth = std::max(2, static_cast<int>(std::lround(box.width() / kTooth)));
  const double step = box.width() / teeth;
  QPainterPath path(box.topLeft());
  path.lineTo(box.topRight());
  path.lineTo(box.right(), box.bottom() - step / 2);
  for (int i = 0; i < teeth; ++i) {
    path.lineTo(box.right() - (i + 0.5) * step, box.bottom());
    path.lineTo(box.right() - (i + 1) * step, box.bottom() - step / 2);
  }
  path.closeSubpath();
  return path;
}

}  // namespace

void paint_swatch(QPainter& painter, const QRectF& box, const std::string& colour, const QColor& outline) {
  const QColor cloth = cloth_colour(colour);
  QColor thread = chalk_on(cloth);
  thread.setAlpha(kThreadAlpha);
  const QPainterPath shape = pinked(box);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillPath(shape, cloth);
  painter.setClipPath(shape, Qt::IntersectClip);
  draw_hatch(painter, box, Hatch::rising, kThreads, thread, 1);
  draw_hatch(painter, box, Hatch::falling, kThreads, thread, 1);
  painter.restore();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(outline, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(shape);
  painter.restore();
}

QPixmap drag_picture(const Roll& roll, const QPalette& palette, const QFont& font, double pixel_ratio) {
  const QFontMetrics metrics(font);
  const QString name = metrics.elidedText(QString::fromStdString(roll.name), Qt::ElideRight, kLongestTag);
  const QSize size(kDragSide + metrics.horizontalAdvance(name) + 26, kDragSide + 10);
  QPixmap picture(size * pixel_ratio);
  picture.setDevicePixelRatio(pixel_ratio);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(font);
  painter.setPen(QPen(palette.color(QPalette::Text), 1));
  painter.setBrush(palette.color(QPalette::Base));
  painter.drawRoundedRect(QRectF(0.5, 0.5, size.width() - 1, size.height() - 1), 4, 4);
  paint_swatch(painter, QRectF(5, 5, kDragSide, kDragSide), roll.fabric.colour, palette.color(QPalette::Text));
  painter.setPen(palette.color(QPalette::Text));
  painter.drawText(QRect(kDragSide + 14, 0, size.width() - kDragSide - 14, size.height()), Qt::AlignVCenter, name);
  return picture;
}

}  // namespace foldyard
