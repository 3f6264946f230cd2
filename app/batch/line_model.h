#pragma once

// The lines of the order as an editable table: of what product, how many must and
// may be made, of which cloth, and how many at least of each.
//
// A cell takes text as people write it; a product is chosen from those there are
// (kProductsRole lists them). What is refused stays in its cell as a draft with its
// reason (kReasonRole) and changes nothing; it goes when the cell gets a good text,
// or when lines are added or taken away.

#include <QAbstractTableModel>

#include <map>
#include <utility>

#include "document/document.h"
#include "fields/cell_editor.h"

namespace foldyard {

inline constexpr int kProductsRole = Qt::UserRole + 20;

class LineModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { product, must, may, from, each_at_least, columns };

  explicit LineModel(Document& document, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  // The first refused cell's reason.
  QString first_reason() const;

 private:
  struct Draft {
    QString text;
    QString reason;
  };
  using Cell = std::pair<int, int>;

  void show_job();
  const OrderLine& line(int row) const;
  QString cell_text(const OrderLine& line, int column) const;
  QString help_text(const OrderLine& line, int column) const;
  std::optional<QString> put(Job& job, const QModelIndex& index, const QString& text) const;
  std::optional<QString> put_product(OrderLine& line, const QString& text) const;
  void refuse(const QModelIndex& index, const QString& text, const QString& reason);
  const Draft* draft(const QModelIndex& index) const;

  Document& document_;
  int rows_ = 0;
  std::map<Cell, Draft> drafts_;
};

}  // namespace foldyard
