#include "window/way_model.h"

#include <algorithm>
#include <numeric>

#include "drawing/words.h"
#include "fields/reading_order.h"
#include "job/lift_room.h"
#include "language/spoken.h"
#include "measure/index.h"

namespace foldyard {
namespace {

const char* const kWayHeads[WayModel::columns] = {
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Fold way"), QT_TRANSLATE_NOOP("foldyard::WayModel", "Panels"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Worth"),    QT_TRANSLATE_NOOP("foldyard::WayModel", "Less time"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Use"),      QT_TRANSLATE_NOOP("foldyard::WayModel", "Lengths"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Lift"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Cuts"),     QT_TRANSLATE_NOOP("foldyard::WayModel", "Time"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Proof")};

const char* const kWayHelp[WayModel::columns] = {
    QT_TRANSLATE_NOOP("foldyard::WayModel", "How the cloth is folded before it is cut"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Panels that come out of the roll"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "What all panels are worth"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "What they are worth less the maker's time at their rate"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Share of the roll that ends in panels"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Lengths that are cross-cut from the roll"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Lengths that may lie in one lift, by the cutter's height and most plies"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Cuts through lays; cross-cuts are not counted"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Time that cutting takes one person, by the pace of the job"),
    QT_TRANSLATE_NOOP("foldyard::WayModel", "Whether no plan of this way can be better")};

QString capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

}  // namespace

WayModel::WayModel(QObject* parent) : QAbstractTableModel(parent) {}

void WayModel::show(const AnswerPtr& answer) {
  beginResetModel();
  answer_ = answer;
  order_ = answer->comparison.ranking;
  for (int i = 0; i < static_cast<int>(answer->comparison.ways.size()); ++i)
    if (!answer->comparison.ways[ix(i)].plan) order_.push_back(i);
  endResetModel();
}

int WayModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(order_.size());
}

int WayModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QVariant WayModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  switch (role) {
    case Qt::DisplayRole: return plan(index.row()) && index.column() != way ? in_own_order(text(index.row(), index.column()))
                                                                          : text(index.row(), index.column());
    case Qt::ToolTipRole: return help(index.row());
    case Qt::AccessibleTextRole:
      return tr(kWayHeads[index.column()]) + QLatin1Char(' ') + text(index.row(), index.column());
    case Qt::AccessibleDescriptionRole: return help(index.row());
    case Qt::TextAlignmentRole:
      return QVariant(Qt::AlignVCenter | (index.column() == way || index.column() == proof || !plan(index.row())
                                              ? Qt::AlignLeft
                                              : Qt::AlignRight));
    default: return {};
  }
}

QVariant WayModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columns) return {};
  if (role == Qt::DisplayRole) return tr(kWayHeads[section]);
  if (role == Qt::ToolTipRole) return tr(kWayHelp[section]);
  if (role == Qt::TextAlignmentRole)
    return QVariant(Qt::AlignVCenter | (section == way || section == proof ? Qt::AlignLeft : Qt::AlignRight));
  return {};
}

const WayResult& WayModel::result(int row) const {
  return answer_->comparison.ways[ix(way_index(row))];
}

const Plan* WayModel::plan(int row) const {
  const auto& found = result(row).plan;
  return found ? &*found : nullptr;
}

const FoldWay& WayModel::way_at(int row) const { return result(row).way; }
QString WayModel::refused(int row) const { return spoken(result(row).refused); }

int WayModel::row_of(const FoldWay& wanted) const {
  for (int row = 0; row < rowCount(); ++row)
    if (way_at(row) == wanted) return row;
  return -1;
}

bool WayModel::on_frontier(int row) const {
  const auto& frontier = answer_->comparison.frontier;
  return std::find(frontier.begin(), frontier.end(), way_index(row)) != frontier.end();
}

QString WayModel::text(int row, int column) const {
  const auto* found = plan(row);
  if (column == way) return capital(spoken(way_name(way_at(row))));
  if (!found) return column == panels ? refused(row) : QString();
  switch (column) {
    case panels: return QString::number(std::accumulate(found->yield.begin(), found->yield.end(), std::int64_t{0}));
    case worth: return worth_words(found->worth);
    case net: return worth_words(found->net);
    case use: return use_words(found->used, found->cloth);
    case lengths: return QString::number(found->lengths.size());
    case lift: return QString::number(lengths_in_a_lift(answer_->job, found->roll, found->way));
    case cuts: return QString::number(found->cuts);
    case time: return minutes_words(found->time);
    default: return found->proof.proved ? tr("proved") : tr("bound %1").arg(worth_words(found->proof.bound));
  }
}

QString WayModel::help(int row) const {
  const auto* found = plan(row);
  if (!found) return refused(row);
  auto words = yield_words(answer_->job, found->yield) + QLatin1Char('\n') + proof_words(*found);
  if (on_frontier(row)) words += QLatin1Char('\n') + tr("No other fold way beats it in both worth and time.");
  return words;
}

}  // namespace foldyard
