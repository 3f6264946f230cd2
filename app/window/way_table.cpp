#include "window/way_table.h"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

#include "window/cloth_style.h"
#include "window/window_colours.h"

namespace foldyard {
namespace {

// Puts a chalk mark before the ways on the frontier. The reason of a refused
// way spans its row, so that it needs no width of its own column.
class WayDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    if (index.column() != WayModel::way) return QStyledItemDelegate::paint(painter, option, index);
    auto shifted = option;
    shifted.rect.setLeft(option.rect.left() + kRoom);
    painter->fillRect(option.rect, option.state & QStyle::State_Selected ? option.palette.highlight()
                                                                         : option.palette.base());
    QStyledItemDelegate::paint(painter, shifted, index);
    if (has_plan(index) && ways(index).on_frontier(index.row())) paint_mark(painter, option);
  }

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const auto size = QStyledItemDelegate::sizeHint(option, index);
    if (index.column() == WayModel::way) return size + QSize(kRoom, 2);
    return has_plan(index) ? size + QSize(2, 2) : QSize(0, 2 * option.fontMetrics.height() + 8);
  }

 private:
  static constexpr int kRoom = 16;

  static const WayModel& ways(const QModelIndex& index) { return static_cast<const WayModel&>(*index.model()); }
  static bool has_plan(const QModelIndex& index) { return ways(index).plan(index.row()) != nullptr; }

  static void paint_mark(QPainter* painter, const QStyleOptionViewItem& option) {
    const auto& colours = window_colours(shade_of(option.palette));
    const bool chosen = option.state & QStyle::State_Selected;
    const QPointF centre(option.rect.left() + 10, option.rect.center().y() + 0.5);
    draw_chalk_mark(*painter, centre, chosen ? colours.on_chalk : colours.chalk);
  }
};

}  // namespace

WayTable::WayTable(QWidget* parent) : QTableView(parent), model_(new WayModel(this)) {
  setModel(model_);
  setItemDelegate(new WayDelegate(this));
  setAccessibleName(tr("Fold ways"));
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setTabKeyNavigation(false);
  setShowGrid(false);
  setEditTriggers(NoEditTriggers);
  verticalHeader()->hide();
  verticalHeader()->setMinimumSectionSize(fontMetrics().height() + 6);
  verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  horizontalHeader()->setMinimumSectionSize(36);
  horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  horizontalHeader()->setSectionResizeMode(WayModel::way, QHeaderView::Stretch);
  horizontalHeader()->setHighlightSections(false);
  connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, &WayTable::take_row);
}

void WayTable::show_answer(const AnswerPtr& answer) {
  is_showing_ = true;
  model_->show(answer);
  clearSpans();
  for (int row = 0; row < model_->rowCount(); ++row)
    if (!model_->plan(row)) setSpan(row, WayModel::panels, 1, WayModel::columns - WayModel::panels);
  const int kept = choice_ ? model_->row_of(*choice_) : 0;
  if (model_->rowCount() > 0) setCurrentIndex(model_->index(std::max(kept, 0), WayModel::way));
  is_showing_ = false;
  emit chosen(row());
}

void WayTable::take_row(const QModelIndex& current) {
  if (is_showing_ || !current.isValid()) return;
  choice_ = model_->way_at(current.row());
  emit chosen(current.row());
}

}  // namespace foldyard
