#include "shelf/roll_delegate.h"

#include <QPainter>

#include <algorithm>

#include "fields/reading_order.h"
#include "measure/write_length.h"
#include "shelf/mark_signs.h"
#include "shelf/swatch.h"
#include "table/board_colours.h"

namespace foldyard {
namespace {

constexpr int kPad = 6;
constexpr int kGap = 9;  // from the swatch to the words
constexpr double kTapeShare = 0.42;
constexpr double kTapeHigh = 9;

bool is_dark(const QPalette& palette) { return palette.window().color().lightness() < 128; }
QColor soft(const QPalette& palette) { return palette.color(QPalette::Mid); }

// 10 cm, every fifth longer; or 6 in, every sixth: a yard.
Length tick_step(Unit unit) { return is_imperial(unit) ? Length::inches64(6 * 64) : Length::mm(100); }
int long_tick(Unit unit) { return is_imperial(unit) ? 6 : 5; }

QString elided(const QFont& font, const QString& text, double width) {
  return QFontMetrics(font).elidedText(text, Qt::ElideRight, static_cast<int>(width));
}

// A tick of tailor's chalk on the cloth.
void paint_on_table(QPainter& painter, const QRectF& swatch, const QColor& chalk) {
  const QPointF c = swatch.center();
  painter.setPen(QPen(chalk, 3.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(QPolygonF{c + QPointF(-9, 0), c + QPointF(-3, 7), c + QPointF(10, -8)});
}

}  // namespace

RollDelegate::RollDelegate(const RollModel& rolls, QObject* parent) : QStyledItemDelegate(parent), rolls_(rolls) {}

QSize RollDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
  return {180, 3 * option.fontMetrics.height() + 2 * kPad + 1};
}

RollDelegate::Places RollDelegate::places(const QStyleOptionViewItem& option) const {
  const QRectF inside = QRectF(option.rect).adjusted(kPad, kPad, -kPad, -kPad);
  const double line = option.fontMetrics.height(), side = std::min(inside.height(), 2.6 * line);
  Places at;
  at.swatch = QRectF(inside.left(), inside.center().y() - side / 2, side, side);
  const QRectF words = inside.adjusted(side + kGap, 0, 0, 0);
  at.name = QRectF(words.left(), words.top(), words.width(), line);
  at.size = at.name.translated(0, line);
  const QRectF last = at.size.translated(0, line);
  at.tape = QRectF(last.left(), last.center().y() - kTapeHigh / 2, words.width() * kTapeShare, kTapeHigh);
  at.marks = last.adjusted(at.tape.width() + kGap, 1, 0, -1);
  return at;
}

void RollDelegate::paint(QPainter* painter, const QStyleOptionViewItem& given, const QModelIndex& index) const {
  QStyleOptionViewItem option = given;
  initStyleOption(&option, index);
  const int row = index.data(RollModel::RowRole).toInt();
  const Roll& roll = rolls_.roll(row);
  const Places at = places(option);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  paint_frame(*painter, option);
  paint_swatch(*painter, at.swatch, roll.fabric.colour, soft(option.palette));
  if (row == rolls_.on_table()) paint_on_table(*painter, at.swatch, chalk_on(cloth_colour(roll.fabric.colour)));
  paint_words(*painter, option, at, row);
  paint_tape(*painter, option, at.tape, roll);
  paint_marks(*painter, option, at.marks, roll);
  painter->restore();
}

void RollDelegate::paint_frame(QPainter& painter, const QStyleOptionViewItem& option) const {
  const QRectF all(option.rect);
  painter.setPen(QPen(soft(option.palette), 1));
  painter.drawLine(QLineF(all.left(), all.bottom() - 0.5, all.right(), all.bottom() - 0.5));
  if (!(option.state & QStyle::State_Selected)) return;
  const bool focus = option.state & QStyle::State_HasFocus;
  painter.setPen(QPen(option.palette.color(QPalette::Highlight), focus ? 3 : 2));
  painter.setBrush(option.palette.color(QPalette::Base));
  painter.drawRoundedRect(all.adjusted(2, 2, -2, -3), 4, 4);
}

void RollDelegate::paint_words(QPainter& painter, const QStyleOptionViewItem& option, const Places& at, int row) const {
  const Roll& roll = rolls_.roll(row);
  QFont name = option.font;
  name.setBold(row == rolls_.on_table());
  painter.setFont(name);
  painter.setPen(option.palette.color(QPalette::Text));
  painter.drawText(at.name, Qt::AlignLeft | Qt::AlignVCenter,
                   elided(name, QString::fromStdString(roll.name), at.name.width()));
  painter.setFont(option.font);
  painter.setPen(soft(option.palette));
  painter.drawText(at.size, Qt::AlignLeft | Qt::AlignVCenter,
                   elided(option.font, in_own_order(roll_size_words(roll, rolls_.unit())), at.size.width()));
}

double RollDelegate::tape_length(const Roll& roll, double room) const {
  const double widest = rolls_.widest().in_mm();
  return widest > 0 ? room * roll.fabric.width.in_mm() / widest : 0;
}

void RollDelegate::paint_tape(QPainter& painter, const QStyleOptionViewItem& option, const QRectF& room, const Roll& roll) const {
  const auto& colours = board_colours(is_dark(option.palette));
  QRectF tape = room;
  tape.setWidth(tape_length(roll, room.width()));
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setPen(QPen(soft(option.palette), 1));
  painter.setBrush(colours.tape);
  painter.drawRect(tape);
  painter.setPen(QPen(colours.on_tape, 1));
  const double step = tape_length(roll, room.width()) * tick_step(rolls_.unit()).in_mm() / roll.fabric.width.in_mm();
  for (int i = 1; step >= 3 && i * step < tape.width(); ++i) {
    const double tall = i % long_tick(rolls_.unit()) == 0 ? tape.height() - 2 : tape.height() / 2 - 1;
    painter.drawLine(QLineF(tape.left() + i * step, tape.bottom(), tape.left() + i * step, tape.bottom() - tall));
  }
  painter.setRenderHint(QPainter::Antialiasing);
}

// From the right, so that the last, the flaws, stand under each other.
void RollDelegate::paint_marks(QPainter& painter, const QStyleOptionViewItem& option, const QRectF& room, const Roll& roll) const {
  const auto marks = roll_marks(roll);
  const double side = std::min(room.height(), 16.0);
  double right = room.right();
  for (auto mark = marks.rbegin(); mark != marks.rend() && right - side >= room.left(); ++mark) {
    const QRectF box(right - side, room.center().y() - side / 2, side, side);
    paint_mark(painter, box, roll, *mark, option.palette.color(QPalette::Text));
    right -= side + 6;
  }
}

}  // namespace foldyard
