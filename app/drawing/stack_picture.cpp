#include "drawing/stack_picture.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

#include "drawing/palette.h"
#include "drawing/words.h"
#include "fold/plies.h"
#include "job/roll_of.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

constexpr double kCloth = 0.5;  // share of the width; the rest is for words
constexpr int kMostStretch = 40;

double units(Length length) { return static_cast<double>(length.units()); }

double foot_height(const QPainter& painter) { return QFontMetricsF(painter.font()).height() + 4; }

// Units of cloth to the picture's own, across.
double across_scale(const StackData& stack, double width) { return width * kCloth / std::max(units(stack.width), 1.0); }

void draw_band(QPainter& painter, const QRectF& box, const StackBand& band, const QString& words, double right) {
  painter.setPen(QPen(palette::ink(), 0));
  painter.setBrush(cloth_ground(band.colour));
  painter.drawRect(box);
  painter.setPen(QPen(palette::soft_ink(), 0));
  for (int ply = 1; ply < band.plies; ++ply) {
    const double y = box.top() + box.height() * ply / band.plies;
    if (box.height() / band.plies > 2.5) painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
  }
  painter.setPen(palette::ink());
  const QRectF place(box.right() + 8, box.top() - 20, right - box.right() - 8, box.height() + 40);
  const QString shown = QFontMetricsF(painter.font()).elidedText(words, Qt::ElideRight, place.width());
  painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter, shown);
}

}  // namespace

StackData stack_data(const BatchAnswer& answer, int at) {
  const BatchLay& lay = answer.plan.lays[ix(at)];
  StackData stack;
  stack.limit = answer.job.cutter.height;
  for (auto length = lay.lengths.rbegin(); length != lay.lengths.rend(); ++length) {
    const Roll& roll = roll_of(answer.job, plan_of(answer.plan, *length));
    const Pattern& pattern = pattern_of(answer.plan, *length);
    const QString name = QString::fromStdString(roll.name);
    if (stack.bands.empty() || stack.bands.back().roll != name) stack.bands.push_back({name, roll.fabric.colour, 0, 0, {}});
    StackBand& band = stack.bands.back();
    ++band.lengths;
    band.plies += pattern.plies;
    band.height += roll.fabric.thickness * pattern.plies;
    stack.height += roll.fabric.thickness * pattern.plies;
    stack.width = pattern.folded_across;
  }
  return stack;
}

QStringList stack_band_words(const StackData& stack) {
  QStringList words;
  for (const StackBand& band : stack.bands)
    words << QStringLiteral("%1 × %2, %3, %4")
                 .arg(band.lengths)
                 .arg(band.roll, tr("%n ply(ies)", nullptr, band.plies), length_words(band.height, Unit::mm));
  return words;
}

int stack_stretch(const StackData& stack, const QSizeF& size) {
  const double across = across_scale(stack, size.width());
  const double most = size.height() / std::max(units(std::max(stack.limit, stack.height)) * across, 1e-9);
  return std::clamp(static_cast<int>(std::floor(most + 1e-9)), 1, kMostStretch);
}

void draw_stack(QPainter& painter, const QRectF& area, const StackData& stack) {
  const double foot = foot_height(painter);
  const QSizeF room(area.width(), area.height() - foot - 6);
  const double across = across_scale(stack, area.width());
  const int stretch = stack_stretch(stack, room);
  const double table = area.bottom() - foot;
  double top = table - units(stack.height) * across * stretch;
  const QStringList words = stack_band_words(stack);
  for (std::size_t i = 0; i < stack.bands.size(); ++i) {
    const double height = units(stack.bands[i].height) * across * stretch;
    draw_band(painter, QRectF(area.left(), top, units(stack.width) * across, height), stack.bands[i], words[static_cast<int>(i)], area.right());
    top += height;
  }
  const double limit = table - units(stack.limit) * across * stretch;
  painter.setPen(QPen(palette::blade(), 1.5, Qt::DashLine));
  painter.drawLine(QPointF(area.left(), limit), QPointF(area.left() + units(stack.width) * across, limit));
  painter.setPen(QPen(palette::ink(), 1.5));
  painter.drawLine(QPointF(area.left(), table), QPointF(area.right(), table));
  const QString said = tr("%1 wide; %2 of %3 under the cutter (dashed); heights drawn %4 times")
                           .arg(length_words(stack.width, Unit::cm), length_words(stack.height, Unit::mm), length_words(stack.limit, Unit::mm)).arg(stretch);
  painter.drawText(QRectF(area.left(), table + 2, area.width(), foot), Qt::AlignLeft | Qt::AlignVCenter,
                   QFontMetricsF(painter.font()).elidedText(said, Qt::ElideRight, area.width()));
}

}  // namespace foldyard
