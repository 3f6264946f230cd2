#include "shelf/roll_list.h"

#include <QDrag>
#include <QDropEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QPainter>
#include <QScrollBar>

#include "shelf/roll_delegate.h"
#include "shelf/swatch.h"
#include "table/roll_drop.h"

namespace foldyard {
namespace {

constexpr int kUsualRows = 4;
constexpr int kScrollEdge = 14;  // pixels from an edge where a held roll scrolls the list

RollModel* rolls_of(const RollFilter* filter) { return static_cast<RollModel*>(filter->sourceModel()); }

}  // namespace

RollList::RollList(RollFilter* rolls, QWidget* parent)
    : QListView(parent), filter_(rolls), starter_([](QDrag* drag, Qt::DropActions actions) { return drag->exec(actions, Qt::MoveAction); }) {
  setAccessibleName(tr("Rolls"));
  setModel(rolls);
  setItemDelegate(new RollDelegate(*rolls_of(rolls), this));
  setUniformItemSizes(true);
  setEditTriggers(NoEditTriggers);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setDragEnabled(true);
  setAcceptDrops(true);
  setContextMenuPolicy(Qt::ActionsContextMenu);
  connect(this, &QListView::doubleClicked, this, [this](const QModelIndex& index) { emit wanted(filter_->roll_at(index)); });
}

int RollList::row_height() const {
  QStyleOptionViewItem option;
  initViewItemOption(&option);
  return itemDelegate()->sizeHint(option, {}).height();
}

QSize RollList::sizeHint() const { return {280, kUsualRows * row_height() + 2 * frameWidth()}; }
QSize RollList::minimumSizeHint() const { return {160, 2 * row_height() + row_height() / 2}; }

void RollList::startDrag(Qt::DropActions) {
  const int roll = filter_->roll_at(currentIndex());
  if (roll < 0) return;
  auto* drag = new QDrag(this);
  drag->setMimeData(roll_to_drag(roll).release());
  drag->setPixmap(drag_picture(rolls_of(filter_)->roll(roll), palette(), font(), devicePixelRatioF()));
  drag->setHotSpot(QPoint(12, 12));
  starter_(drag, Qt::CopyAction | Qt::MoveAction);
  show_gap({});
}

int RollList::gap_at(const QPoint& place) const {
  const QModelIndex over = indexAt(QPoint(viewport()->width() / 2, place.y()));
  if (!over.isValid()) return place.y() < 0 ? 0 : model()->rowCount();
  return over.row() + (place.y() > visualRect(over).center().y() ? 1 : 0);
}

int RollList::roll_before(int gap) const {
  const int shown = model()->rowCount();
  if (shown == 0) return 0;
  return gap < shown ? filter_->roll_at(model()->index(gap, 0)) : filter_->roll_at(model()->index(shown - 1, 0)) + 1;
}

void RollList::show_gap(std::optional<int> gap) {
  gap_ = gap;
  viewport()->update();
}

void RollList::dragEnterEvent(QDragEnterEvent* event) { dragged_roll(*event->mimeData()) ? event->acceptProposedAction() : event->ignore(); }

void RollList::dragMoveEvent(QDragMoveEvent* event) {
  if (!dragged_roll(*event->mimeData())) return event->ignore();
  const int y = event->position().toPoint().y();
  auto* bar = verticalScrollBar();
  if (y < kScrollEdge) bar->setValue(bar->value() - kScrollEdge / 2);
  if (y > viewport()->height() - kScrollEdge) bar->setValue(bar->value() + kScrollEdge / 2);
  show_gap(gap_at(event->position().toPoint()));
  event->setDropAction(Qt::MoveAction);
  event->accept();
}

void RollList::dragLeaveEvent(QDragLeaveEvent*) { show_gap({}); }

void RollList::dropEvent(QDropEvent* event) {
  const auto roll = dragged_roll(*event->mimeData());
  show_gap({});
  if (!roll) return event->ignore();
  event->setDropAction(Qt::MoveAction);
  event->accept();
  emit dropped(*roll, roll_before(gap_at(event->position().toPoint())));
}

void RollList::keyPressEvent(QKeyEvent* event) {
  const bool enters = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (!enters || !currentIndex().isValid()) return QListView::keyPressEvent(event);
  emit wanted(filter_->roll_at(currentIndex()));
}

void RollList::resizeEvent(QResizeEvent* event) {
  QListView::resizeEvent(event);
  if (currentIndex().isValid()) scrollTo(currentIndex());
}

// Where a held roll would land: a chalk line between two rolls.
void RollList::paintEvent(QPaintEvent* event) {
  QListView::paintEvent(event);
  if (!gap_ || model()->rowCount() == 0) return;
  const int last = model()->rowCount() - 1;
  const QRect row = visualRect(model()->index(std::min(*gap_, last), 0));
  const int y = std::clamp(*gap_ > last ? row.bottom() : row.top(), 2, viewport()->height() - 2);
  QPainter painter(viewport());
  painter.setPen(QPen(palette().color(QPalette::Highlight), 4, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(6, y, viewport()->width() - 6, y);
}

}  // namespace foldyard
