#pragma once

// The panels of the job as an editable table.
//
// A cell takes text as people write it. What is refused stays in its cell as a
// draft with its reason (ReasonRole, tool tip, accessible description) and
// changes nothing; it goes when the cell gets a good text, or when panels are
// added or taken away. An edited cell and the same cell edited next are one
// step in the history. The size of a panel that is sewn into goods moves the
// goods and all their panels (job/resize_goods.h).

#include <QAbstractTableModel>

#include <map>
#include <utility>

#include "document/document.h"
#include "fields/cell_editor.h"
#include "goods/ready_goods.h"

namespace foldyard {

class PanelModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { name, across, along, worth, may_turn, on_fold, at_most, match, grain, columns };
  // Few jobs need these.
  static bool is_rare(int column) { return column >= at_most; }
  static constexpr int ReasonRole = kReasonRole;

  explicit PanelModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  // A new panel like the last one, under a name of its own.
  std::optional<Problem> add_panel();
  // The panels of ready goods, named after them.
  std::optional<Problem> add_ready(const ReadyGoods& ready);
  // REQUIRES 0 ≤ row < rowCount(). Refused as in job/panel_away.h.
  std::optional<Problem> take_away(int row);
  // Whether some panel says something in the column that is not usual.
  bool is_used(int column) const;
  // Why a cell's draft is refused; empty where there is none.
  QString reason(const QModelIndex& index) const;
  // The first refused cell's reason, with its panel.
  QString first_reason() const;
  void drop_draft(const QModelIndex& index);

 private:
  struct Draft {
    QString text;
    QString reason;
  };
  using Cell = std::pair<int, int>;

  void show_job();
  bool set_flag(const QModelIndex& index, bool on);
  bool set_text(const QModelIndex& index, const QString& text);
  std::optional<QString> put_size(Job& job, const QModelIndex& index, Length size) const;
  std::optional<QString> put_choice(Panel& panel, int column, const QString& text) const;
  std::optional<QString> put(Job& job, const QModelIndex& index, const QString& text) const;
  bool apply(const Job& next, const QModelIndex& index, const QString& text);
  void refuse(const QModelIndex& index, const QString& text, const QString& reason);
  QString help_text(const Panel& panel, int column) const;
  QString cell_text(const Panel& panel, int column) const;
  QString spoken_text(const Panel& panel, int column) const;
  const Draft* draft(const QModelIndex& index) const;

  Document& document_;
  int rows_ = 0;
  std::map<Cell, Draft> drafts_;
};

}  // namespace foldyard
