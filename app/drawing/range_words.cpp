#include "drawing/range_words.h"

#include <algorithm>

#include "drawing/words.h"
#include "cloth/roll_estimate.h"
#include "job/decimal.h"
#include "language/local_numbers.h"
#include "language/tr.h"
#include "language/utf8.h"
#include "measure/index.h"
#include "measure/write_length.h"

namespace foldyard {

namespace {

constexpr QChar kNoBreak(0xa0);

Length coarse(Unit unit) {
  return is_imperial(unit) ? Length::units(Length::kUnitsPerInch) : Length::mm(10);
}
Length fine(Unit unit) { return is_imperial(unit) ? Length::inches64(4) : Length::mm(1); }

Length down(Length length, Length step) { return length / step * step; }
Length up(Length length, Length step) { return down(length + step - Length::units(1), step); }
Length nearest(Length length, Length step) { return down(length + step / 2, step); }

QString from_words(Length from, Unit unit) { return length_words(up(from, fine(unit)), unit); }

QString give_words(const MeasuredLength& m, Unit unit) {
  const QString value = length_words(m.value, unit);
  if (m.give.is_zero()) return value;
  return value + QStringLiteral(" (± %1)").arg(length_words(m.give, unit));
}

// A thickness reads best in millimetres whatever the job's unit.
QString thickness_words(const MeasuredLength& m) { return give_words(m, Unit::mm); }

QString decimal_words(const MeasuredCount& m, int places, const QString& unit) {
  const QString value = local_numbers(text(write_decimal(m.value, places))) + unit;
  if (m.give == 0) return value;
  return value + QStringLiteral(" (± %1)").arg(local_numbers(text(write_decimal(m.give, places))) + unit);
}

QString on_tube(const MeasuredLength& outer, const MeasuredLength& tube, Unit unit) {
  return tr("%1 on a tube of %2").arg(give_words(outer, unit), give_words(tube, unit));
}

QString words_of(const ByDiameters& m, Unit unit) {
  return tr("its diameters: %1, one ply %2").arg(on_tube(m.outer, m.tube, unit), thickness_words(m.thickness));
}
QString words_of(const ByTurns& m, Unit unit) {
  return tr("its turns: %1 of them, %2").arg(decimal_words(m.turns, 0, {}), on_tube(m.outer, m.tube, unit));
}
QString words_of(const ByWeight& m, Unit) {
  return tr("its weight: %1 with a tube of %2, cloth of %3")
      .arg(decimal_words(m.roll, 3, QStringLiteral(" kg")), decimal_words(m.tube, 3, QStringLiteral(" kg")),
           decimal_words(m.per_square_metre, 1, QStringLiteral(" g/m²")));
}

QString count_words(const CountRange& c, const QString& name) {
  const QString panels = kNoBreak + QStringLiteral("× ") + name;
  if (c.least == c.most) return QString::number(c.least) + panels;
  return tr("%1 to %2%3 (%4 most likely)")
      .arg(QString::number(c.least), QString::number(c.most), panels, QString::number(c.likely));
}

const Plan& last_plan(const YieldRange& range) { return *range.steps.steps.back().plan; }

QString worth_range(const YieldRange& range) {
  const Worth least = value_of(range.first), most = value_of(last_plan(range));
  const bool by_worth = range.first.aim == Aim::most_worth;
  if (least == most) return (by_worth ? tr("worth %1") : tr("worth, after your time, %1")).arg(worth_words(least));
  return (by_worth ? tr("worth %1 to %2, most likely %3") : tr("worth, after your time, %1 to %2, most likely %3"))
      .arg(worth_words(least), worth_words(most), worth_words(value_of(range.likely)));
}

QString more_words(Worth more) { return QStringLiteral("+ ") + worth_words(more); }

// Which pattern of the plan a pattern of the rest is, if any.
int known_pattern(const Plan& first, const Pattern& pattern) {
  const auto found = std::find(first.patterns.begin(), first.patterns.end(), pattern);
  return found == first.patterns.end() ? -1 : static_cast<int>(found - first.patterns.begin());
}

QString lengths_of_rest(const Job& job, const Plan& first, const Plan& rest) {
  QStringList words;
  for (int i = 0; i < static_cast<int>(rest.patterns.size()); ++i) {
    const Pattern& pattern = rest.patterns[ix(i)];
    const int known = known_pattern(first, pattern);
    words << QStringLiteral("%1 × %2 %3")
                 .arg(QString::number(lengths_of(rest, i)), length_words(pattern.length, job.unit),
                      known < 0 ? tr("(new)")
                                : tr("(pattern %1)").arg(pattern_letter(known)));
  }
  QString all = words.value(0);
  for (qsizetype i = 1; i < words.size(); ++i) all = tr("%1 and %2").arg(all, words[i]);
  return all;
}

bool has_new_pattern(const YieldRange& range) {
  for (const LengthStep& step : range.further.steps)
    if (step.plan && std::any_of(step.plan->patterns.begin(), step.plan->patterns.end(),
                                 [&](const Pattern& p) { return known_pattern(range.first, p) < 0; }))
      return true;
  return false;
}

}  // namespace

QString estimate_words(const LengthEstimate& estimate, Unit unit) {
  const Length step = coarse(unit), least = down(estimate.least, step);
  const QString from = unit == Unit::yard ? length_words(least, unit) : local_numbers(text(write_number(least, unit)));
  return tr("%1 to %2, most likely %3")
      .arg(from, length_words(up(estimate.most, step), unit),
           length_words(nearest(estimate.likely, step), unit));
}

QString measure_words(const RollMeasure& measure, Unit unit) {
  return std::visit([unit](const auto& by) { return words_of(by, unit); }, measure);
}

QString estimated_words(const Job& job, const Roll& roll) {
  if (!is_estimated(roll)) return {};
  const Result<LengthEstimate> range = estimate_of(roll);
  if (!range) return {};
  return tr("Its length is estimated: %1, from %2. The plan can be cut even from the "
                        "least of it.")
      .arg(estimate_words(*range, job.unit), measure_words(*roll.measured, job.unit));
}

QString range_words(const Job& job, const YieldRange& range) {
  QStringList words;
  for (std::size_t i = 0; i < range.yield.size(); ++i)
    if (range.yield[i].most > 0) words << count_words(range.yield[i], text(job.panels[i].name));
  return tr("By its length the roll gives %1; %2.")
      .arg(words.join(QStringLiteral(", ")), worth_range(range));
}

QString steps_note(const YieldRange& range) {
  if (range.steps.steps.size() < 2) return tr("Within the estimate no length gives more.");
  const QString note =
      range.steps.is_all
          ? tr("These are all lengths at which the best plan gets better.")
          : tr("The best plan gets better at more lengths than these; each of these is "
                           "the least length for what stands beside it.");
  return range.proved ? note : tr("%1 Not all of these plans are proved best.").arg(note);
}

QString order_words(const Job& job, const YieldRange& range) {
  const std::size_t count = range.first.lengths.size();
  const Length gone = range.first.remnant.from, step = fine(job.unit);
  return tr("Cut all %n length(s) of the plan first: even the shortest roll has them. Then measure "
            "what is left, from the last cross-cut to the end of the roll. It is %1 to "
            "%2; if it is as much as below or more, cut what stands beside it.",
            nullptr, static_cast<int>(count))
      .arg(length_words(down(range.estimate.least - gone, step), job.unit),
           length_words(up(range.estimate.most - gone, step), job.unit));
}

QString further_note(const YieldRange& range) {
  if (range.further.steps.size() < 2) return tr("No length of it gives more.");
  QStringList notes;
  if (range.most_lost)
    notes << (*range.most_lost == Worth()
                  ? tr("Whatever the length, this is worth as much as having known it.")
                  : tr("Whatever the length, this is worth at most %1 less than having "
                                   "known it.")
                        .arg(worth_words(*range.most_lost)));
  if (!range.further.is_all)
    notes << tr("Between these there are more: give the job the length found and plan again.");
  else if (has_new_pattern(range))
    notes << tr("For the cuts of a new length, give the job the length found and plan again.");
  return notes.join(QLatin1Char(' '));
}

std::vector<RangeRow> step_rows(const Job& job, const YieldRange& range) {
  std::vector<RangeRow> rows;
  const std::vector<LengthStep>& steps = range.steps.steps;
  for (std::size_t i = 1; i < steps.size(); ++i)
    rows.push_back({from_words(steps[i].from, job.unit), yield_words(job, steps[i].plan->yield),
                    more_words(value_of(steps[i].plan) - value_of(steps[i - 1].plan))});
  return rows;
}

std::vector<RangeRow> further_rows(const Job& job, const YieldRange& range) {
  std::vector<RangeRow> rows;
  for (const LengthStep& step : range.further.steps)
    if (step.plan)
      rows.push_back({from_words(step.from, job.unit),
                      lengths_of_rest(job, range.first, *step.plan) + QStringLiteral(": ") +
                          yield_words(job, step.plan->yield),
                      more_words(value_of(step.plan))});
  return rows;
}

}  // namespace foldyard
