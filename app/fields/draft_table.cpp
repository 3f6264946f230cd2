#include "fields/draft_table.h"

namespace foldyard {

QVariant DraftTable::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const int row = index.row(), column = index.column();
  switch (role) {
    case Qt::DisplayRole: return shown(row, column).isEmpty() ? empty_text(column) : shown(row, column);
    case Qt::EditRole: return shown(row, column);
    case Qt::AccessibleTextRole: return head(column) + QLatin1Char(' ') + shown(row, column);
    case Qt::ToolTipRole:
    case Qt::AccessibleDescriptionRole: return draft(row, column) ? reason(row, column) : help(row, column);
    case kReasonRole: return reason(row, column);
    case kChoicesRole: return choices(column);
    case Qt::TextAlignmentRole: return side(column);
    default: return {};
  }
}

QVariant DraftTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
  switch (role) {
    case Qt::DisplayRole: return head(section);
    case Qt::ToolTipRole: return help(-1, section);
    case Qt::TextAlignmentRole: return side(section);
    default: return {};
  }
}

Qt::ItemFlags DraftTable::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  return is_typed(index.row(), index.column()) ? plain | Qt::ItemIsEditable : plain;
}

bool DraftTable::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole || !is_typed(index.row(), index.column())) return false;
  const QString text = value.toString();
  const Cell cell{index.row(), index.column()};
  if (const auto refused = put(cell.first, cell.second, text)) {
    drafts_[cell] = {text, *refused};
    emit dataChanged(index, index);
    return false;
  }
  if (drafts_.erase(cell) > 0) emit dataChanged(this->index(cell.first, 0), this->index(cell.first, cell.second));
  return true;
}

QString DraftTable::reason(int row, int column) const {
  const Draft* refused = draft(row, column);
  return refused ? refused->reason : QString();
}

QString DraftTable::first_reason() const { return drafts_.empty() ? QString() : drafts_.begin()->second.reason; }

void DraftTable::follow() {
  if (count_rows() != rows_) return show_anew();
  if (rows_ > 0) emit dataChanged(index(0, 0), index(rows_ - 1, columnCount() - 1));
}

void DraftTable::show_anew() {
  beginResetModel();
  drafts_.clear();
  rows_ = count_rows();
  endResetModel();
}

const DraftTable::Draft* DraftTable::draft(int row, int column) const {
  const auto found = drafts_.find({row, column});
  return found == drafts_.end() ? nullptr : &found->second;
}

QVariant DraftTable::side(int column) const {
  return QVariant(Qt::AlignVCenter | (is_word(column) ? Qt::AlignLeft : Qt::AlignRight));
}

QString DraftTable::shown(int row, int column) const {
  const Draft* refused = draft(row, column);
  return refused ? refused->text : text(row, column);
}

}  // namespace foldyard
