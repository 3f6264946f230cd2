#pragma once

// The comparison of the fold ways as a table: the plans best first, then the
// ways that are refused, each with its reason.

#include <QAbstractTableModel>

#include "measure/index.h"
#include "window/planner.h"

namespace foldyard {

class WayModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { way, panels, worth, net, use, lengths, lift, cuts, time, proof, columns };

  explicit WayModel(QObject* parent = nullptr);

  void show(const AnswerPtr& answer);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  // The plan of a row; null where the way is refused.
  const Plan* plan(int row) const;
  const FoldWay& way_at(int row) const;
  // Index into the comparison's ways.
  int way_index(int row) const { return order_[ix(row)]; }
  QString refused(int row) const;
  // The row of a way; −1 if the comparison does not have it.
  int row_of(const FoldWay& wanted) const;
  // No other plan beats it in both worth and time.
  bool on_frontier(int row) const;

 private:
  const WayResult& result(int row) const;
  QString text(int row, int column) const;
  QString help(int row) const;

  AnswerPtr answer_;
  std::vector<int> order_;
};

}  // namespace foldyard
