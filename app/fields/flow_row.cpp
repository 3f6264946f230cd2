#include "fields/flow_row.h"

#include <QStyle>

#include <algorithm>
#include <numeric>
#include <utility>

#include "measure/index.h"

namespace foldyard {

FlowRow::FlowRow(QWidget* parent, int gap) : QLayout(parent) { setSpacing(gap); }

FlowRow::~FlowRow() {
  while (QLayoutItem* item = takeAt(0)) delete item;  // a group that goes takes itself out, too
}

void FlowRow::add(QLayout* group) {
  addChildLayout(group);
  addItem(group);
}

QLayoutItem* FlowRow::itemAt(int index) const {
  return 0 <= index && index < count() ? items_[ix(index)] : nullptr;
}

QLayoutItem* FlowRow::takeAt(int index) {
  QLayoutItem* item = itemAt(index);
  if (item) items_.erase(items_.begin() + index);
  return item;
}

std::vector<FlowRow::Line> FlowRow::lines_for(int width) const {
  std::vector<Line> lines(1);
  for (int i = 0; i < count(); ++i) {
    if (itemAt(i)->isEmpty()) continue;
    const QSize size = itemAt(i)->sizeHint();
    if (!lines.back().items.empty() && lines.back().width + spacing() + size.width() > width) lines.emplace_back();
    Line& line = lines.back();
    line.width += size.width() + (line.items.empty() ? 0 : spacing());
    line.height = std::max(line.height, size.height());
    line.items.push_back(i);
  }
  return lines;
}

QSize FlowRow::around() const {
  const QMargins margins = contentsMargins();
  return {margins.left() + margins.right(), margins.top() + margins.bottom()};
}

int FlowRow::heightForWidth(int width) const {
  const std::vector<Line> lines = lines_for(width - around().width());
  const int gaps = (static_cast<int>(lines.size()) - 1) * spacing();
  return std::accumulate(lines.begin(), lines.end(), gaps + around().height(),
                         [](int sum, const Line& line) { return sum + line.height; });
}

QSize FlowRow::sizeHint() const {
  const Line all = lines_for(QLAYOUTSIZE_MAX).front();
  return QSize(all.width, all.height) + around();
}

QSize FlowRow::minimumSize() const {
  QSize least;
  for (QLayoutItem* item : items_)
    if (!item->isEmpty()) least = least.expandedTo(item->sizeHint());
  return least + around();
}

void FlowRow::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  QRect room = rect.marginsRemoved(contentsMargins());
  const std::vector<Line> lines = lines_for(room.width());
  for (const Line& line : lines) {
    place(line, {room.topLeft(), QSize(room.width(), line.height)}, lines.size() == 1);
    room.setTop(room.top() + line.height + spacing());
  }
}

void FlowRow::place(const Line& line, const QRect& room, bool only_one) {
  const Qt::LayoutDirection direction = parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight;
  int x = room.left();
  int gap = only_one && gap_before_ >= 0 ? std::max(0, room.width() - line.width) : 0;
  for (const int i : line.items) {
    if (i >= gap_before_) x += std::exchange(gap, 0);
    const QSize size = itemAt(i)->sizeHint().boundedTo({room.width(), room.height()});
    const QRect box(QPoint(x, room.top() + (room.height() - size.height()) / 2), size);
    itemAt(i)->setGeometry(QStyle::visualRect(direction, room, box));
    x += size.width() + spacing();
  }
}

FlowBar::FlowBar(QWidget* parent) : QWidget(parent), row_(new FlowRow(this)) { row_->setContentsMargins(0, 0, 0, 0); }

void FlowBar::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  setMinimumHeight(row_->heightForWidth(width()));
}

}  // namespace foldyard
