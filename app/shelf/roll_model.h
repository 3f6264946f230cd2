#pragma once

// The rolls of the job as a list, in the order in which they stand on the shelf,
// and the same narrowed to those that have certain words.
//
// The display is the name; the tool tip and the accessible text say all of the
// roll. RowRole is the roll's place in the job, through any proxy. When the job
// changes, rolls are followed by their names, so that a chosen one stays chosen.

#include <QAbstractListModel>
#include <QSortFilterProxyModel>

#include <vector>

#include "document/document.h"
#include "measure/index.h"

namespace foldyard {

class RollModel : public QAbstractListModel {
  Q_OBJECT

 public:
  static constexpr int RowRole = Qt::UserRole + 1;

  explicit RollModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

  // REQUIRES 0 ≤ row < rowCount().
  const Roll& roll(int row) const { return rolls_[ix(row)]; }
  Unit unit() const { return document_.job().unit; }
  // Of the widest roll; 0 of no rolls.
  Length widest() const;
  // −1: none.
  int on_table() const { return on_table_; }
  void set_on_table(int row);
  // While rows come, go or change places after an edit.
  bool is_following() const { return is_following_; }

 private:
  void begin_anew();
  void follow_job();
  void put_in_order(const std::vector<Roll>& next);
  void replace_middle(const std::vector<Roll>& next);

  Document& document_;
  std::vector<Roll> rolls_;
  int on_table_ = -1;
  bool is_following_ = false;
};

class RollFilter : public QSortFilterProxyModel {
  Q_OBJECT

 public:
  explicit RollFilter(RollModel* rolls);
  // Empty: all rolls.
  void set_words(const QString& words);
  // The roll in a row of the narrowed list; −1 where the index is none.
  int roll_at(const QModelIndex& index) const;
  // Invalid where the roll is not among those shown.
  QModelIndex index_of(int roll) const;

 protected:
  bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

 private:
  QString words_;
};

}  // namespace foldyard
