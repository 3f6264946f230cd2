#pragma once

// How a roll looks on the shelf: its swatch; its name; width and length; a piece
// of tape as wide as the cloth, to the scale of all rolls, with a tick every
// 10 cm (or 6 in); and the signs of what is special.
//
// The roll on the table has a chalk mark over its swatch and its name in bold; the
// chosen one is framed. A board of the shelf runs under each.

#include <QStyledItemDelegate>

#include "shelf/roll_model.h"

namespace foldyard {

class RollDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  explicit RollDelegate(const RollModel& rolls, QObject* parent = nullptr);

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  // How long the tape of a roll is where the widest one has `room`.
  double tape_length(const Roll& roll, double room) const;

 private:
  struct Places {
    QRectF swatch;
    QRectF name;
    QRectF size;
    QRectF tape;   // room for that of the widest roll
    QRectF marks;
  };
  Places places(const QStyleOptionViewItem& option) const;
  void paint_frame(QPainter& painter, const QStyleOptionViewItem& option) const;
  void paint_words(QPainter& painter, const QStyleOptionViewItem& option, const Places& at, int row) const;
  void paint_tape(QPainter& painter, const QStyleOptionViewItem& option, const QRectF& room, const Roll& roll) const;
  void paint_marks(QPainter& painter, const QStyleOptionViewItem& option, const QRectF& room, const Roll& roll) const;

  const RollModel& rolls_;
};

}  // namespace foldyard
