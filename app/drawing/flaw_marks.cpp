#include "drawing/flaw_marks.h"

#include <QPainter>
#include <algorithm>

#include "drawing/hatch.h"
#include "drawing/palette.h"
#include "drawing/strokes.h"
#include "drawing/text.h"

namespace foldyard {

namespace {

const TextStyle kWords{kSmallestPoints, true, false, palette::ink()};

QRectF at_least(const QRectF& rect) {
  const double x = std::max(0.0, kLeastFlaw - rect.width()) / 2;
  const double y = std::max(0.0, kLeastFlaw - rect.height()) / 2;
  return rect.adjusted(-x, -y, x, y);
}

// Right of the mark where there is room, else left of it, else over it.
QRectF words_beside(const QRectF& mark, double width, const QRectF& room) {
  const double height = 3.2;
  const double top = std::clamp(mark.center().y() - height / 2, room.top(),
                                std::max(room.top(), room.bottom() - height));
  if (mark.right() + 0.4 + width <= room.right()) return {mark.right() + 0.4, top, width, height};
  if (mark.left() - 0.4 - width >= room.left()) return {mark.left() - 0.4 - width, top, width, height};
  const double shown = std::min(width, room.width());
  return {std::clamp(mark.center().x() - shown / 2, room.left(), room.right() - shown), top, shown, height};
}

std::vector<Span> folded_spans(const AxisMap& axis, Span flat) {
  std::vector<Span> spans;
  for (const Leg& leg : axis.legs()) {
    const Span piece = intersection(leg.flat, flat);
    if (piece.is_empty()) continue;
    const Length from = leg.mirrored ? leg.flat.to - piece.to : piece.from - leg.flat.from;
    spans.push_back({leg.folded.from + from, leg.folded.from + from + piece.size()});
  }
  return spans;
}

}  // namespace

void draw_flaw(QPainter& painter, const QRectF& rect, const QString& words, const QRectF& room) {
  const QRectF mark = at_least(rect);
  painter.setPen(Qt::NoPen);
  painter.setBrush(palette::paper());
  painter.drawRect(mark);
  draw_hatch(painter, mark, Hatch::crossed, 0.55, palette::ink(), 0.16);
  painter.setPen(outline_pen(0.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(mark);
  if (words.isEmpty()) return;
  const QRectF box = words_beside(mark, text_width(words, kWords) + 1.2, room);
  painter.setPen(Qt::NoPen);
  painter.setBrush(palette::paper());
  painter.drawRect(box);
  draw_text(painter, box.adjusted(0.5, 0, 0, 0), words, kWords);
}

void draw_lost(QPainter& painter, const QRectF& panel) {
  painter.setPen(QPen(palette::ink(), 0.4, Qt::DashLine));
  painter.drawLine(panel.topLeft(), panel.bottomRight());
  painter.drawLine(panel.bottomLeft(), panel.topRight());
}

std::vector<Rect> folded_places(const FoldMap& map, const Rect& flat) {
  std::vector<Rect> places;
  for (const Span across : folded_spans(map.across, flat.across))
    for (const Span along : folded_spans(map.along, flat.along)) places.push_back({across, along});
  return places;
}

}  // namespace foldyard
