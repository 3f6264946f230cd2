#include "window/busy_row.h"

#include <QLayout>

namespace foldyard {
namespace {

constexpr int kLongMs = 200;

QString way_words(int done, int all) {
  return all > 0 ? BusyRow::tr("Planning: %1 of %2 fold ways done").arg(done).arg(all) : BusyRow::tr("Planning");
}

}  // namespace

BusyRow::BusyRow(Planner& planner, QWidget* parent)
    : ProgressRow({[&] { return planner.progress(); }, way_words, [&] { planner.stop(); }}, kLongMs, parent) {
  layout()->setContentsMargins(8, 0, 8, 0);
  bar()->setAccessibleName(tr("Fold ways planned"));
  stopper()->setToolTip(tr("End planning now and show the best found so far (Ctrl+.)"));
  stopper()->setShortcut(tr("Ctrl+."));
  stopper()->setFocusPolicy(Qt::TabFocus);
  connect(&planner, &Planner::busy_changed, this, &BusyRow::take_busy);
}

}  // namespace foldyard
