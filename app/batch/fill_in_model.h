#pragma once

// A table of words whose last column a person fills in, or leaves empty.
//
// Each row has a key of its own; what was filled in stays with its key when other
// rows are shown. Whoever shows the table looks at the entries and says which of
// them is refused and why (kReasonRole of its cell).

#include <QAbstractTableModel>
#include <QStringList>

#include <map>
#include <vector>

#include "fields/cell_editor.h"

namespace foldyard {

class FillInModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  struct Row {
    QString key;
    QStringList words;  // one less than there are heads
    bool operator==(const Row&) const = default;
  };

  // head: the last one is of the column that is filled in.
  explicit FillInModel(const QStringList& head, QObject* parent = nullptr);

  void show(const std::vector<Row>& rows);
  const std::vector<Row>& rows() const { return rows_; }
  QString entry(const QString& key) const;
  void set_entries(const std::map<QString, QString>& entries);
  // Takes the place of all reasons there were.
  void set_reasons(const std::map<QString, QString>& reasons);
  int fill_in_column() const { return static_cast<int>(head_.size()) - 1; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

 signals:
  void filled_in();

 private:
  QString text(const QModelIndex& index) const;
  QString reason(const QModelIndex& index) const;

  QStringList head_;
  std::vector<Row> rows_;
  std::map<QString, QString> entries_;
  std::map<QString, QString> reasons_;
};

}  // namespace foldyard
