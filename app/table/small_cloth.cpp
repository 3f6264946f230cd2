#include "table/small_cloth.h"

#include <QPainter>

#include <algorithm>

#include "drawing/hatch.h"
#include "drawing/palette.h"
#include "table/board_colours.h"

namespace foldyard {
namespace {

QRectF placed(const Rect& rect, const QPointF& near_left, double scale) {
  return QRectF(QPointF(near_left.x() + rect.across.from.in_mm() * scale, near_left.y() - rect.along.to.in_mm() * scale),
                QPointF(near_left.x() + rect.across.to.in_mm() * scale, near_left.y() - rect.along.from.in_mm() * scale));
}

void paint_patch(QPainter& painter, const QRectF& box, const Patch& patch, const QColor& chalk) {
  if (patch.is_rest()) {
    painter.fillRect(box, QColor(0, 0, 0, 70));
    return;
  }
  const PanelLook look = panel_look(patch.panel);
  painter.fillRect(box.adjusted(0.5, 0.5, -0.5, -0.5), look.fill);
  draw_hatch(painter, box.adjusted(1, 1, -1, -1), look.hatch, 4, look.line, 0.8);
  painter.setPen(QPen(chalk, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(box);
}

}  // namespace

void paint_small_cloth(QPainter& painter, const QRectF& box, const LaidCloth& cloth, double pixels_per_mm) {
  const double across = cloth.folded().across.to.in_mm(), along = cloth.folded().along.to.in_mm();
  const double scale = std::min({pixels_per_mm, box.width() / across, box.height() / along});
  const QPointF near_left(box.center().x() - across * scale / 2, box.bottom());
  const QColor colour = cloth_colour(cloth.fabric().colour);
  painter.fillRect(placed(cloth.folded(), near_left, scale), colour);
  for (const Patch& patch : cloth.patches) paint_patch(painter, placed(patch.folded, near_left, scale), patch, QColor(Qt::black));
  painter.setPen(QPen(board_colours(false).ink, 3, Qt::SolidLine, Qt::RoundCap));
  for (const FoldEdge& edge : cloth.map.across.edges()) {
    const double x = near_left.x() + edge.at.in_mm() * scale;
    painter.drawLine(QLineF(x, near_left.y(), x, near_left.y() - along * scale));
  }
  for (const FoldEdge& edge : cloth.map.along.edges()) {
    const double y = near_left.y() - edge.at.in_mm() * scale;
    painter.drawLine(QLineF(near_left.x(), y, near_left.x() + across * scale, y));
  }
}

}  // namespace foldyard
