#pragma once

// SideBySide: two or three plans large beside each other, each with its cloth flat
// and folded, all at one scale, with its figures and how they differ from those of
// the first.

#include <QGraphicsView>
#include <QLabel>
#include <QWidget>

#include <memory>

#include "measure/index.h"
#include "table/laid_cloth.h"
#include "window/figures.h"

namespace foldyard {

struct ComparedPlan {
  QString name;
  std::shared_ptr<const Job> job;
  std::shared_ptr<const Plan> plan;
};

// One length, flat and folded, beside or above each other. It only shows.
class ClothPair : public QGraphicsView {
  Q_OBJECT

 public:
  explicit ClothPair(QWidget* parent = nullptr);
  ~ClothPair() override;

  void show_cloth(const LaidClothPtr& cloth);
  void set_dark(bool dark);
  // The scale at which it fits, in pixels a millimetre of cloth.
  double best_scale(bool stacked) const;
  void set_scale(double scale, bool stacked);
  double scale() const { return scale_; }

 protected:
  void drawBackground(QPainter* painter, const QRectF& rect) override;
  void drawForeground(QPainter* painter, const QRectF& rect) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  QSizeF size_of(bool stacked) const;

  class Items;
  std::unique_ptr<Items> items_;
  double scale_ = 0.1;
  bool dark_ = false;
};

class SideBySide : public QWidget {
  Q_OBJECT

 public:
  explicit SideBySide(QWidget* parent = nullptr);

  // Two or three; the others differ from the first.
  void show_plans(const std::vector<ComparedPlan>& plans);
  void set_dark(bool dark);
  int count() const { return count_; }
  QString figures(int column) const { return columns_[ix(column)].figures->text(); }
  ClothPair* cloth(int column) const { return columns_[ix(column)].cloth; }

 signals:
  void left();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Column {
    QWidget* whole;
    QLabel* name;
    QLabel* figures;
    ClothPair* cloth;
  };
  void add_column();
  void show_column(int column, const ComparedPlan& plan, const ComparedPlan& first);
  void share_scale();

  std::vector<Column> columns_;
  int count_ = 0;
};

}  // namespace foldyard
