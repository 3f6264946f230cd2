#include "batch/hand_lists.h"

#include <algorithm>

#include "drawing/words.h"
#include "fold/fold_plan.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
namespace {

const KeptLength& kept_at(const Job& job, int at) { return job.order.kept[ix(at)]; }
const CutPanels& on_hand_at(const Job& job, int at) { return job.on_hand[ix(at)]; }

JobColumn read_column(const QString& head, const QString& help, std::function<QString(const Job&, int)> of, bool is_word) {
  JobColumn column{head, help, "", std::move(of)};
  column.is_word = is_word;
  return column;
}

// Of one length, as it is cut through one ply.
QString gives(const Job& job, const KeptLength& kept) {
  std::vector<std::int64_t> counts(job.panels.size());
  for (const KeptStep& step : kept.steps)
    if (step.kind == NodeKind::take) ++counts[ix(step.panel)];
  return yield_words(job, counts);
}

QString aim_name(BatchAim aim) {
  switch (aim) {
    case BatchAim::cloth: return tr("Least cloth, by its worth");
    case BatchAim::lifts: return tr("Fewest lays under the cutter");
    case BatchAim::minutes: return tr("Least time at the cutting table");
    default: return tr("Most worth in remnants that are kept");
  }
}

}  // namespace

JobList kept_list() {
  JobRows rows;
  rows.count = [](const Job& job) { return static_cast<int>(job.order.kept.size()); };
  rows.where = [](int row) { return QStringLiteral("order.kept[%1]").arg(row); };
  rows.called = [](const Job& job, int row) { return tr("lengths kept on “%1”").arg(text(kept_at(job, row).roll)); };
  rows.take = [](Job job, int row) {
    job.order.kept.erase(job.order.kept.begin() + row);
    return job;
  };
  rows.take_words = tr("let go of %1");
  JobColumn count{tr("Lengths"), tr("So many of them are kept"), "count",
                  [](const Job& job, int row) { return QString::number(kept_at(job, row).count); }};
  count.put = [](Job& job, int row, const QString& typed) {
    return put_count(job.order.kept[ix(row)].count, typed, job);
  };
  return {rows,
          {read_column(tr("Roll"), tr("The roll they are cut from"), [](const Job& job, int row) { return text(kept_at(job, row).roll); }, true),
           count,
           read_column(tr("Long"), tr("Each, along the roll, without its allowance"),
                       [](const Job& job, int row) { return length_words(kept_at(job, row).length, job.unit); }, false),
           read_column(tr("Folded"), tr("How they are folded"), [](const Job& job, int row) { return spoken(way_name(kept_at(job, row).way)); }, true),
           read_column(tr("Cut"), tr("Places that are cut in one, each through all plies below it"),
                       [](const Job& job, int row) { return gives(job, kept_at(job, row)); }, true)}};
}

JobList aim_list() {
  JobRows rows;
  rows.count = [](const Job& job) { return static_cast<int>(job.order.aims.size()); };
  rows.where = [](int row) { return QStringLiteral("order.aims[%1]").arg(row); };
  rows.called = [](const Job& job, int row) { return tr("“%1”").arg(aim_name(job.order.aims[ix(row)])); };
  rows.move = [](Job job, int row, int by) {
    std::swap(job.order.aims[ix(row)], job.order.aims[ix(row + by)]);
    return job;
  };
  rows.move_words = tr("move the aim %1");
  return {rows,
          {read_column(tr("What counts when the order is filled, most important first"),
                       tr("What comes first is never given up for what comes later"),
                       [](const Job& job, int row) { return aim_name(job.order.aims[ix(row)]); }, true)}};
}

JobList on_hand_list() {
  JobRows rows;
  rows.count = [](const Job& job) { return static_cast<int>(job.on_hand.size()); };
  rows.where = [](int row) { return QStringLiteral("on_hand[%1]").arg(row); };
  rows.called = [](const Job& job, int row) {
    const CutPanels& cut = on_hand_at(job, row);
    return tr("“%1” of %2").arg(text(job.panels[ix(cut.panel)].name), text(cut.cloth));
  };
  rows.take = [](Job job, int row) {
    job.on_hand.erase(job.on_hand.begin() + row);
    return job;
  };
  rows.take_words = tr("take %1 from what is on hand");
  JobColumn count{tr("On hand"), tr("Cut and not yet sewn; they serve the order"), "count",
                  [](const Job& job, int row) { return QString::number(on_hand_at(job, row).count); }};
  count.put = [](Job& job, int row, const QString& typed) {
    return put_count(job.on_hand[ix(row)].count, typed, job);
  };
  return {rows,
          {read_column(tr("Panel"), tr("A panel that is cut"),
                       [](const Job& job, int row) { return text(job.panels[ix(on_hand_at(job, row).panel)].name); }, true),
           read_column(tr("Cloth"), tr("The cloth it was cut from"), [](const Job& job, int row) { return text(on_hand_at(job, row).cloth); }, true),
           count}};
}

}  // namespace foldyard
