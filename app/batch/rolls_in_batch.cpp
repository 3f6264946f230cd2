#include "batch/rolls_in_batch.h"

#include <map>

#include "cloth/cloth_of.h"
#include "drawing/batch_rows.h"
#include "drawing/words.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

// The plan's own cells of each roll that is cut, without the roll's name.
std::map<int, QStringList> planned_cells(const BatchAnswer& answer) {
  std::map<int, QStringList> cells;
  const BatchTable table = rolls_table(answer);
  for (std::size_t i = 0; i < table.rows.size(); ++i) cells[answer.plan.rolls[i].roll] = table.rows[i].mid(1);
  return cells;
}

QStringList first_cells(const Job& job, const Roll& roll) {
  const QString name = QString::fromStdString(roll.name);
  return {roll.in_batch == InBatch::must ? tr("%1, must be cut").arg(name) : name, QString::fromStdString(cloth_of(roll)), length_words(roll.length, job.unit)};
}

}  // namespace

TickedTable rolls_in_batch(const Job& job, const BatchAnswer* answer) {
  TickedTable all{{BatchTableKind::rolls, tr("Rolls"), {}, {}, {}}, {}};
  all.table.head = QStringList{tr("roll"), tr("cloth"), tr("length")} + rolls_table(answer ? *answer : BatchAnswer{}).head.mid(1);
  const auto planned = answer ? planned_cells(*answer) : std::map<int, QStringList>();
  for (int i = 0; i < std::ssize(job.rolls); ++i) {
    const Roll& roll = job.rolls[ix(i)];
    const bool is_in = roll.in_batch != InBatch::never;
    const auto cut = planned.find(i);
    QStringList cells = first_cells(job, roll);
    if (!is_in) cells << tr("left out");
    else if (cut != planned.end()) cells += cut->second;
    else cells << (answer ? tr("not cut") : QStringLiteral("–"));
    all.table.rows.push_back(cells);
    all.ticks.push_back(is_in);
  }
  return all;
}

}  // namespace foldyard
