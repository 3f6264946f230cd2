#include "batch/fill_in_model.h"

#include "measure/index.h"

namespace foldyard {
namespace {

QString at(const std::map<QString, QString>& texts, const QString& key) {
  const auto found = texts.find(key);
  return found == texts.end() ? QString() : found->second;
}

}  // namespace

FillInModel::FillInModel(const QStringList& head, QObject* parent) : QAbstractTableModel(parent), head_(head) {}

void FillInModel::show(const std::vector<Row>& rows) {
  if (rows == rows_) return;
  beginResetModel();
  rows_ = rows;
  endResetModel();
}

QString FillInModel::entry(const QString& key) const { return at(entries_, key); }

void FillInModel::set_entries(const std::map<QString, QString>& entries) {
  beginResetModel();
  entries_ = entries;
  reasons_.clear();
  endResetModel();
}

void FillInModel::set_reasons(const std::map<QString, QString>& reasons) {
  if (reasons == reasons_) return;
  reasons_ = reasons;
  if (!rows_.empty()) emit dataChanged(index(0, fill_in_column()), index(rowCount() - 1, fill_in_column()));
}

int FillInModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rows_.size()); }
int FillInModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(head_.size()); }

QString FillInModel::text(const QModelIndex& index) const {
  const Row& row = rows_[ix(index.row())];
  return index.column() == fill_in_column() ? entry(row.key) : row.words.value(index.column());
}

QString FillInModel::reason(const QModelIndex& index) const {
  if (index.column() != fill_in_column()) return {};
  return at(reasons_, rows_[ix(index.row())].key);
}

QVariant FillInModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole: return text(index);
    case Qt::AccessibleTextRole: return head_[index.column()] + QLatin1Char(' ') + text(index);
    case Qt::ToolTipRole:
    case Qt::AccessibleDescriptionRole:
    case kReasonRole: return reason(index);
    case Qt::TextAlignmentRole: return QVariant(Qt::AlignVCenter | Qt::AlignLeft);
    default: return {};
  }
}

QVariant FillInModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= head_.size()) return {};
  if (role == Qt::DisplayRole) return head_[section];
  if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignVCenter | Qt::AlignLeft);
  return {};
}

Qt::ItemFlags FillInModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  return index.column() == fill_in_column() ? plain | Qt::ItemIsEditable : plain;
}

bool FillInModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole || index.column() != fill_in_column()) return false;
  entries_[rows_[ix(index.row())].key] = value.toString().trimmed();
  emit dataChanged(index, index);
  emit filled_in();
  return true;
}

}  // namespace foldyard
