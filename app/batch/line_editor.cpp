#include "batch/line_editor.h"

#include "batch/line_model.h"
#include "fields/cloth_combo.h"

namespace foldyard {

QWidget* LineEditor::createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const QStringList products = index.data(kProductsRole).toStringList();
  if (products.isEmpty()) return CellEditor::createEditor(parent, option, index);
  auto* combo = new ClothCombo(parent);
  combo->addItems(products);
  combo->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString());
  auto* self = const_cast<LineEditor*>(this);
  connect(combo, &QComboBox::activated, self, [self, combo] { emit self->commitData(combo); });
  connect(combo, &QObject::destroyed, self, &CellEditor::left);
  return combo;
}

void LineEditor::setEditorData(QWidget* editor, const QModelIndex& index) const {
  if (auto* combo = qobject_cast<QComboBox*>(editor)) return combo->setCurrentText(index.data(Qt::EditRole).toString());
  CellEditor::setEditorData(editor, index);
}

void LineEditor::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  if (auto* combo = qobject_cast<QComboBox*>(editor)) {
    model->setData(index, combo->currentText(), Qt::EditRole);
    return;
  }
  CellEditor::setModelData(editor, model, index);
}

}  // namespace foldyard
