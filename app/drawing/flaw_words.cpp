#include "drawing/flaw_words.h"

#include <algorithm>
#include <optional>

#include "cloth/four_point.h"
#include "drawing/words.h"
#include "job/decimal.h"
#include "job/roll_of.h"
#include "language/local_numbers.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

std::vector<std::int64_t> none(const Job& job) {
  return std::vector<std::int64_t>(job.panels.size());
}

void count(const Plan& plan, const LostPanel& lost, std::vector<std::int64_t>& counts) {
  const Pattern& pattern = pattern_of(plan, plan.lengths[ix(lost.length)]);
  const int panel = pattern.panels[ix(lost.panel)].panel;
  ++counts[ix(panel)];
}

bool is_one(const std::vector<std::int64_t>& counts) {
  std::int64_t all = 0;
  for (const std::int64_t n : counts) all += n;
  return all == 1;
}

QString lost_words(const Job& job, const std::vector<std::int64_t>& counts) {
  return (is_one(counts) ? tr("%1 is lost") : tr("%1 are lost")).arg(yield_words(job, counts));
}

QString span_words(Span span, Unit unit) {
  return tr("%1 to %2").arg(length_words(span.from, unit), length_words(span.to, unit));
}

// The panels that a flaw takes from one length, or from all.
std::vector<std::int64_t> taken_by(const Job& job, const Plan& plan, int flaw,
                                   std::optional<int> length = {}) {
  std::vector<std::int64_t> counts = none(job);
  for (const LostPanel& lost : plan.lost)
    if (lost.flaw == flaw && (!length || lost.length == *length)) count(plan, lost, counts);
  return counts;
}

bool is_any(const std::vector<std::int64_t>& counts) {
  return std::any_of(counts.begin(), counts.end(), [](std::int64_t n) { return n > 0; });
}

QStringList lengths_under(const Plan& plan, Span flaw) {
  QStringList numbers;
  for (std::size_t i = 0; i < plan.lengths.size(); ++i)
    if (plan.lengths[i].on_roll.overlaps(flaw)) numbers << QString::number(i + 1);
  return numbers;
}

QString fate_of(const Job& job, const Plan& plan, int index) {
  const Flaw& flaw = roll_of(job, plan).flaws[ix(index)];
  const QStringList lengths = lengths_under(plan, flaw.along);
  const QString under = (lengths.size() == 1 ? tr("length %1") : tr("lengths %1")).arg(and_joined(lengths));
  const std::vector<std::int64_t> taken = taken_by(job, plan, index);
  if (is_any(taken)) return under + QStringLiteral(", ") + lost_words(job, taken);
  const bool is_cut_out = std::any_of(plan.cut_out.begin(), plan.cut_out.end(),
                                      [&](Span out) { return out.overlaps(flaw.along); });
  if (!lengths.isEmpty())
    return (is_cut_out ? tr("%1 and cloth cut out, between panels") : tr("%1, between panels")).arg(under);
  if (is_cut_out) return tr("cut out");
  return flaw.along.overlaps(plan.remnant) ? tr("in what is left of the roll")
                                           : tr("in a squared end");
}

QString across_words(const Flaw& flaw, const Job& job, const Roll& roll) {
  if (flaw.across.from <= roll.fabric.usable().from && flaw.across.to >= roll.fabric.usable().to)
    return tr("over the whole width");
  return tr("%1 from the left").arg(span_words(flaw.across, job.unit));
}

}  // namespace

QString flaw_name(const Flaw& flaw) {
  return flaw.kind.empty() ? tr("flaw") : QString::fromStdString(flaw.kind);
}

QString flaws_words(const Job& job, const Plan& plan) {
  const auto flaws = static_cast<qsizetype>(roll_of(job, plan).flaws.size());
  if (flaws == 0) return {};
  std::vector<std::int64_t> counts = none(job);
  for (const LostPanel& lost : plan.lost) count(plan, lost, counts);
  Length out;
  for (const Span span : plan.cut_out) out += span.size();
  QStringList costs;
  if (is_any(counts)) costs << tr("%1, cut but lost").arg(yield_words(job, counts));
  if (out > Length()) costs << tr("%1 of the roll, cut out").arg(length_words(out, job.unit));
  if (costs.size() == 2) costs = {tr("%1, and %2").arg(costs[0], costs[1])};
  return tr("%n flaw(s) cost(s) %1.", nullptr, static_cast<int>(flaws))
      .arg(costs.isEmpty() ? tr("no panel") : costs[0]);
}

QStringList flaw_lines(const Job& job, const Plan& plan) {
  QStringList lines;
  const Roll& roll = roll_of(job, plan);
  for (std::size_t i = 0; i < roll.flaws.size(); ++i) {
    const Flaw& flaw = roll.flaws[i];
    lines << tr("%1 at %2, %3: %4")
                 .arg(flaw_name(flaw), span_words(flaw.along, job.unit),
                      across_words(flaw, job, roll), fate_of(job, plan, static_cast<int>(i)));
  }
  return lines;
}

QStringList flaw_lines_of(const Job& job, const Plan& plan, int pattern) {
  QStringList lines;
  const Roll& roll = roll_of(job, plan);
  for (const FlawUnder& under : flaws_under(job, plan, pattern)) {
    const Flaw& flaw = roll.flaws[ix(under.flaw)];
    const std::vector<std::int64_t> taken = taken_by(job, plan, under.flaw, under.length);
    lines << tr("length %1: %2 at %3, %4: %5")
                 .arg(QString::number(under.length + 1), flaw_name(flaw),
                      span_words(under.flat.along, job.unit), across_words(flaw, job, roll),
                      is_any(taken) ? lost_words(job, taken) : tr("no panel is lost"));
  }
  return lines;
}

QString grade_words(const Job& job, const Roll& roll) {
  if (roll.flaws.empty()) return {};
  const bool yards = job.unit == Unit::inch || job.unit == Unit::yard;
  const FourPointGrade grade =
      four_point_grade(roll, yards ? PointUnit::yard : PointUnit::metre);
  return (yards ? tr("%n point(s) on the four-point scale, %1 per 100 square yards", nullptr, static_cast<int>(grade.points))
                : tr("%n point(s) on the four-point scale, %1 per 100 square metres", nullptr, static_cast<int>(grade.points)))
      .arg(local_numbers(QString::fromStdString(write_decimal(grade.hundredths, 2))));
}

std::vector<FlawUnder> flaws_under(const Job& job, const Plan& plan, int pattern) {
  std::vector<FlawUnder> found;
  const Roll& roll = roll_of(job, plan);
  for (std::size_t i = 0; i < plan.lengths.size(); ++i) {
    const LengthOnRoll& length = plan.lengths[i];
    if (plan.lays[ix(length.lay)].pattern != pattern) continue;
    const Length start = length.pattern_start(job.losses.allowance);
    const Span whole{Length(), plan.patterns[ix(pattern)].length};
    for (std::size_t f = 0; f < roll.flaws.size(); ++f) {
      const Flaw& flaw = roll.flaws[f];
      const Span along = intersection(whole, {flaw.along.from - start, flaw.along.to - start});
      if (!along.is_empty())
        found.push_back({static_cast<int>(i), static_cast<int>(f), {flaw.across, along}});
    }
  }
  return found;
}

}  // namespace foldyard
