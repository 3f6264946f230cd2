#include "window/plan_view.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

#include "drawing/screen_view.h"
#include "drawing/words.h"

namespace foldyard {
namespace {

// The first tab shows a pattern, since that is what is cut; the roll is last.
QString pattern_title(const Job& job, const Plan& plan, int pattern) {
  const auto& length = plan.patterns[static_cast<std::size_t>(pattern)].length;
  return PlanView::tr("%1: %2 × %3")
      .arg(pattern_letter(pattern))
      .arg(lengths_of(plan, pattern))
      .arg(length_words(length, job.unit));
}

}  // namespace

PlanView::PlanView(QWidget* parent)
    : QWidget(parent), words_(new QLabel(this)), state_(new QLabel(this)), tabs_(new QTabBar(this)),
      picture_(new PictureView(tr("Picture of the plan"), this)) {
  words_->setWordWrap(true);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  state_->setProperty("soft", true);
  tabs_->setAccessibleName(tr("Pattern"));
  tabs_->setExpanding(false);
  tabs_->setDrawBase(false);
  tabs_->setUsesScrollButtons(true);
  auto* row = new QHBoxLayout;
  row->addWidget(tabs_, 1);
  row->addWidget(state_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(words_);
  layout->addLayout(row);
  layout->addWidget(picture_, 1);
  layout->setStretchFactor(picture_, 1);
  connect(tabs_, &QTabBar::currentChanged, this, &PlanView::show_picture);
}

void PlanView::show_plan(const AnswerPtr& answer, int way) {
  answer_ = answer;
  way_ = way;
  const auto* found = plan();
  const auto& result = answer->comparison.ways[static_cast<std::size_t>(way)];
  words_->setText(found ? answer_words(answer->job, *found) + QLatin1Char(' ') + proof_words(*found)
                        : tr("Not possible %1: %2")
                              .arg(QString::fromStdString(way_name(result.way)), QString::fromStdString(result.refused)));
  show_tabs();
  show_picture();
}

void PlanView::show_state(const QString& words) { state_->setText(words); }

const Plan* PlanView::plan() const {
  if (!answer_) return nullptr;
  const auto& found = answer_->comparison.ways[static_cast<std::size_t>(way_)].plan;
  return found ? &*found : nullptr;
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
  if (!found) return picture_->show({}, words_->text());
  const int tab = tabs_->currentIndex();
  const bool is_roll = tab >= static_cast<int>(found->patterns.size());
  const auto answer = answer_;
  picture_->show(
      [answer, found, tab, is_roll](QPainter& painter, const QRectF& area) {
        if (is_roll) paint_roll(painter, answer->job, *found, area);
        else paint_pattern(painter, answer->job, *found, tab, area);
      },
      words_->text());
}

}  // namespace foldyard
