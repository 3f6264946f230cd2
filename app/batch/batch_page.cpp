#include "batch/batch_page.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QVBoxLayout>

#include "batch/cut_dialog.h"
#include "batch/order_words.h"
#include "batch/pin_edits.h"
#include "batch/tickets.h"
#include "language/spoken.h"
#include "measure/index.h"

namespace foldyard {
namespace {

// Where order and answer no longer stand side by side.
constexpr int kNarrow = 960;

}  // namespace

BatchPage::BatchPage(Document& document, PlanOrder plan, QWidget* parent)
    : QWidget(parent), document_(document), planner_(std::move(plan)), split_(new QSplitter(Qt::Horizontal)),
      pages_(new QStackedWidget), sides_(new PageTabs(tr("What the batch is planned from"))), order_(new OrderTable(document)),
      products_(new ProductPage(document)), sewing_(new SewingPage(document)), webbing_(new WebbingPage(document)), hand_(new HandPage(document)), cut_(new CutPage(document)), view_(new BatchView(planner_)),
      make_(new QPushButton(tr("Make an order from the panels"))) {
  add_sides();
  pages_->addWidget(invitation());
  pages_->addWidget(view_);
  split_->setChildrenCollapsible(false);
  split_->setHandleWidth(10);
  split_->addWidget(sides_);
  split_->addWidget(pages_);
  split_->setStretchFactor(0, 2);
  split_->setStretchFactor(1, 3);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(split_);
  connect(&document_, &Document::opened, this, [this] {
    answer_.reset();
  });
  connect(&document_, &Document::changed, this, &BatchPage::take_job);
  connect(&planner_, &BatchPlanner::found, this, &BatchPage::take_answer);
  connect(&planner_, &BatchPlanner::answered, this, &BatchPage::take_answer);
  connect(&planner_, &BatchPlanner::failed, view_, &BatchView::show_fault);
  connect(view_, &BatchView::roll_ticked, this, [this](int roll, bool on) { set_in_batch(roll, on ? InBatch::may : InBatch::never); });
  connect(view_, &BatchView::must_wanted, this, [this](int roll, bool on) { set_in_batch(roll, on ? InBatch::must : InBatch::may); });
  connect(view_, &BatchView::keep_wanted, this, &BatchPage::keep_lay);
  connect(view_, &BatchView::mark_wanted, this, &BatchPage::mark_as_cut);
  connect(view_, &BatchView::tickets_wanted, this, &BatchPage::choose_and_write_tickets);
  connect(make_, &QPushButton::clicked, order_, &OrderTable::order_all);
  take_job();
}

void BatchPage::add_sides() {
  sides_->add(order_, tr("Order"));
  sides_->add(products_, tr("Products"));
  sides_->add(sewing_, tr("Sewing"));
  sides_->add(webbing_, tr("Webbing"));
  sides_->add(hand_, tr("By hand"));
  sides_->add(cut_, tr("Cut so far"));
}

QWidget* BatchPage::invitation() {
  auto* page = new QWidget;
  auto* words = new QLabel(tr("There is no order yet. Say how many pieces of which product are to be made, and the batch is planned over all rolls of the shelf."));
  words->setWordWrap(true);
  auto* column = new QVBoxLayout(page);
  column->addStretch(1);
  column->addWidget(words);
  column->addSpacing(8);
  column->addWidget(make_, 0, Qt::AlignLeft);
  column->addStretch(2);
  return page;
}

std::vector<QWidget*> BatchPage::tab_order() const {
  std::vector<QWidget*> all{sides_->tabs()};
  for (const auto& page : {order_->tab_order(), products_->tab_order(), sewing_->tab_order(), webbing_->tab_order(), hand_->tab_order(), cut_->tab_order()})
    all.insert(all.end(), page.begin(), page.end());
  all.push_back(make_);
  for (QWidget* widget : view_->tab_order()) all.push_back(widget);
  return all;
}

void BatchPage::take_job() {
  const Job& job = document_.job();
  pages_->setCurrentIndex(job.order.lines.empty() ? 0 : 1);
  make_->setEnabled(!job.panels.empty());
  make_->setText(job.products.empty() ? tr("Make an order from the panels") : tr("Make an order from the products"));
  show_last();
  ask();
}

void BatchPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  ask();
}

void BatchPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  split_->setOrientation(width() < kNarrow ? Qt::Vertical : Qt::Horizontal);
}

// A good answer stays good when only what is sewn, sold or bought besides changes.
void BatchPage::ask() {
  const Job& job = document_.job();
  if (job.order.lines.empty()) {
    asked_.reset();
    return planner_.forget();
  }
  if (!isVisible() || job == asked_) return;
  const bool is_planned = !planner_.is_busy() && answer_ && asked_ && answer_->job == *asked_ && as_planned(job) == as_planned(*asked_);
  asked_ = job;
  view_->show_fault({});
  if (is_planned) take_answer(std::make_shared<const BatchAnswer>(batch_answer(job, answer_->plan)));
  else planner_.ask(job);
}

void BatchPage::take_answer(const BatchAnswerPtr& answer) {
  answer_ = answer;
  view_->show_fault({});
  show_last();
}

void BatchPage::show_last() {
  view_->show_answer(document_.job(), answer_);
  sewing_->set_pieces(pieces_of_batch());
}

// Of the plan, else those that are asked for.
std::vector<std::int64_t> BatchPage::pieces_of_batch() const {
  const Job& job = document_.job();
  if (answer_ && answer_->job.products == job.products) return pieces_of(answer_->job, answer_->plan);
  std::vector<std::int64_t> pieces(job.products.size());
  for (const OrderLine& line : job.order.lines) pieces[ix(line.product)] += line.must;
  return pieces;
}

void BatchPage::edit(const Job& next, const QString& words) {
  const auto problem = document_.edit(next, words);
  if (!problem) return;
  show_last();
  view_->show_fault(order_problem_text(*problem, next));
}

void BatchPage::set_in_batch(int roll, InBatch how) {
  if (roll < 0 || roll >= std::ssize(document_.job().rolls)) return;
  const QString name = QString::fromStdString(document_.job().rolls[ix(roll)].name);
  const QString words = how == InBatch::never  ? tr("leave “%1” out of the batch")
                        : how == InBatch::must ? tr("cut from “%1” in any case")
                                               : tr("let the batch cut from “%1”");
  edit(with_in_batch(document_.job(), roll, how), words.arg(name));
}

void BatchPage::keep_lay(int lay) {
  if (!answer_ || answer_->job != document_.job() || lay < 0 || lay >= std::ssize(answer_->plan.lays)) return;
  edit(with_lay_kept(document_.job(), answer_->plan, lay), tr("keep lay %1").arg(lay + 1));
}

void BatchPage::mark_as_cut() {
  if (!answer_ || answer_->job != document_.job()) return;
  CutDialog dialog(answer_, this);
  if (dialog.exec() != QDialog::Accepted) return;
  edit(dialog.job(), dialog.words());
}

void BatchPage::choose_and_write_tickets() {
  const auto path = QFileDialog::getSaveFileName(this, tr("Write the tickets"), QString(), tr("Tickets as PDF (*.pdf);;Pages as SVG (*.svg);;Pages as PNG (*.png)"));
  if (!path.isEmpty()) write_tickets_to(QFileInfo(path).suffix().isEmpty() ? path + QLatin1String(".pdf") : path);
}

bool BatchPage::write_tickets_to(const QString& path) {
  if (!answer_) return false;
  const auto problem = write_tickets(*answer_, path);
  view_->show_fault(problem ? spoken(*problem) : QString());
  return !problem;
}

}  // namespace foldyard
