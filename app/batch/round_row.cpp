#include "batch/round_row.h"

#include <QBoxLayout>

namespace foldyard {
namespace {

QString round_words(int done, int all) {
  return all > 0 ? RoundRow::tr("Looking for better plans: round %1 of %2").arg(done).arg(all)
                 : RoundRow::tr("Planning the batch");
}

}  // namespace

RoundRow::RoundRow(BatchPlanner& planner, QWidget* parent)
    : ProgressRow({[&] { return planner.progress(); }, round_words, [&] { planner.stop(); }}, 0, parent) {
  static_cast<QBoxLayout*>(layout())->addStretch(1);
  bar()->setAccessibleName(tr("Rounds of betterment done"));
  stopper()->setToolTip(tr("End planning now and keep the best plan found so far"));
  connect(&planner, &BatchPlanner::busy_changed, this, &RoundRow::take_busy);
}

}  // namespace foldyard
