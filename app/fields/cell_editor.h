#pragma once

// The editor of a cell of a table: each good text is taken while it is typed, a
// refused one (its model says why under kReasonRole) is marked at once, and Escape
// takes back what the cell had. A cell whose model gives choices (kChoicesRole,
// a list of texts) is edited by choosing one of them.

#include <QStyledItemDelegate>

namespace foldyard {

inline constexpr int kReasonRole = Qt::UserRole + 1;
inline constexpr int kChoicesRole = Qt::UserRole + 2;

class CellEditor : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

 signals:
  // The editing of one cell has ended.
  void left();

 protected:
  // What is refused is marked by a sign, bold, and in the palette's BrightText.
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override;
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace foldyard
