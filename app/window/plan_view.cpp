#include "window/plan_view.h"

#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

#include "drawing/screen_view.h"
#include "drawing/words.h"
#include "language/spoken.h"
#include "measure/index.h"

namespace foldyard {
namespace {

// The first tab shows a pattern, since that is what is cut; the roll is last.
QString pattern_title(const Job& job, const Plan& plan, int pattern) {
  const auto& length = plan.patterns[ix(pattern)].length;
  return PlanView::tr("%1: %2 × %3")
      .arg(pattern_letter(pattern))
      .arg(lengths_of(plan, pattern))
      .arg(length_words(length, job.unit));
}

}  // namespace

PlanView::PlanView(QWidget* parent)
    : QWidget(parent), upper_(new QHBoxLayout), words_(new QLabel), state_(new QLabel), figures_(new Figures), tabs_(new QTabBar),
      pages_(new QStackedWidget), table_(new ClothTable), picture_(new PictureView(tr("Picture of the roll"))) {
  words_->setWordWrap(true);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  state_->setProperty("soft", true);
  tabs_->setAccessibleName(tr("Pattern"));
  tabs_->setExpanding(false);
  tabs_->setDrawBase(false);
  tabs_->setUsesScrollButtons(true);
  upper_->addWidget(figures_);
  upper_->addStretch(1);
  upper_->addWidget(state_, 0, Qt::AlignBottom);
  auto* roll = new QWidget;
  auto* column = new QVBoxLayout(roll);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(words_);
  column->addWidget(picture_, 1);
  pages_->addWidget(table_);
  pages_->addWidget(roll);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addLayout(upper_);
  layout->addWidget(tabs_);
  layout->addWidget(pages_, 1);
  connect(tabs_, &QTabBar::currentChanged, this, &PlanView::show_picture);
}

void PlanView::show_plan(const AnswerPtr& answer, int way) {
  answer_ = answer;
  by_hand_.reset();
  way_ = way;
  show_words();
  show_figures();
  show_tabs();
  show_picture();
}

void PlanView::show_by_hand(const std::shared_ptr<const Plan>& plan) {
  by_hand_ = plan;
  show_words();
  show_figures();
  show_tabs();
  show_picture();
}

void PlanView::show_nothing(const QString& words) {
  answer_.reset();
  by_hand_.reset();
  words_->setText(words);
  show_figures();
  show_tabs();
  show_picture();
}

void PlanView::show_words() {
  const auto* found = plan();
  const auto& result = answer_->comparison.ways[ix(way_)];
  words_->setText(found ? answer_words(answer_->job, *found) + QLatin1Char(' ') + proof_words(*found)
                        : tr("“%1” is not possible here: %2.")
                              .arg(spoken(way_name(result.way)), spoken(result.refused)));
}

void PlanView::show_figures() {
  if (by_hand_ && best()) figures_->show_against(answer_->job, *by_hand_, *best());
  else figures_->show_plan(answer_->job, plan());
}

void PlanView::show_state(const QString& words) { state_->setText(words); }
void PlanView::add_beside_figures(QWidget* widget) { upper_->addWidget(widget, 0, Qt::AlignVCenter); }
void PlanView::add_under_figures(QWidget* widget) { static_cast<QVBoxLayout*>(layout())->insertWidget(1, widget); }
void PlanView::set_dark(bool dark) { table_->set_dark(dark); }

const Plan* PlanView::best() const {
  if (!answer_) return nullptr;
  const auto& found = answer_->comparison.ways[ix(way_)].plan;
  return found ? &*found : nullptr;
}

const Plan* PlanView::plan() const { return by_hand_ ? by_hand_.get() : best(); }

int PlanView::pattern() const {
  const auto* found = plan();
  const int tab = tabs_->currentIndex();
  return found && tab < static_cast<int>(found->patterns.size()) ? tab : -1;
}

void PlanView::show_tabs() {
  const QSignalBlocker quiet(tabs_);
  const int before = tabs_->currentIndex();
  const auto* found = plan();
  const int patterns = found ? static_cast<int>(found->patterns.size()) : 0;
  const int wanted = found ? patterns + 1 : 0;
  while (tabs_->count() > wanted) tabs_->removeTab(tabs_->count() - 1);
  while (tabs_->count() < wanted) tabs_->addTab(QString());
  for (int i = 0; i < patterns; ++i) tabs_->setTabText(i, pattern_title(answer_->job, *found, i));
  if (found) tabs_->setTabText(patterns, tr("Roll"));
  tabs_->setCurrentIndex(std::clamp(before, 0, std::max(wanted - 1, 0)));
}

void PlanView::show_picture() {
  const auto* found = plan();
  table_->set_empty_words(words_->text());
  pages_->setCurrentIndex(found && pattern() < 0 ? 1 : 0);
  if (!found) table_->show_cloth(nullptr);
  else if (pattern() >= 0)
    table_->show_cloth(lay_cloth({answer_, &answer_->job}, by_hand_ ? by_hand_ : std::shared_ptr<const Plan>(answer_, found), pattern()));
  table_->setAccessibleDescription(words_->text());
  const auto answer = answer_;
  const auto kept = by_hand_;
  PictureView::Paint paint;
  if (found)
    paint = [answer, kept, found](QPainter& painter, const QRectF& area) { paint_roll(painter, answer->job, *found, area); };
  picture_->show(std::move(paint), words_->text());
  emit shown();
}

void PlanView::zoom_in() { pattern() < 0 ? picture_->zoom_in() : table_->zoom_in(); }
void PlanView::zoom_out() { pattern() < 0 ? picture_->zoom_out() : table_->zoom_out(); }
void PlanView::fit() { pattern() < 0 ? picture_->fit() : table_->fit(); }

}  // namespace foldyard
