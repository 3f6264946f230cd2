#include "window/guide_strip.h"

#include <algorithm>

#include "fields/flow_row.h"
#include "measure/index.h"

namespace foldyard {
namespace {

QString step_words(int step) {
  switch (step) {
    case GuideStrip::roll: return GuideStrip::tr("Put a roll on the table");
    case GuideStrip::sewn: return GuideStrip::tr("Say what you sew");
    default: return GuideStrip::tr("Print the diagram");
  }
}

}  // namespace

GuideStrip::GuideStrip(QWidget* parent)
    : QFrame(parent), own_roll_(new QPushButton(tr("Begin with your own roll…"))), closer_(new QPushButton(tr("Close"))) {
  setProperty("strip", true);
  setAccessibleName(tr("First steps"));
  auto* row = new FlowRow(this);
  row->setContentsMargins(8, 3, 8, 3);
  for (int i = 0; i < kSteps; ++i) {
    steps_[ix(i)] = new QPushButton;
    steps_[ix(i)]->setProperty("step", true);
    row->addWidget(steps_[ix(i)]);
    connect(steps_[ix(i)], &QPushButton::clicked, this, [this, i] { emit wanted(i); });
    show_step(static_cast<Step>(i));
  }
  row->add_gap();
  row->addWidget(own_roll_);
  row->addWidget(closer_);
  own_roll_->setToolTip(tr("Its width and length and what you sew: then there is a plan"));
  closer_->setToolTip(tr("Help brings the first steps back"));
  closer_->setAccessibleName(tr("Close the first steps"));
}

bool GuideStrip::is_done() const { return std::all_of(done_.begin(), done_.end(), [](bool done) { return done; }); }

void GuideStrip::tick(Step step, bool is_done) {
  if (done_[step] == is_done) return;
  done_[step] = is_done;
  show_step(step);
}

void GuideStrip::show_step(Step step) {
  auto* button = steps_[step];
  const QString words = step_words(step);
  button->setText(QStringLiteral("%1  %2").arg(done_[step] ? QStringLiteral("✓") : QString::number(step + 1), words));
  button->setAccessibleName((done_[step] ? tr("Step %1 of 3, done: %2") : tr("Step %1 of 3: %2")).arg(step + 1).arg(words));
}

}  // namespace foldyard
