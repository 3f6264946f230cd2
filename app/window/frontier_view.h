#pragma once

// Cloth used against minutes: every plan of the comparison as a point, those
// that no other beats in both joined by a stitched line. A click
// on a point chooses it; left and right go along the frontier, up and down through
// all points by the cloth used. A plan made by hand is a diamond of its own.
//
// It looks at the model of a WayTable and shares its choice.

#include <QWidget>

#include <functional>

#include "window/way_table.h"

namespace foldyard {

class FrontierView : public QWidget {
  Q_OBJECT

 public:
  explicit FrontierView(WayTable* table, QWidget* parent = nullptr);

  QSize sizeHint() const override { return {500, 170}; }
  QSize minimumSizeHint() const override { return {240, 150}; }
  // Where a row's point lies; nothing for refused ways.
  std::optional<QPointF> point(int row) const;
  // The plan made by hand of a row; null where there is none.
  using HandPlans = std::function<const Plan*(int row)>;
  void set_hand_plans(HandPlans plans);
  std::optional<QPointF> hand_point(int row) const;
  // Says anew what is chosen; for plans by hand that have changed.
  void describe();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Ends {
    double least_minutes, most_minutes, least_use, most_use;
  };
  Ends ends() const;
  QRectF field() const;
  QPointF place_of(const Plan& plan) const;
  const Plan* hand_plan(int row) const { return hand_plans_ ? hand_plans_(row) : nullptr; }
  std::vector<int> by_use() const;
  // Rows from least time to most, each using more of the cloth than those before.
  std::vector<int> frontier() const;
  int nearest(const QPointF& place) const;
  void choose(int row);
  void paint_axes(QPainter& painter) const;
  void paint_points(QPainter& painter) const;
  void paint_chosen(QPainter& painter) const;
  QString caption() const;

  WayTable* table_;
  HandPlans hand_plans_;
};

}  // namespace foldyard
