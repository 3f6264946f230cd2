#pragma once

// The flaws of one roll as an editable table: from, to along the roll; left, right
// across it, from its left edge; what it is.
//
// A cell takes a length as people write it. What is no length stays in its cell as
// a draft with its reason (kReasonRole, tool tip) and changes nothing. What the
// job refuses is put beside the cell by whoever checks it: blame().

#include <QAbstractTableModel>

#include <map>
#include <utility>

#include "cloth/roll.h"
#include "fields/cell_editor.h"
#include "measure/write_length.h"

namespace foldyard {

class FlawModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { from, to, left, right, kind, columns };

  // The roll outlives the model; its flaws may stand in any order.
  FlawModel(Roll& roll, Unit unit, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  // The roll has other flaws than before, or in another order.
  void show_anew();
  // 5 cm at the middle of the roll, over its whole width.
  void add();
  // REQUIRES 0 ≤ row < rowCount().
  void take_away(int row);

  // key: of a job file, "from" … "kind". Takes the place of the one blamed before.
  void blame(int row, const QString& key, const QString& reason);
  void blame_none();
  // The first cell's reason, with its row; empty where there is none.
  QString first_reason() const;
  bool has_drafts() const { return !drafts_.empty(); }

 signals:
  void changed();

 private:
  struct Draft {
    QString text;
    QString reason;
  };
  using Cell = std::pair<int, int>;

  QString reason(const QModelIndex& index) const;
  QString cell_text(const Flaw& flaw, int column) const;
  void tell_all();

  Roll& roll_;
  Unit unit_;
  int rows_ = 0;
  std::map<Cell, Draft> drafts_;
  Cell blamed_{-1, -1};
  QString blame_;
};

}  // namespace foldyard
