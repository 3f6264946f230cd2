#pragma once

// A table of cells that are typed or chosen, each good text of which is taken at once.
//
// What is refused stays in its cell as a draft with its reason (kReasonRole, tool tip,
// accessible description) and changes nothing; it goes when the cell gets a good text,
// or when rows come or go. Who derives says what the cells hold and what becomes of a
// text, and calls follow() when what they hold may have changed.

#include <QAbstractTableModel>
#include <QStringList>

#include <map>
#include <optional>
#include <utility>

#include "fields/cell_editor.h"

namespace foldyard {

class DraftTable : public QAbstractTableModel {
  Q_OBJECT

 public:
  using QAbstractTableModel::QAbstractTableModel;

  int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : rows_; }
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  // Why a cell is refused; empty where it is not.
  QString reason(int row, int column) const;
  // The first refused cell's reason.
  QString first_reason() const;
  bool is_words(int column) const { return is_word(column); }

 protected:
  virtual int count_rows() const = 0;
  virtual QString head(int column) const = 0;
  // For people, of the column or of one cell.
  virtual QString help(int row, int column) const = 0;
  // Words stand to the left, figures to the right.
  virtual bool is_word(int column) const = 0;
  virtual bool is_typed(int row, int column) const = 0;
  virtual QString text(int row, int column) const = 0;
  // What stands in a cell without text.
  virtual QString empty_text(int column) const = 0;
  // Of a cell that is chosen; none for one that is typed.
  virtual QStringList choices(int column) const = 0;
  // Takes the text; the reason where it cannot.
  virtual std::optional<QString> put(int row, int column, const QString& text) = 0;

  void follow();
  // All rows are others now.
  void show_anew();

 private:
  struct Draft {
    QString text;
    QString reason;
  };
  using Cell = std::pair<int, int>;

  const Draft* draft(int row, int column) const;
  QVariant side(int column) const;
  QString shown(int row, int column) const;

  int rows_ = 0;
  std::map<Cell, Draft> drafts_;
};

}  // namespace foldyard
