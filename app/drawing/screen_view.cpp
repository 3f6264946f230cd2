#include "drawing/screen_view.h"

#include <QPaintDevice>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "drawing/flat_picture.h"
#include "drawing/palette.h"
#include "drawing/pattern_picture.h"
#include "drawing/roll_picture.h"
#include "drawing/strokes.h"

namespace foldyard {

namespace {

// How many of the painter's units are a millimetre on its device.
double units_per_mm(const QPainter& painter) {
  const QPaintDevice* device = painter.device();
  const double dots =
      device ? device->logicalDpiX() * device->devicePixelRatioF() / 25.4 : 96 / 25.4;
  const QTransform shown = painter.deviceTransform();
  const double scale = std::hypot(shown.m11(), shown.m12());
  return scale > 0 ? dots / scale : 1;
}

constexpr double kMargin = 3;

// Paper on the area; then calls draw(room) with the painter in millimetres.
template <class Draw>
void on_paper(QPainter& painter, const QRectF& area, double margin, const Draw& draw) {
  if (area.isEmpty()) return;
  painter.save();
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.fillRect(area, palette::paper());
  const double unit = units_per_mm(painter);
  painter.translate(area.topLeft());
  painter.scale(unit, unit);
  draw(QRectF(margin, margin, area.width() / unit - 2 * margin, area.height() / unit - 2 * margin));
  painter.restore();
}

void draw_small(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(cloth_ground(data.fabric.colour));
  painter.drawRect(frame.rect(data.folded()));
  for (const CutNode& node : data.pattern.tree.nodes)
    if (node.kind == NodeKind::take) draw_panel_ground(painter, frame.rect(node.rect), node.panel);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(outline_pen(0.3));
  painter.drawRect(frame.rect(data.folded()));
  for (const FoldEdge& edge : data.map.across.edges())
    draw_fold_edge(
        painter, QLineF(frame.at(edge.at, Length()), frame.at(edge.at, data.pattern.folded_along)));
  for (const FoldEdge& edge : data.map.along.edges())
    draw_fold_edge(painter, QLineF(frame.at(Length(), edge.at),
                                   frame.at(data.pattern.folded_across, edge.at)));
}

}  // namespace

void paint_pattern(QPainter& painter, const Job& job, const Plan& plan, int pattern,
                   const QRectF& area) {
  on_paper(painter, area, kMargin, [&](const QRectF& room) {
    const PatternData data = pattern_data(job, plan, pattern);
    const PatternLayout layout = lay_out_pattern(data, room.size(), false);
    if (layout.height <= room.height())
      draw_pattern(painter, room.topLeft(), room.width(), layout, data);
  });
}

void paint_roll(QPainter& painter, const Job& job, const Plan& plan, const QRectF& area) {
  on_paper(painter, area, kMargin, [&](const QRectF& room) {
    if (room.isEmpty()) return;
    const RollLayout layout = lay_out_roll(job, plan, room.size());
    if (layout.height <= room.height()) draw_roll(painter, room.topLeft(), layout, job, plan);
  });
}

void paint_thumbnail(QPainter& painter, const Job& job, const Plan& plan, const QRectF& area) {
  on_paper(painter, area, 1.2, [&](const QRectF& room) {
    if (plan.patterns.empty() || room.isEmpty()) return;
    const PatternData data = pattern_data(job, plan, 0);
    const double needed = std::max(data.pattern.folded_across.in_mm() / room.width(),
                                   data.pattern.folded_along.in_mm() / room.height());
    const Scale scale = free_scale(needed);
    const QPointF corner(room.center().x() - scale.mm(data.pattern.folded_across) / 2,
                         room.center().y() + scale.mm(data.pattern.folded_along) / 2);
    draw_small(painter, {corner, scale}, data);
  });
}

}  // namespace foldyard
