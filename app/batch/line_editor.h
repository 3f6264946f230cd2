#pragma once

// The editor of an order's cells: a product is chosen from a list, all else is
// typed as in any table.

#include "fields/cell_editor.h"

namespace foldyard {

class LineEditor : public CellEditor {
  Q_OBJECT

 public:
  using CellEditor::CellEditor;

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
};

}  // namespace foldyard
