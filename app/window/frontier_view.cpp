#include "window/frontier_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

#include "drawing/words.h"
#include "fields/reading_order.h"
#include "language/local_numbers.h"
#include "window/window_colours.h"

namespace foldyard {
namespace {

constexpr double kGrasp = 14;

double minutes_of(const Plan& plan) { return plan.time.in_minutes(); }

// A little room on both sides, and never nothing to divide by.
void widen(double& least, double& most, double floor) {
  const double room = std::max((most - least) * 0.08, floor);
  least -= room;
  most += room;
}

}  // namespace

FrontierView::FrontierView(WayTable* table, QWidget* parent) : QWidget(parent), table_(table) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Cloth used against minutes"));
  connect(table->ways(), &QAbstractItemModel::modelReset, this, [this] { describe(); });
  connect(table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] { describe(); });
}

FrontierView::Ends FrontierView::ends() const {
  Ends ends{1e9, 0, 100, 0};
  const auto take = [&ends](const Plan* plan) {
    if (!plan) return;
    ends.least_minutes = std::min(ends.least_minutes, minutes_of(*plan));
    ends.most_minutes = std::max(ends.most_minutes, minutes_of(*plan));
    ends.least_use = std::min(ends.least_use, use_percent(plan->used, plan->cloth));
    ends.most_use = std::max(ends.most_use, use_percent(plan->used, plan->cloth));
  };
  for (int row = 0; row < table_->ways()->rowCount(); ++row) {
    take(table_->ways()->plan(row));
    take(hand_plan(row));
  }
  widen(ends.least_minutes, ends.most_minutes, 1);
  widen(ends.least_use, ends.most_use, 0.5);
  ends.least_minutes = std::max(0.0, ends.least_minutes);
  return ends;
}

QRectF FrontierView::field() const {
  const double words = fontMetrics().height();
  return QRectF(rect()).adjusted(fontMetrics().horizontalAdvance(QStringLiteral("100.0 %")) + 14, 8, -14, -2.4 * words - 6);
}

QPointF FrontierView::place_of(const Plan& plan) const {
  const Ends e = ends();
  const QRectF box = field();
  return QPointF(box.left() + box.width() * (minutes_of(plan) - e.least_minutes) / (e.most_minutes - e.least_minutes),
                 box.bottom() - box.height() * (use_percent(plan.used, plan.cloth) - e.least_use) / (e.most_use - e.least_use));
}

std::optional<QPointF> FrontierView::point(int row) const {
  const Plan* plan = table_->ways()->plan(row);
  return plan ? std::optional(place_of(*plan)) : std::nullopt;
}

std::optional<QPointF> FrontierView::hand_point(int row) const {
  const Plan* plan = hand_plan(row);
  return plan ? std::optional(place_of(*plan)) : std::nullopt;
}

void FrontierView::set_hand_plans(HandPlans plans) {
  hand_plans_ = std::move(plans);
  update();
}

// All rows with a plan, the most cloth used first.
std::vector<int> FrontierView::by_use() const {
  std::vector<int> rows;
  for (int row = 0; row < table_->ways()->rowCount(); ++row)
    if (table_->ways()->plan(row)) rows.push_back(row);
  std::stable_sort(rows.begin(), rows.end(), [&](int a, int b) { return table_->ways()->plan(a)->used > table_->ways()->plan(b)->used; });
  return rows;
}

std::vector<int> FrontierView::frontier() const {
  std::vector<int> rows;
  for (int row = 0; row < table_->ways()->rowCount(); ++row)
    if (table_->ways()->plan(row)) rows.push_back(row);
  std::stable_sort(rows.begin(), rows.end(), [&](int a, int b) {
    const Plan &p = *table_->ways()->plan(a), &q = *table_->ways()->plan(b);
    return p.time != q.time ? p.time < q.time : p.used > q.used;
  });
  std::vector<int> best;
  for (int row : rows)
    if (best.empty() || table_->ways()->plan(row)->used > table_->ways()->plan(best.back())->used) best.push_back(row);
  return best;
}

int FrontierView::nearest(const QPointF& place) const {
  int found = -1;
  double least = kGrasp;
  for (int row = 0; row < table_->ways()->rowCount(); ++row) {
    for (const auto& at : {point(row), hand_point(row)}) {
      if (!at || QLineF(*at, place).length() >= least) continue;
      least = QLineF(*at, place).length();
      found = row;
    }
  }
  return found;
}

void FrontierView::choose(int row) {
  if (row >= 0) table_->setCurrentIndex(table_->ways()->index(row, WayModel::way));
}

void FrontierView::describe() {
  const int row = table_->row();
  setAccessibleDescription(row < 0 || !table_->ways()->plan(row)
                               ? QString()
                               : table_->ways()->index(row, WayModel::way).data().toString() + QStringLiteral(", ") +
                                     table_->ways()->index(row, WayModel::use).data().toString() + QStringLiteral(", ") +
                                     table_->ways()->index(row, WayModel::time).data().toString() +
                                     (hand_plan(row) ? tr("; by hand %1, %2").arg(use_words(hand_plan(row)->used, hand_plan(row)->cloth),
                                                                                  minutes_words(hand_plan(row)->time))
                                                     : QString()));
  update();
}

