#include "window/main_window.h"

#include <QApplication>
#include <QButtonGroup>
#include <QScrollArea>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>

#include "fields/flow_row.h"
#include "language/spoken.h"
#include "window/linen.h"

namespace foldyard {
namespace {

constexpr int kLeftWidth = 350;
// A plan that is there sooner is not announced.
constexpr int kBusyMs = 250;

QPushButton* aim_button_of(const QString& text, const QString& help) {
  auto* button = new QPushButton(text);
  button->setCheckable(true);
  button->setToolTip(help);
  return button;
}

}  // namespace

MainWindow::MainWindow(Compare compare, const Places& places)
    : planner_(std::move(compare)), documents_(new DocumentActions(this, document_, places)), shelf_(new Shelf(document_)), panel_table_(new PanelTable(document_)),
      way_table_(new WayTable),
      way_cards_(new WayCards(way_table_)), frontier_view_(new FrontierView(way_table_)), way_tabs_(new QTabBar), plan_view_(new PlanView),
      by_hand_(new ByHand(document_.history(), plan_view_, way_table_, this)),
      compare_large_(new CompareLarge(way_table_, way_cards_, frontier_view_, plan_view_, by_hand_, this)), plan_heading_(new TapeHeading(tr("The table"))),
      right_(new QSplitter(Qt::Vertical)),
      most_worth_(aim_button_of(tr("&Most worth"), tr("The most worth out of the roll; among equals the fewest cuts"))),
      less_time_(aim_button_of(tr("Worth less t&ime"), tr("The most of worth less the maker's time at their rate"))),
      notice_(new QLabel), busy_row_(new BusyRow(planner_)) {
  first_steps_ = new FirstSteps(*this);
  arrange();
  make_menus();
  connect_all();
  set_tab_order();
  take_settings();
  show_title();
  shelf_->list()->setFocus();
}

// The views go before the document they look at.
MainWindow::~MainWindow() { delete takeCentralWidget(); }

void MainWindow::arrange() {
  auto* ground = new Linen;
  auto* split = new QSplitter(Qt::Horizontal);
  split->setChildrenCollapsible(false);
  split->setHandleWidth(10);
  split->addWidget(left_side());
  split->addWidget(with_batch(right_side()));
  split->setStretchFactor(1, 1);
  split->setSizes({kLeftWidth, 2 * kLeftWidth});
  auto* layout = new QVBoxLayout(ground);
  layout->setContentsMargins(10, 8, 10, 4);
  layout->addWidget(documents_->strip());
  layout->addWidget(first_steps_->strip());
  layout->addWidget(split, 1);
  setCentralWidget(ground);
  notice_->setProperty("fault", true);
  notice_->setWordWrap(true);
  statusBar()->addWidget(notice_, 1);
  statusBar()->addPermanentWidget(busy_row_);
  statusBar()->setSizeGripEnabled(false);
}

QWidget* MainWindow::left_side() {
  auto* side = new QWidget;
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(new TapeHeading(tr("The shelf")));
  layout->addWidget(shelf_, 5);
  layout->addSpacing(6);
  layout->addWidget(new TapeHeading(tr("Panels")));
  layout->addWidget(panel_table_, 3);
  auto* scroller = new QScrollArea;
  scroller->setWidget(side);
  scroller->setWidgetResizable(true);
  scroller->setFocusPolicy(Qt::NoFocus);
  scroller->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroller->viewport()->setAutoFillBackground(false);
  side->setAutoFillBackground(false);
  scroller->setMinimumWidth(kLeftWidth);
  return scroller;
}

QWidget* MainWindow::right_side() {
  auto* plan = new QWidget;
  auto* upper = new QVBoxLayout(plan);
  upper->setContentsMargins(0, 0, 0, 0);
  upper->addWidget(plan_heading_);
  upper->addWidget(compare_large_->pages(), 1);
  right_->setChildrenCollapsible(false);
  right_->setHandleWidth(10);
  right_->addWidget(plan);
  right_->addWidget(ways_ = ways_side());
  right_->setStretchFactor(0, 1);
  right_->setSizes({10'000, way_cards_->height()});  // no more than the cards need
  return right_;
}

QWidget* MainWindow::table_page() {
  auto* page = new QWidget;
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  auto* legend = new QLabel(tr("✓ no other way beats it in both worth and time"));
  legend->setProperty("soft", true);
  legend->setWordWrap(true);
  column->addWidget(way_table_, 1);
  column->addWidget(legend);
  return page;
}

QWidget* MainWindow::ways_side() {
  auto* ways = new QWidget;
  auto* column = new QVBoxLayout(ways);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(3);
  way_tabs_->setAccessibleName(tr("Fold ways shown as"));
  way_tabs_->setDrawBase(false);
  way_tabs_->setExpanding(false);
  for (const QString& name : {tr("Side by side"), tr("Table"), tr("Graph")}) way_tabs_->addTab(name);
  auto* pages = new QStackedWidget;
  for (QWidget* page : std::initializer_list<QWidget*>{way_cards_, table_page(), frontier_view_}) pages->addWidget(page);
  connect(way_tabs_, &QTabBar::currentChanged, pages, &QStackedWidget::setCurrentIndex);
  column->addWidget(aim_row());
  column->addWidget(pages, 1);
  return ways;
}

QWidget* MainWindow::aim_row() {
  auto* row = new FlowBar;
  FlowRow* layout = row->row();
  auto* label = new QLabel(tr("Best for"));
  label->setIndent(8);
  auto* group = new QButtonGroup(row);
  group->setExclusive(true);
  group->addButton(most_worth_);
  group->addButton(less_time_);
  most_worth_->setChecked(true);
  layout->addWidget(way_tabs_);
  layout->addWidget(label);
  layout->addWidget(most_worth_);
  layout->addWidget(less_time_);
  layout->add_gap();
  layout->addWidget(compare_large_->button());
  return row;
}

void MainWindow::connect_all() {
  connect(&document_, &Document::changed, this, &MainWindow::ask);
  connect(documents_, &DocumentActions::told, this, qOverload<const QString&>(&MainWindow::tell));
  connect(&document_, &Document::kept, this, &MainWindow::show_title);
  connect(&document_, &Document::opened, this, [this] {
    if (std::exchange(begins_empty_, false)) shelf_->clear_table();
    answer_.reset();
    by_hand_->forget();
    way_table_->forget_choice();
  });
  connect(&document_.history(), &QUndoStack::cleanChanged, this, &MainWindow::show_title);
  connect(&document_, &Document::changed, this, &MainWindow::show_title);
  connect_shelf();
  connect(&planner_, &Planner::answered, this, &MainWindow::show_answer);
  connect(&planner_, &Planner::failed, this, qOverload<const QString&>(&MainWindow::tell));
  connect(&planner_, &Planner::busy_changed, this, &MainWindow::show_busy);
  busy_.setSingleShot(true);
  busy_.setInterval(kBusyMs);
  connect(&busy_, &QTimer::timeout, this, [this] { plan_view_->show_state(tr("planning…")); });
  connect(way_table_, &WayTable::chosen, this, &MainWindow::show_way);
  frontier_view_->set_hand_plans([this](int row) -> const Plan* {
    const HandPlanPtr plan = by_hand_->plan_of(way_table_->ways()->way_at(row));
    return plan ? &plan->plan : nullptr;  // kept by by_hand_
  });
  connect(by_hand_, &ByHand::shown, frontier_view_, &FrontierView::describe);
  connect(by_hand_, &ByHand::told, this, qOverload<const QString&>(&MainWindow::tell));
  connect(most_worth_, &QPushButton::clicked, this, [this] { set_aim(Aim::most_worth); });
  connect(less_time_, &QPushButton::clicked, this, [this] { set_aim(Aim::worth_less_time); });
}

void MainWindow::set_tab_order() {
  const auto* steps = first_steps_->strip();
  std::vector<QWidget*> order = {steps->step(GuideStrip::roll), steps->step(GuideStrip::sewn),
                                 steps->step(GuideStrip::printed), steps->own_roll(), steps->closer()};
  for (QWidget* widget : shelf_->tab_order()) order.push_back(widget);
  for (QWidget* widget : std::initializer_list<QWidget*>{
           panel_table_->view(), panel_table_->more(), panel_table_->adder(),
           panel_table_->goods_adder(), panel_table_->taker(), page_tabs_,
           plan_view_->tabs(), plan_view_->table()->flat(), plan_view_->table()->folded(), plan_view_->picture(), by_hand_->put_back_button(),
           compare_large_->page()->cloth(0), compare_large_->page()->cloth(1), compare_large_->page()->cloth(2),
           way_tabs_, most_worth_, less_time_, compare_large_->button(), way_cards_, way_table_, frontier_view_})
    order.push_back(widget);
  for (QWidget* widget : batch_page_->tab_order()) order.push_back(widget);
  for (std::size_t i = 1; i < order.size(); ++i) setTabOrder(order[i - 1], order[i]);
}

void MainWindow::set_aim(Aim aim) {
  show_batch(false);
  if (aim == aim_) return;
  aim_ = aim;
  aim_button(aim)->setChecked(true);
  way_table_->forget_choice();
  ask();
}

void MainWindow::set_shade(Shade shade) {
  QApplication::setPalette(window_palette(shade));
  qApp->setStyleSheet(window_style_sheet(shade));
  plan_view_->set_dark(shade == Shade::dark);
  compare_large_->page()->set_dark(shade == Shade::dark);
}

void MainWindow::ask() {
  const auto& job = document_.job();
  if (job.rolls.empty() || shelf_->on_table() < 0) return;
  tell(QString());
  const Question question{job, std::min(shelf_->on_table(), static_cast<int>(job.rolls.size()) - 1), aim_};
  by_hand_->set_question(question);
  planner_.ask(question);
}

void MainWindow::show_answer(const AnswerPtr& answer) {
  answer_ = answer;
  way_table_->show_answer(answer);
  way_cards_->show_answer(answer);
  ways_->show();
}

void MainWindow::show_way(int row) {
  if (!answer_ || row < 0) return;
  by_hand_->show_row(answer_, row);
  plan_heading_->setText(way_table_->ways()->index(row, WayModel::way).data().toString());
}

void MainWindow::show_busy(bool busy) {
  if (busy) return busy_.start();
  busy_.stop();
  plan_view_->show_state({});
}

void MainWindow::tell(const QString& words) { notice_->setText(words); }
void MainWindow::tell(const Problem& problem) { tell(spoken(problem)); }

}  // namespace foldyard
