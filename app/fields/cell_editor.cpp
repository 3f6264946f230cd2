#include "fields/cell_editor.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QStyle>

#include "fields/cloth_combo.h"

namespace foldyard {
namespace {

constexpr const char* kBefore = "before";

void mark(QLineEdit* line, bool refused) {
  line->setProperty("refused", refused);
  line->style()->unpolish(line);
  line->style()->polish(line);
}

QWidget* chooser(const QStringList& choices, QWidget* parent, CellEditor* self) {
  auto* combo = new ClothCombo(parent);
  combo->addItems(choices);
  QObject::connect(combo, &QComboBox::activated, self, [self, combo] {
    emit self->commitData(combo);
    emit self->closeEditor(combo, QAbstractItemDelegate::NoHint);
  });
  return combo;
}

}  // namespace

QWidget* CellEditor::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
  auto* self = const_cast<CellEditor*>(this);
  const auto choices = index.data(kChoicesRole).toStringList();
  const auto head = index.model()->headerData(index.column(), Qt::Horizontal).toString();
  if (!choices.isEmpty()) {
    auto* combo = chooser(choices, parent, self);
    combo->setAccessibleName(head);
    return combo;
  }
  auto* line = new QLineEdit(parent);
  line->setAccessibleName(head);
  line->setProperty(kBefore, index.data(Qt::EditRole));
  connect(line, &QLineEdit::textEdited, self, [self, line] { emit self->commitData(line); });
  connect(line, &QObject::destroyed, self, &CellEditor::left);
  return line;
}

QSize CellEditor::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  return QStyledItemDelegate::sizeHint(option, index) + QSize(0, 6);
}

// What is being typed is not written over by the value it has just become.
void CellEditor::setEditorData(QWidget* editor, const QModelIndex& index) const {
  if (auto* combo = qobject_cast<QComboBox*>(editor)) combo->setCurrentText(index.data(Qt::EditRole).toString());
  auto* line = qobject_cast<QLineEdit*>(editor);
  if (line && !line->isModified()) line->setText(index.data(Qt::EditRole).toString());
}

void CellEditor::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  if (auto* combo = qobject_cast<QComboBox*>(editor)) model->setData(index, combo->currentText(), Qt::EditRole);
  auto* line = qobject_cast<QLineEdit*>(editor);
  if (!line) return;
  model->setData(index, line->text(), Qt::EditRole);
  mark(line, !index.data(kReasonRole).toString().isEmpty());
  line->setToolTip(index.data(kReasonRole).toString());
}

void CellEditor::initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const {
  QStyledItemDelegate::initStyleOption(option, index);
  if (index.data(kReasonRole).toString().isEmpty()) return;
  option->text.prepend(QStringLiteral("⚠ "));
  option->font.setBold(true);
  option->palette.setColor(QPalette::Text, option->palette.color(QPalette::BrightText));
}

bool CellEditor::eventFilter(QObject* watched, QEvent* event) {
  auto* line = qobject_cast<QLineEdit*>(watched);
  const bool escaped = line && event->type() == QEvent::KeyPress &&
                       static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape;
  if (!escaped) return QStyledItemDelegate::eventFilter(watched, event);
  line->setText(line->property(kBefore).toString());
  emit commitData(line);
  emit closeEditor(line, NoHint);
  return true;
}

}  // namespace foldyard
