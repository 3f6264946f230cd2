#include "drawing/pattern_picture.h"

#include <QPainter>
#include <algorithm>

#include "drawing/flat_picture.h"
#include "drawing/folded_picture.h"
#include "drawing/section_picture.h"
#include "drawing/strokes.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "language/tr.h"

namespace foldyard {

namespace {

constexpr double kCaption = 5.2;
constexpr double kBetween = 4;
const TextStyle kHeading{8, true, true, palette::chalk()};
const TextStyle kSmall{kSmallestPoints, false, false, palette::soft_ink()};

struct Sizes {
  QMarginsF flat, folded;
  double flat_width = 0, width = 0, height = 0;
};

Sizes sizes_at(const PatternData& data, const Scale& scale) {
  Sizes sizes{flat_margins(data, scale), folded_margins(data, scale), 0, 0, 0};
  const auto across = [](const QMarginsF& m) { return m.left() + m.right(); };
  const auto upright = [](const QMarginsF& m) { return m.top() + m.bottom(); };
  sizes.flat_width = across(sizes.flat) + scale.mm(data.fabric.width);
  sizes.width =
      sizes.flat_width + kBetween + across(sizes.folded) + scale.mm(data.pattern.folded_across);
  sizes.height = std::max(upright(sizes.flat) + scale.mm(data.pattern.length),
                          upright(sizes.folded) + scale.mm(data.pattern.folded_along));
  return sizes;
}

double sections_height(const PatternData& data) {
  const double across = kCaption + section_height(data.map.across);
  const bool folded = data.map.along.legs().size() > 1;
  return across + (folded ? kCaption + section_height(data.map.along) : 0);
}

Scale next_scale(const Scale& scale, bool round) {
  return round ? round_scale(scale.denominator * 1.01) : free_scale(scale.denominator * 1.04);
}

void caption(QPainter& painter, const QRectF& box, const QString& title, const QString& rest) {
  const double width = std::min(box.width(), text_width(title, kHeading) + 0.3);
  draw_text(painter, QRectF(box.left(), box.top(), width, 4), title, kHeading);
  draw_text(painter,
            QRectF(box.left() + width + 2, box.top(), std::max(0.0, box.width() - width - 2), 4.3),
            rest, kSmall);
}

double draw_one_section(QPainter& painter, const QRectF& area, const PatternData& data,
                        const Scale& scale, bool round, Direction direction) {
  const bool across = direction == Direction::along;
  const AxisMap& axis = across ? data.map.across : data.map.along;
  const QString where = across ? tr("Section across") : tr("Section along");
  QStringList words{across ? tr("seen from the near end") : tr("seen from the right edge")};
  if (round) words << tr("scale %1 across the page").arg(scale.words());
  words << tr("plies drawn thicker than they are; heavy line: face; ▼ blade");
  caption(painter, area, where, words.join(QStringLiteral("; ")));
  draw_section(painter,
               QRectF(area.left(), area.top() + kCaption, area.width(), section_height(axis)),
               scale, data, axis, direction);
  return kCaption + section_height(axis);
}

}  // namespace

PatternLayout lay_out_pattern(const PatternData& data, const QSizeF& room, bool round) {
  PatternLayout layout;
  layout.round = round;
  layout.section = section_scale(data, data.map.across, room.width(), round);
  layout.section_along = section_scale(data, data.map.along, room.width(), round);
  const double below = sections_height(data) + 2;
  for (layout.scale = next_scale({round ? 4.9 : 1.0}, round); layout.scale.denominator < 1e5;
       layout.scale = next_scale(layout.scale, round)) {
    const Sizes sizes = sizes_at(data, layout.scale);
    layout.clothes = kCaption + sizes.height;
    layout.height = layout.clothes + below;
    if (sizes.width <= room.width() && layout.height <= room.height()) break;
  }
  return layout;
}

void draw_pattern(QPainter& painter, const QPointF& top_left, double width,
                  const PatternLayout& layout, const PatternData& data) {
  const Sizes sizes = sizes_at(data, layout.scale);
  const double spare = std::max(0.0, width - sizes.width) / 3;
  const double left = top_left.x(), beside = left + sizes.flat_width + kBetween + 2 * spare;
  const double bottom = top_left.y() + layout.clothes;
  const Unit unit = data.job.unit;
  caption(painter, QRectF(left, top_left.y(), beside - left - 3, 4), tr("Flat"),
          tr("%1, face up").arg(size_words(data.fabric.width, data.pattern.length, unit)));
  caption(painter, QRectF(beside - spare, top_left.y(), left + width - beside + spare, 4),
          tr("Folded"),
          tr("%1, %2 up; %3", "size, face or back, unit")
              .arg(size_words(data.pattern.folded_across, data.pattern.folded_along, unit), top_face_name(data.map),
                   unit_words(unit)));
  draw_flat(painter,
            {{left + spare / 2 + sizes.flat.left(), bottom - sizes.flat.bottom()}, layout.scale},
            data);
  draw_folded(painter,
              {{beside + sizes.folded.left(), bottom - sizes.folded.bottom()}, layout.scale}, data);
  double y = bottom + 2;
  y += draw_one_section(painter, QRectF(left, y, width, 1), data, layout.section, layout.round,
                        Direction::along);
  if (data.map.along.legs().size() > 1)
    draw_one_section(painter, QRectF(left, y, width, 1), data, layout.section_along, layout.round,
                     Direction::across);
}

}  // namespace foldyard