void FrontierView::mousePressEvent(QMouseEvent* event) { choose(nearest(event->position())); }

void FrontierView::mouseMoveEvent(QMouseEvent* event) {
  const int row = nearest(event->position());
  setCursor(row < 0 ? Qt::ArrowCursor : Qt::PointingHandCursor);
  if (row < 0) return QToolTip::hideText();
  QToolTip::showText(event->globalPosition().toPoint(), table_->ways()->index(row, WayModel::way).data().toString(), this);
}

void FrontierView::keyPressEvent(QKeyEvent* event) {
  const bool up = event->key() == Qt::Key_Up, down = event->key() == Qt::Key_Down;
  const bool left = event->key() == Qt::Key_Left || up, right = event->key() == Qt::Key_Right || down;
  const std::vector<int> rows = up || down ? by_use() : frontier();
  if (rows.empty() || !(left || right)) return QWidget::keyPressEvent(event);
  const auto here = std::find(rows.begin(), rows.end(), table_->row());
  if (here == rows.end()) return choose(rows.front());
  if (left && here != rows.begin()) choose(*(here - 1));
  if (right && here + 1 != rows.end()) choose(*(here + 1));
}

void FrontierView::paintEvent(QPaintEvent*) {
  if (table_->ways()->rowCount() == 0) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const auto& colours = window_colours(shade_of(palette()));
  painter.fillRect(rect(), colours.field);
  paint_axes(painter);
  paint_points(painter);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(hasFocus() ? colours.chalk : colours.soft_ink, hasFocus() ? 2 : 1));
  painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

void FrontierView::paint_axes(QPainter& painter) const {
  const auto& colours = window_colours(shade_of(palette()));
  const Ends e = ends();
  const QRectF box = field();
  const double line = fontMetrics().height();
  painter.setPen(QPen(colours.soft_ink, 1));
  painter.drawLine(box.bottomLeft(), box.bottomRight());
  painter.drawLine(box.bottomLeft(), box.topLeft());
  painter.drawText(QRectF(0, box.top() - 4, box.left() - 6, line), Qt::AlignRight, in_own_order(tr("%1 %").arg(local_number(e.most_use, 1))));
  painter.drawText(QRectF(0, box.bottom() - line + 4, box.left() - 6, line), Qt::AlignRight, in_own_order(tr("%1 %").arg(local_number(e.least_use, 1))));
  painter.drawText(QRectF(box.left(), box.bottom() + 3, box.width(), line), Qt::AlignLeft, in_own_order(tr("%1 min").arg(local_number(e.least_minutes, 0))));
  painter.drawText(QRectF(box.left(), box.bottom() + 3, box.width(), line), Qt::AlignRight, in_own_order(tr("%1 min").arg(local_number(e.most_minutes, 0))));
  painter.drawText(QRectF(box.left(), box.bottom() + 3, box.width(), line), Qt::AlignHCenter, caption());
}

void FrontierView::paint_points(QPainter& painter) const {
  const auto& colours = window_colours(shade_of(palette()));
  const std::vector<int> unbeaten = frontier();
  QPolygonF line;
  for (int row : unbeaten) line << *point(row);
  painter.setPen(QPen(colours.chalk, 2, Qt::DashLine));
  painter.drawPolyline(line);
  for (int row = 0; row < table_->ways()->rowCount(); ++row) {
    const auto at = point(row);
    if (!at) continue;
    const bool best = std::find(unbeaten.begin(), unbeaten.end(), row) != unbeaten.end();
    painter.setPen(QPen(best ? colours.chalk : colours.soft_ink, 1.5));
    painter.setBrush(best ? colours.chalk : colours.field);
    painter.drawEllipse(*at, best ? 5 : 4, best ? 5 : 4);
  }
  painter.setPen(QPen(colours.chalk, 2));
  painter.setBrush(colours.field);
  for (int row = 0; row < table_->ways()->rowCount(); ++row)
    if (const auto at = hand_point(row))
      painter.drawPolygon(QPolygonF({*at + QPointF(0, -7), *at + QPointF(7, 0), *at + QPointF(0, 7), *at + QPointF(-7, 0)}));
  paint_chosen(painter);
}

void FrontierView::paint_chosen(QPainter& painter) const {
  const int row = table_->row();
  const auto by_hand = row < 0 ? std::nullopt : hand_point(row);
  const auto at = row < 0 || by_hand ? by_hand : point(row);
  if (!at) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(window_colours(shade_of(palette())).ink, 2));
  painter.drawEllipse(*at, 9, 9);
}

// The chosen way is named below the points, so that it hides none.
QString FrontierView::caption() const {
  const QString axes = tr("cloth used against minutes");
  const int row = table_->row();
  if (row < 0 || !table_->ways()->plan(row)) return axes;
  const QString name = table_->ways()->index(row, WayModel::way).data().toString();
  return axes + QStringLiteral(" · ") + (hand_plan(row) ? tr("%1, by hand").arg(name) : name);
}

}  // namespace foldyard
