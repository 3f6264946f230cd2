#include "window/compare_large.h"

#include <QContextMenuEvent>
#include <QKeyEvent>

#include "fields/trade_icon.h"

namespace foldyard {

CompareLarge::CompareLarge(WayTable* table, WayCards* cards, QWidget* graph, PlanView* view, ByHand* by_hand, QObject* parent)
    : QObject(parent), table_(table), by_hand_(by_hand), pinned_(new PinnedWays(table->ways(), this)), page_(new SideBySide),
      pages_(new QStackedWidget), button_(new QPushButton(tr("Compare large"))) {
  pages_->addWidget(view);
  pages_->addWidget(page_);
  button_->setCheckable(true);
  button_->setToolTip(tr("Two or three fold ways beside each other; pin them on their cards, or with C"));
  cards->set_pinned(pinned_);
  connect(cards, &WayCards::pin_pressed, this, &CompareLarge::toggle);
  for (QWidget* widget : std::initializer_list<QWidget*>{cards, table, graph}) widget->installEventFilter(this);
  for (QWidget* widget : {cards->viewport(), table->viewport()}) widget->installEventFilter(this);
  connect(pinned_, &PinnedWays::changed, this, &CompareLarge::refresh);
  connect(by_hand, &ByHand::shown, this, &CompareLarge::refresh);
  connect(button_, &QPushButton::clicked, this, &CompareLarge::set_shown);
  button_->setIcon(trade_icon(TradeIcon::compare, IconPlace::button));
  connect(page_, &SideBySide::left, this, [this] { set_shown(false); });
  refresh();
}

void CompareLarge::toggle(int row) {
  if (pinned_->toggle(row)) set_shown(pinned_->rows().size() > 1);
}

void CompareLarge::set_shown(bool shown) {
  pages_->setCurrentIndex(shown && pinned_->rows().size() > 1 ? 1 : 0);
  refresh();
}

void CompareLarge::refresh() {
  const std::vector<ComparedPlan> all = plans();
  if (all.size() < 2) pages_->setCurrentIndex(0);
  button_->setEnabled(all.size() > 1);
  button_->setChecked(is_shown());
  if (is_shown()) page_->show_plans(all);
}

// By the answer that is on the table, which may be older than the table of ways
// for a moment.
std::vector<ComparedPlan> CompareLarge::plans() const {
  std::vector<ComparedPlan> plans;
  const AnswerPtr answer = by_hand_->answer();
  if (!answer) return plans;
  for (const int row : pinned_->rows()) {
    const FoldWay& way = table_->ways()->way_at(row);
    const QString name = table_->ways()->index(row, WayModel::way).data().toString();
    const std::shared_ptr<const Job> job(answer, &answer->job);
    if (const HandPlanPtr hand = by_hand_->plan_of(way)) {
      plans.push_back({tr("%1, by hand").arg(name), job, {hand, &hand->plan}});
      continue;
    }
    for (const WayResult& result : answer->comparison.ways)
      if (result.way == way && result.plan) plans.push_back({name, job, {answer, &*result.plan}});
  }
  return plans;
}

void CompareLarge::fill(QMenu* menu) {
  const int row = table_->row();
  const bool is_possible = row >= 0 && table_->ways()->plan(row);
  const bool is_pinned = is_possible && pinned_->has(row);
  QAction* pin = menu->addAction(is_pinned ? tr("Take the way &out of the comparison\tC") : tr("&Pin the way to compare\tC"), this,
                                 [this, row] { toggle(row); });
  pin->setEnabled(is_possible);
  QAction* large = menu->addAction(tr("Compare lar&ge"), this, [this] { set_shown(!is_shown()); });
  large->setCheckable(true);
  large->setChecked(is_shown());
  large->setEnabled(plans().size() > 1);
}

bool CompareLarge::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_C && key->modifiers() == Qt::NoModifier) {
      toggle(table_->row());
      return true;
    }
  }
  if (event->type() == QEvent::ContextMenu) {
    const auto* menu_event = static_cast<QContextMenuEvent*>(event);
    auto* menu = new QMenu(pages_->window());
    menu->setAttribute(Qt::WA_DeleteOnClose);
    fill(menu);
    menu->popup(menu_event->globalPos());
    return true;
  }
  return QObject::eventFilter(watched, event);
}

}  // namespace foldyard
