#include "fields/cell_editor.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QStyle>

namespace foldyard {
namespace {

constexpr const char* kBefore = "before";

void mark(QLineEdit* line, bool refused) {
  line->setProperty("refused", refused);
  line->style()->unpolish(line);
  line->style()->polish(line);
}

}  // namespace

QWidget* CellEditor::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
  auto* line = new QLineEdit(parent);
  line->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
  line->setProperty(kBefore, index.data(Qt::EditRole));
  auto* self = const_cast<CellEditor*>(this);
  connect(line, &QLineEdit::textEdited, self, [self, line] { emit self->commitData(line); });
  connect(line, &QObject::destroyed, self, &CellEditor::left);
  return line;
}

QSize CellEditor::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  return QStyledItemDelegate::sizeHint(option, index) + QSize(0, 6);
}

// What is being typed is not written over by the value it has just become.
void CellEditor::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* line = qobject_cast<QLineEdit*>(editor);
  if (line && !line->isModified()) line->setText(index.data(Qt::EditRole).toString());
}

void CellEditor::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  auto* line = qobject_cast<QLineEdit*>(editor);
  if (!line) return;
  model->setData(index, line->text(), Qt::EditRole);
  mark(line, !index.data(kReasonRole).toString().isEmpty());
  line->setToolTip(index.data(kReasonRole).toString());
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
