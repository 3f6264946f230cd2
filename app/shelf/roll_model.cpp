#include "shelf/roll_model.h"

#include <algorithm>

#include "shelf/roll_edits.h"
#include "shelf/roll_words.h"

namespace foldyard {
namespace {

std::vector<std::string> sorted(std::vector<std::string> names) {
  std::sort(names.begin(), names.end());
  return names;
}

bool same_names(const std::vector<Roll>& a, const std::vector<Roll>& b) {
  return sorted(names_of(a)) == sorted(names_of(b));
}

int place_of(const std::vector<Roll>& rolls, const std::string& name) {
  const auto found = std::find_if(rolls.begin(), rolls.end(), [&](const Roll& roll) { return roll.name == name; });
  return static_cast<int>(found - rolls.begin());
}

// How many of the first, or the last, bear the same names.
template <class It, class Other>
int alike(It a, It a_end, Other b, Other b_end) {
  int count = 0;
  for (; a != a_end && b != b_end && a->name == b->name; ++a, ++b) ++count;
  return count;
}

}  // namespace

RollModel::RollModel(Document& document, QObject* parent)
    : QAbstractListModel(parent), document_(document), rolls_(document.job().rolls) {
  connect(&document_, &Document::opened, this, &RollModel::begin_anew);
  connect(&document_, &Document::changed, this, &RollModel::follow_job);
}

int RollModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rolls_.size()); }

QVariant RollModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
  switch (role) {
    case Qt::DisplayRole: return QString::fromStdString(roll(index.row()).name);
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole: return roll_text(roll(index.row()), unit(), index.row() == on_table_);
    case RowRole: return index.row();
    default: return {};
  }
}

Qt::ItemFlags RollModel::flags(const QModelIndex& index) const {
  const auto flags = QAbstractListModel::flags(index);
  return index.isValid() ? flags | Qt::ItemIsDragEnabled | Qt::ItemNeverHasChildren : flags;
}

Length RollModel::widest() const {
  Length widest;
  for (const Roll& roll : rolls_) widest = std::max(widest, roll.fabric.width);
  return widest;
}

void RollModel::set_on_table(int row) {
  if (row == on_table_) return;
  on_table_ = row;
  if (!rolls_.empty()) emit dataChanged(index(0), index(rowCount() - 1));
}

void RollModel::begin_anew() {
  is_following_ = true;
  beginResetModel();
  rolls_ = document_.job().rolls;
  endResetModel();
  is_following_ = false;
}

void RollModel::follow_job() {
  const auto& next = document_.job().rolls;
  is_following_ = true;
  if (names_of(next) == names_of(rolls_)) rolls_ = next;
  else if (same_names(next, rolls_)) put_in_order(next);
  else replace_middle(next);
  if (!rolls_.empty()) emit dataChanged(index(0), index(rowCount() - 1));
  is_following_ = false;
}

void RollModel::put_in_order(const std::vector<Roll>& next) {
  emit layoutAboutToBeChanged();
  const QModelIndexList before = persistentIndexList();
  QModelIndexList after;
  for (const auto& kept : before) after << index(place_of(next, roll(kept.row()).name));
  rolls_ = next;
  changePersistentIndexList(before, after);
  emit layoutChanged();
}

// A roll that was renamed keeps its row; else what is not alike goes and comes.
void RollModel::replace_middle(const std::vector<Roll>& next) {
  if (next.size() == rolls_.size()) {
    rolls_ = next;
    return;
  }
  const int first = alike(rolls_.begin(), rolls_.end(), next.begin(), next.end());
  const int last = alike(rolls_.rbegin(), rolls_.rend() - first, next.rbegin(), next.rend() - first);
  const int gone = static_cast<int>(rolls_.size()) - first - last, come = static_cast<int>(next.size()) - first - last;
  if (gone > 0) {
    beginRemoveRows({}, first, first + gone - 1);
    rolls_.erase(rolls_.begin() + first, rolls_.begin() + first + gone);
    endRemoveRows();
  }
  if (come > 0) {
    beginInsertRows({}, first, first + come - 1);
    rolls_.insert(rolls_.begin() + first, next.begin() + first, next.begin() + first + come);
    endInsertRows();
  }
  rolls_ = next;
}

RollFilter::RollFilter(RollModel* rolls) : QSortFilterProxyModel(rolls) { setSourceModel(rolls); }

void RollFilter::set_words(const QString& words) {
  words_ = words;
  invalidateFilter();
}

int RollFilter::roll_at(const QModelIndex& index) const { return index.isValid() ? mapToSource(index).row() : -1; }
QModelIndex RollFilter::index_of(int roll) const { return mapFromSource(sourceModel()->index(roll, 0)); }

bool RollFilter::filterAcceptsRow(int row, const QModelIndex& parent) const {
  return has_words(sourceModel()->index(row, 0, parent).data(Qt::AccessibleTextRole).toString(), words_);
}

}  // namespace foldyard
