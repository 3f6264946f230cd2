#pragma once

// A table of words, to be read; its rows may be ticked in their first column.

#include <QAbstractTableModel>
#include <QStringList>

#include <functional>
#include <vector>

namespace foldyard {

class WordsModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  using QAbstractTableModel::QAbstractTableModel;

  // ticks: of each row; empty: rows are not ticked.
  void show(const QStringList& head, const std::vector<QStringList>& rows, const std::vector<bool>& ticks = {});
  // Makes what is dragged of a row; null: rows are not dragged, or this one is not.
  void set_dragger(std::function<QMimeData*(int)> dragger) { dragger_ = std::move(dragger); }
  QMimeData* mimeData(const QModelIndexList& indexes) const override;
  // All cells stand to the left, figures too.
  void set_plain(bool plain) { is_plain_ = plain; }
  const std::vector<bool>& ticks() const { return ticks_; }
  // The whole table as text, columns apart by tabs, with its head.
  QString tab_separated() const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

 signals:
  void ticked(int row, bool on);

 private:
  bool has_tick(const QModelIndex& index) const { return !ticks_.empty() && index.column() == 0; }

  QStringList head_;
  std::vector<QStringList> rows_;
  std::vector<bool> ticks_;
  bool is_plain_ = false;
  std::function<QMimeData*(int)> dragger_;
};

}  // namespace foldyard
