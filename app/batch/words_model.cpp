#include "batch/words_model.h"

#include <QRegularExpression>

#include "measure/index.h"

namespace foldyard {
namespace {

// "12", "143.20", "95 min": to the right, as figures are read.
bool is_figure(const QString& text) {
  static const QRegularExpression kFigure(QStringLiteral("^−?-?[0-9]+([.,][0-9]+)?( \\w+)?$"),
                                          QRegularExpression::UseUnicodePropertiesOption);
  return kFigure.match(text).hasMatch();
}

// A tab or a break inside a cell would end it.
QString one_cell(QString text) { return text.replace(QLatin1Char('\t'), QLatin1Char(' ')).replace(QLatin1Char('\n'), QLatin1Char(' ')); }

QString one_line(const QStringList& cells) {
  QStringList safe;
  for (const QString& cell : cells) safe << one_cell(cell);
  return safe.join(QLatin1Char('\t')) + QLatin1Char('\n');
}

}  // namespace

void WordsModel::show(const QStringList& head, const std::vector<QStringList>& rows, const std::vector<bool>& ticks) {
  beginResetModel();
  head_ = head;
  rows_ = rows;
  ticks_ = ticks;
  endResetModel();
}

QString WordsModel::tab_separated() const {
  QString text = one_line(head_);
  for (const QStringList& row : rows_) text += one_line(row);
  return text;
}

int WordsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rows_.size()); }
int WordsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(head_.size()); }

QVariant WordsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const QString text = rows_[ix(index.row())].value(index.column());
  switch (role) {
    case Qt::DisplayRole: return text;
    case Qt::ToolTipRole: return text;
    case Qt::AccessibleTextRole: return head_[index.column()] + QLatin1Char(' ') + text;
    case Qt::CheckStateRole:
      return has_tick(index) ? QVariant(ticks_[ix(index.row())] ? Qt::Checked : Qt::Unchecked) : QVariant();
    case Qt::TextAlignmentRole: return QVariant(Qt::AlignVCenter | (!is_plain_ && is_figure(text) && !has_tick(index) ? Qt::AlignRight : Qt::AlignLeft));
    default: return {};
  }
}

QVariant WordsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= head_.size()) return {};
  if (role == Qt::DisplayRole) return head_[section];
  if (role != Qt::TextAlignmentRole) return {};
  return rows_.empty() ? QVariant(Qt::AlignVCenter | Qt::AlignLeft) : data(index(0, section), role);
}

Qt::ItemFlags WordsModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  const Qt::ItemFlags dragged = dragger_ ? plain | Qt::ItemIsDragEnabled : plain;
  return has_tick(index) ? dragged | Qt::ItemIsUserCheckable : dragged;
}

QMimeData* WordsModel::mimeData(const QModelIndexList& indexes) const {
  return dragger_ && !indexes.isEmpty() ? dragger_(indexes.first().row()) : nullptr;
}

bool WordsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::CheckStateRole || !has_tick(index)) return false;
  const bool on = value.toInt() == Qt::Checked;
  ticks_[ix(index.row())] = on;
  emit dataChanged(index, index);
  emit ticked(index.row(), on);
  return true;
}

}  // namespace foldyard
