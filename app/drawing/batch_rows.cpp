#include "drawing/batch_rows.h"

#include <map>

#include "cloth/cloth_of.h"
#include "drawing/words.h"
#include "job/roll_of.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
namespace {

Length height_of(const BatchAnswer& a, const BatchLay& lay) {
  Length height;
  for (const StackedLength& length : lay.lengths) {
    height += roll_of(a.job, plan_of(a.plan, length)).fabric.thickness * pattern_of(a.plan, length).plies;
  }
  return height;
}

QString gives(const BatchAnswer& a, const BatchLay& lay) {
  std::vector<std::int64_t> yield = pattern_yield(a.job, pattern_of(a.plan, lay));
  for (std::int64_t& count : yield) count *= std::ssize(lay.lengths);
  return yield_words(a.job, yield);
}

QStringList lay_row(const BatchAnswer& a, const BatchLay& lay, std::size_t number) {
  const Pattern& pattern = pattern_of(a.plan, lay);
  std::int64_t plies = 0;
  for (const StackedLength& length : lay.lengths) plies += pattern_of(a.plan, length).plies;
  return {QString::number(number),
          stack_words(a, lay),
          length_words(pattern.length, a.job.unit),
          spoken(way_name(pattern.fold.way)),
          QString::number(plies),
          length_words(height_of(a, lay), Unit::mm),
          QString::number(pattern.cuts.size()),
          gives(a, lay)};
}

// "4 of 96 cm, 1 of 52 cm", in the order along the roll.
QString lengths_words(const BatchAnswer& a, const Plan& plan) {
  std::map<Length, int, std::greater<>> counts;
  for (const LengthOnRoll& length : plan.lengths) ++counts[pattern_of(plan, length).length];
  QStringList words;
  for (const auto& [length, count] : counts) words << tr("%1 of %2").arg(count).arg(length_words(length, a.job.unit));
  return words.join(QStringLiteral(", "));
}

QString left_words(const BatchAnswer& a, const Plan& plan) {
  if (plan.remnant.is_empty()) return tr("nothing");
  const QString size = length_words(plan.remnant.size(), a.job.unit);
  return plan.remnant_kept ? size : tr("%1, an offcut").arg(size);
}

// Remnants in the lengths of a roll, by size.
std::map<std::pair<Length, Length>, int> remnants_in(const Plan& plan) {
  std::map<std::pair<Length, Length>, int> found;
  for (const LengthOnRoll& length : plan.lengths) {
    for (const Rest& rest : pattern_of(plan, length).rests) {
      if (rest.kind == RestKind::remnant) ++found[{rest.flat.across.size(), rest.flat.along.size()}];
    }
  }
  return found;
}

}  // namespace

const Pattern& pattern_of(const BatchPlan& plan, const BatchLay& lay) {
  return pattern_of(plan, lay.lengths[0]);
}

QString stack_words(const BatchAnswer& a, const BatchLay& lay) {
  QStringList words;
  for (std::size_t i = 0; i < lay.lengths.size();) {
    const int roll = lay.lengths[i].roll;
    int count = 0;
    for (; i < lay.lengths.size() && lay.lengths[i].roll == roll; ++i) ++count;
    words << QStringLiteral("%1 × %2").arg(count).arg(text(roll_of(a.job, a.plan.rolls[ix(roll)]).name));
  }
  return words.join(QStringLiteral(", "));
}

BatchTable lays_table(const BatchAnswer& a) {
  BatchTable table{BatchTableKind::lays, tr("Lays, in cutting order"),
                   {tr("lay"), tr("lengths, bottom to top"), tr("each"), tr("folded"), tr("plies"), tr("high"), tr("cuts"), tr("gives")},
                   {}, {}};
  for (const BatchLay& lay : a.plan.lays) table.rows.push_back(lay_row(a, lay, table.rows.size() + 1));
  return table;
}

// Of the lengths of a roll, each way once.
QString ways_words(const Plan& plan) {
  QStringList ways;
  for (const LengthOnRoll& length : plan.lengths) {
    const Lay& lay = plan.lays[ix(length.lay)];
    const QString way = spoken(way_name(plan.patterns[ix(lay.pattern)].fold.way));
    if (!ways.contains(way)) ways << way;
  }
  return ways.join(QStringLiteral("; "));
}

BatchTable rolls_table(const BatchAnswer& a) {
  BatchTable table{BatchTableKind::rolls, tr("Rolls"),
                   {tr("roll"), tr("lengths"), tr("folded"), tr("cut off"), tr("left on it")}, {}, {}};
  for (const Plan& plan : a.plan.rolls)
    table.rows.push_back({text(roll_of(a.job, plan).name), lengths_words(a, plan), ways_words(plan),
                          length_words(plan.remnant.from, a.job.unit), left_words(a, plan)});
  return table;
}

BatchTable remnants_table(const BatchAnswer& a) {
  BatchTable table{BatchTableKind::remnants, tr("Remnants to keep"),
                   {tr("cloth"), tr("size"), tr("pieces"), tr("from")}, {}, {}};
  for (const Plan& plan : a.plan.rolls) {
    const Roll& roll = roll_of(a.job, plan);
    if (plan.remnant_kept)
      table.rows.push_back({text(cloth_of(roll)), size_words(roll.fabric.width, plan.remnant.size(), a.job.unit),
                            QStringLiteral("1"), text(roll.name)});
    for (const auto& [size, count] : remnants_in(plan))
      table.rows.push_back({text(cloth_of(roll)), size_words(size.first, size.second, a.job.unit),
                            QString::number(count), text(roll.name)});
  }
  return table;
}

QStringList webbing_row(const Job& job, const WebbingPlan& plan, const LengthCuts& cuts) {
  const Webbing& webbing = job.webbings[ix(plan.webbing)];
  const Length whole = cuts.end < 0 ? webbing.roll : webbing.ends[ix(cuts.end)];
  Length used;
  QStringList words;
  for (std::size_t i = 0; i < plan.wanted.size(); ++i) {
    used += (plan.wanted[i].length + webbing.loss) * cuts.counts[i];
    if (cuts.counts[i] > 0) words << tr("%1 of %2").arg(cuts.counts[i]).arg(length_words(plan.wanted[i].length, job.unit));
  }
  const QString from = cuts.end < 0 ? tr("%1 × a roll of %2").arg(cuts.rolls).arg(length_words(whole, job.unit))
                                    : tr("the end of %1").arg(length_words(whole, job.unit));
  return {text(webbing.name), from, words.join(QStringLiteral(", ")), length_words(whole - used, job.unit)};
}

}  // namespace foldyard
