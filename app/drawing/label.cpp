#include "drawing/label.h"

#include <QPainter>
#include <algorithm>

#include "drawing/palette.h"
#include "drawing/text.h"

namespace foldyard {

namespace {

constexpr double kPad = 0.5;

struct Block {
  QStringList lines;
  int bold_lines = 0;
  double points = kSmallestPoints;

  TextStyle style(int line) const {
    return {line < bold_lines ? points : kSmallestPoints, line < bold_lines, false, palette::ink()};
  }
  QSizeF size() const {
    double width = 0, height = 0;
    for (int i = 0; i < lines.size(); ++i) {
      width = std::max(width, text_width(lines[i], style(i)));
      height += line_height(style(i));
    }
    return {width + 2 * kPad, height + kPad / 2};
  }
};

Block block_of(QStringList name, const QStringList& detail, const Label& label, double points) {
  Block block{std::move(name), 0, points};
  block.bold_lines = label.bold ? static_cast<int>(block.lines.size()) : 0;
  block.lines << detail;
  return block;
}

// A name broken inside a word is worse than an elided one.
bool breaks_words(const QStringList& lines, const QString& name) {
  const QLatin1Char space(' ');
  return lines.join(space) != name.split(space, Qt::SkipEmptyParts).join(space);
}

bool fits(const Block& block, const QSizeF& room) {
  const QSizeF size = block.size();
  return !block.lines.isEmpty() && size.width() <= room.width() && size.height() <= room.height();
}

QStringList lines_of(const QString& detail, double width) {
  return wrapped(detail, {kSmallestPoints, false, false, {}}, width - 2 * kPad);
}

bool find_whole(const Label& label, const QSizeF& room, Block& found) {
  const QStringList detail = lines_of(label.detail, room.width());
  for (double points : {label.points, kSmallestPoints}) {
    const TextStyle style{points, label.bold, false, {}};
    const QStringList name = wrapped(label.name, style, room.width() - 2 * kPad);
    found = block_of(name, detail, label, points);
    if (!breaks_words(name, label.name) && !breaks_words(detail, label.detail) && fits(found, room))
      return true;
  }
  return false;
}

bool find_short(const Label& label, const QSizeF& room, Block& found) {
  const TextStyle style{kSmallestPoints, label.bold, false, {}};
  const QString name = elided(label.name, style, room.width() - 2 * kPad);
  if (name.size() < std::min<qsizetype>(6, label.name.size())) return false;
  for (const QStringList& detail : {lines_of(label.detail, room.width()), QStringList()}) {
    if (!detail.isEmpty() && breaks_words(detail, label.detail)) continue;
    found = block_of({name}, detail, label, kSmallestPoints);
    if (fits(found, room)) return true;
  }
  return false;
}

bool find_code(const Label& label, const QSizeF& room, Block& found) {
  found = block_of({label.code}, {}, label, kSmallestPoints);
  return !label.code.isEmpty() && fits(found, room);
}

void draw_block(QPainter& painter, const QRectF& room, const Block& block) {
  const QSizeF size = block.size();
  const QRectF ground(room.center() - QPointF(size.width() / 2, size.height() / 2), size);
  painter.setPen(Qt::NoPen);
  painter.setBrush(palette::paper());
  painter.drawRoundedRect(ground, 0.8, 0.8);
  double y = ground.top() + kPad / 4;
  for (int i = 0; i < block.lines.size(); ++i) {
    const double high = line_height(block.style(i));
    draw_text(painter, QRectF(ground.left(), y, ground.width(), high), block.lines[i],
              block.style(i), Qt::AlignCenter);
    y += high;
  }
}

QRectF draw_upward_block(QPainter& painter, const QRectF& box, const Block& block) {
  painter.save();
  painter.translate(box.left(), box.bottom());
  painter.rotate(-90);
  draw_block(painter, QRectF(0, 0, box.height(), box.width()), block);
  painter.restore();
  const QSizeF size = block.size().transposed();
  return {box.center() - QPointF(size.width() / 2, size.height() / 2), size};
}

QRectF draw_level_block(QPainter& painter, const QRectF& box, const Block& block) {
  draw_block(painter, box, block);
  const QSizeF size = block.size();
  return {box.center() - QPointF(size.width() / 2, size.height() / 2), size};
}

}  // namespace

QRectF draw_label(QPainter& painter, const QRectF& box, const Label& label) {
  const QRectF room = box.adjusted(0.25, 0.2, -0.25, -0.2);
  if (room.width() <= 0 || room.height() <= 0) return {};
  const QSizeF level = room.size(), upward = level.transposed();
  Block block;
  for (auto find : {find_whole, find_short, find_code}) {
    if (find(label, level, block)) return draw_level_block(painter, room, block);
    if (find(label, upward, block)) return draw_upward_block(painter, room, block);
  }
  return {};
}

}  // namespace foldyard
