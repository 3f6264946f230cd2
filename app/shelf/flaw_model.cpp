#include "shelf/flaw_model.h"

#include <algorithm>
#include <array>

#include "fields/field_text.h"
#include "language/spoken.h"
#include "shelf/roll_words.h"

namespace foldyard {
namespace {

constexpr std::array<const char*, FlawModel::columns> kKeys = {"from", "to", "left", "right", "kind"};
constexpr std::array<const char*, FlawModel::columns> kHeads = {
    QT_TRANSLATE_NOOP("foldyard::FlawModel", "From"), QT_TRANSLATE_NOOP("foldyard::FlawModel", "To"),
    QT_TRANSLATE_NOOP("foldyard::FlawModel", "Left"), QT_TRANSLATE_NOOP("foldyard::FlawModel", "Right"),
    QT_TRANSLATE_NOOP("foldyard::FlawModel", "What it is")};
constexpr std::array<const char*, FlawModel::columns> kHelp = {
    QT_TRANSLATE_NOOP("foldyard::FlawModel", "Where it begins, from the free end of the roll"),
    QT_TRANSLATE_NOOP("foldyard::FlawModel", "Where it ends, from the free end of the roll"),
    QT_TRANSLATE_NOOP("foldyard::FlawModel", "Its left side, from the left edge of the cloth"),
    QT_TRANSLATE_NOOP("foldyard::FlawModel", "Its right side, from the left edge of the cloth"),
    QT_TRANSLATE_NOOP("foldyard::FlawModel", "In your own words: stain, hole, crease")};

std::size_t at(int i) { return static_cast<std::size_t>(i); }

Length& side(Flaw& flaw, int column) {
  switch (column) {
    case FlawModel::from: return flaw.along.from;
    case FlawModel::to: return flaw.along.to;
    case FlawModel::left: return flaw.across.from;
    default: return flaw.across.to;
  }
}

Length side(const Flaw& flaw, int column) { return side(const_cast<Flaw&>(flaw), column); }

// Places along a roll read best in metres, as the roll itself.
Unit unit_of(int column, Unit unit) { return column == FlawModel::from || column == FlawModel::to ? roll_unit(unit) : unit; }

}  // namespace

FlawModel::FlawModel(Roll& roll, Unit unit, QObject* parent)
    : QAbstractTableModel(parent), roll_(roll), unit_(unit), rows_(static_cast<int>(roll.flaws.size())) {}

int FlawModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_; }
int FlawModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QString FlawModel::cell_text(const Flaw& flaw, int column) const {
  return column == kind ? QString::fromStdString(flaw.kind) : length_text(side(flaw, column), unit_of(column, unit_));
}

QString FlawModel::reason(const QModelIndex& index) const {
  const auto draft = drafts_.find({index.row(), index.column()});
  if (draft != drafts_.end()) return draft->second.reason;
  return blamed_ == Cell{index.row(), index.column()} ? blame_ : QString();
}

QVariant FlawModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole: {
      const auto draft = drafts_.find({index.row(), index.column()});
      return draft != drafts_.end() ? draft->second.text : cell_text(roll_.flaws[at(index.row())], index.column());
    }
    case kReasonRole:
    case Qt::AccessibleDescriptionRole: return reason(index);
    case Qt::ToolTipRole: return reason(index).isEmpty() ? tr(kHelp[at(index.column())]) : reason(index);
    default: return {};
  }
}

QVariant FlawModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columns) return QAbstractTableModel::headerData(section, orientation, role);
  if (role == Qt::DisplayRole) return tr(kHeads[at(section)]);
  if (role == Qt::ToolTipRole) return tr(kHelp[at(section)]);
  return {};
}

Qt::ItemFlags FlawModel::flags(const QModelIndex& index) const {
  const auto flags = QAbstractTableModel::flags(index);
  return index.isValid() ? flags | Qt::ItemIsEditable | Qt::ItemNeverHasChildren : flags;
}

bool FlawModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !checkIndex(index, CheckIndexOption::IndexIsValid)) return false;
  const Cell cell{index.row(), index.column()};
  Flaw& flaw = roll_.flaws[at(index.row())];
  const QString text = value.toString();
  drafts_.erase(cell);
  if (index.column() == kind) {
    flaw.kind = text.trimmed().toStdString();
  } else if (const auto length = typed_length(text, unit_of(index.column(), unit_))) {
    side(flaw, index.column()) = *length;
  } else {
    drafts_[cell] = {text, spoken(length.problem())};
  }
  emit dataChanged(index, index);
  emit changed();
  return true;
}

void FlawModel::show_anew() {
  beginResetModel();
  drafts_.clear();
  rows_ = static_cast<int>(roll_.flaws.size());
  endResetModel();
}

void FlawModel::add() {
  const Length middle = roll_.length / 2, high = std::min(Length::mm(50), roll_.length - middle);
  beginInsertRows({}, rows_, rows_);
  roll_.flaws.push_back({{middle, middle + high}, {Length(), roll_.fabric.width}, {}});
  ++rows_;
  endInsertRows();
  emit changed();
}

// Drafts belong to rows that now have another number, so they go.
void FlawModel::take_away(int row) {
  drafts_.clear();
  blame_none();
  beginRemoveRows({}, row, row);
  roll_.flaws.erase(roll_.flaws.begin() + row);
  --rows_;
  endRemoveRows();
  tell_all();
  emit changed();
}

void FlawModel::tell_all() {
  if (rows_ > 0) emit dataChanged(index(0, 0), index(rows_ - 1, columns - 1));
}

void FlawModel::blame(int row, const QString& key, const QString& reason) {
  const auto found = std::find_if(kKeys.begin(), kKeys.end(), [&](const char* k) { return key == QLatin1String(k); });
  const Cell cell{row, found == kKeys.end() ? 0 : static_cast<int>(found - kKeys.begin())};
  if (cell == blamed_ && reason == blame_) return;
  blamed_ = cell;
  blame_ = reason;
  tell_all();
}

void FlawModel::blame_none() {
  if (blamed_.first < 0) return;
  blamed_ = {-1, -1};
  blame_.clear();
  tell_all();
}

QString FlawModel::first_reason() const {
  for (int row = 0; row < rows_; ++row)
    for (int column = 0; column < columns; ++column)
      if (const QString why = reason(index(row, column)); !why.isEmpty()) return tr("Flaw %1: %2").arg(row + 1).arg(why);
  return {};
}

}  // namespace foldyard
