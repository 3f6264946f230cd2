#include "drawing/words.h"

#include <algorithm>
#include <map>

#include "cutting/shape.h"
#include "job/roll_of.h"
#include "job/yield_range.h"
#include "language/local_numbers.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr QChar kNoBreak(0xa0);

QString joined(const QStringList& words) {
  if (words.size() < 2) return words.join(QString());
  return tr("%1 and %2").arg(words.mid(0, words.size() - 1).join(QStringLiteral(", ")), words.back());
}

QString lengths_words(const Plan& plan, Unit unit) {
  QStringList words;
  for (int i = 0; i < static_cast<int>(plan.patterns.size()); ++i)
    words << tr("%n length(s) of %1", nullptr, static_cast<int>(lengths_of(plan, i)))
                 .arg(length_words(plan.patterns[ix(i)].length, unit));
  return joined(words);
}

QString remnant_words(const Job& job, const Plan& plan) {
  if (plan.remnant.is_empty()) return tr("nothing is left of the roll");
  const Length width = roll_of(job, plan).fabric.width;
  const QString size = size_words(width, plan.remnant.size(), job.unit);
  return (plan.remnant_kept ? tr("the remnant is %1") : tr("an offcut of %1 is left")).arg(size);
}

// Of hundredths of a percent.
QString percent(std::int64_t hundredths) {
  return local_numbers(QString::number(static_cast<double>(hundredths) / 100));
}

QString way_words(const FoldWay& way) {
  if (way == FoldWay{}) return tr("Lay the cloth open");
  return tr("Fold %1").arg(spoken(way_name(way)));
}

QString sentence(QString words) {
  words = words.trimmed();
  if (words.isEmpty()) return words;
  words[0] = words[0].toUpper();
  return words.endsWith(QLatin1Char('.')) ? words : words + QLatin1Char('.');
}

}  // namespace

QString length_words(Length length, Unit unit) {
  return local_numbers(text(write_length(length, unit)));
}

QString number_words(Length length, Unit unit) {
  return unit == Unit::yard ? length_words(length, unit) : local_numbers(text(write_number(length, unit)));
}

QString size_words(Length across, Length along, Unit unit) {
  const std::string first =
      unit == Unit::yard ? write_length(across, unit) : write_number(across, unit);
  QString words = local_numbers(text(first)) + QStringLiteral(" × ") + length_words(along, unit);
  return words.replace(QLatin1Char(' '), kNoBreak);
}

QString size_words(const Rect& rect, Unit unit) {
  return size_words(rect.across.size(), rect.along.size(), unit);
}

QString panel_size_words(const Job& job, const Fabric& fabric, int panel, bool turned) {
  const Panel& goods = job.panels[ix(panel)];
  const SizeOnCloth cut = size_on_cloth(goods, fabric, turned);
  const QString words = size_words(cut.across, cut.along, job.unit);
  if (!fabric.shrinkage.is_any()) return words;
  const bool sideways = lies_sideways(goods, fabric, turned);
  return tr("cut %1, finishes %2")
      .arg(words, size_words(sideways ? goods.along : goods.across,
                             sideways ? goods.across : goods.along, job.unit));
}

QString nap_words(const Ply& ply, const Fabric& fabric) {
  switch (nap_run(ply, fabric.railroaded)) {
    case NapRun::away: return tr("nap away from you");
    case NapRun::towards: return tr("nap towards you");
    case NapRun::right: return tr("nap to the right");
    case NapRun::left: return tr("nap to the left");
  }
  return {};
}

QString unit_words(Unit unit) {
  switch (unit) {
    case Unit::mm:
      return tr("millimetres");
    case Unit::cm:
      return tr("centimetres");
    case Unit::m:
      return tr("metres");
    case Unit::inch:
      return tr("inches");
    case Unit::yard:
      return tr("yards and inches");
  }
  return {};
}

QString worth_words(Worth worth) {
  return local_number(worth.in_whole(), 2);
}

QString minutes_words(Duration time) {
  const double minutes = time.in_minutes();
  return local_number(minutes, minutes < 10 ? 1 : 0) + QStringLiteral(" min");
}

double use_percent(Area used, Area cloth) {
  const double whole = static_cast<double>(cloth.square_units());
  return whole > 0 ? 100.0 * static_cast<double>(used.square_units()) / whole : 0;
}

QString use_words(Area used, Area cloth) { return local_number(use_percent(used, cloth), 1) + QStringLiteral(" %"); }

QString and_joined(const QStringList& words) {
  QString all = words.value(0);
  for (qsizetype i = 1; i < words.size(); ++i) all = tr("%1 and %2").arg(all, words[i]);
  return all;
}

QString pattern_letter(int pattern) {
  const QChar last(u'A' + pattern % 26);
  return pattern < 26 ? QString(last) : pattern_letter(pattern / 26 - 1) + last;
}

QString panel_code(int panel) {
  return QStringLiteral("P") + QString::number(panel + 1);
}

QString yield_words(const Job& job, const std::vector<std::int64_t>& yield) {
  QStringList words;
  for (std::size_t i = 0; i < yield.size() && i < job.panels.size(); ++i)
    if (yield[i] > 0)
      words << QString::number(yield[i]) + kNoBreak + QStringLiteral("× ") +
                   text(job.panels[i].name);
  const bool commas = words.join(QString()).contains(QLatin1Char(','));
  return commas ? words.join(QStringLiteral("; ")) : joined(words);
}

std::vector<std::int64_t> pattern_yield(const Job& job, const Pattern& pattern) {
  std::vector<std::int64_t> yield(job.panels.size());
  for (const PlacedPanel& placed : pattern.panels) ++yield[ix(placed.panel)];
  return yield;
}

std::int64_t lengths_of(const Plan& plan, int pattern) {
  std::int64_t count = 0;
  for (const Lay& lay : plan.lays)
    if (lay.pattern == pattern) count += lay.lengths;
  return count;
}

QString plies_words(const Plan& plan, int pattern) {
  int most = 0;
  for (const Lay& lay : plan.lays)
    if (lay.pattern == pattern) most = std::max(most, lay.lengths);
  const int plies = plan.patterns[ix(pattern)].plies;
  if (most < 2) return tr("Under the blade lie at most %n ply(ies) of one length.", nullptr, plies);
  return tr("Under the blade lie at most %n ply(ies) of one length, %1 of a lay of %2.", nullptr, plies)
      .arg(QString::number(plies * most), QString::number(most));
}

QString lays_words(const Plan& plan, int pattern) {
  std::map<int, int, std::greater<>> by_stack;
  for (const Lay& lay : plan.lays)
    if (lay.pattern == pattern) ++by_stack[lay.lengths];
  QStringList words;
  for (const auto& [stack, lays] : by_stack)
    words << (words.isEmpty() ? tr("%n lay(s) of %1", nullptr, lays).arg(stack)
                              : tr("%1 of %2", "lays of so many lengths").arg(lays).arg(stack));
  return joined(words);
}

QString roll_words(const Job& job, const Plan& plan) {
  const Roll& roll = roll_of(job, plan);
  const QString length = length_words(roll.length, job.unit);
  QString words = tr("Roll %1: %2 of cloth %3 wide, %4 usable between the selvedges")
                      .arg(text(roll.name), is_estimated(roll) ? tr("at least %1").arg(length) : length,
                           length_words(roll.fabric.width, job.unit),
                           length_words(roll.fabric.usable_width(), job.unit));
  if (roll.fabric.nap == Nap::one_way) words += tr(", one-way nap");
  if (roll.fabric.railroaded)
    words += tr(", railroaded (pattern and nap run from selvedge to selvedge)");
  if (roll.fabric.shrinkage.is_any())
    words += tr(", shrinks %1 % along and %2 % across")
                 .arg(percent(roll.fabric.shrinkage.along), percent(roll.fabric.shrinkage.across));
  return words;
}

QString limit_words(const Job& job, const Plan& plan) {
  QStringList words;
  for (std::size_t i = 0; i < job.panels.size() && i < plan.yield.size(); ++i)
    if (job.panels[i].at_most)
      words << tr("%1 %2 of at most %3").arg(text(job.panels[i].name), QString::number(plan.yield[i]), QString::number(*job.panels[i].at_most));
  return words.isEmpty() ? QString() : tr(" Limits: %1.").arg(words.join(QStringLiteral("; ")));
}

QString answer_words(const Job& job, const Plan& plan) {
  const QString yield = yield_words(job, plan.yield);
  return tr("%1. %2; cross-cut %3; %4, %5, %6. %7 of the cloth ends in panels; %8.")
      .arg(yield.isEmpty() ? tr("No panels") : yield, way_words(plan.way),
           lengths_words(plan, job.unit),
           tr("%n lay(s)", nullptr, static_cast<int>(plan.lays.size())),
           tr("%n cut(s)", nullptr, static_cast<int>(plan.cuts)), minutes_words(plan.time),
           use_words(plan.used, plan.cloth), remnant_words(job, plan)) + limit_words(job, plan);
}

QString proof_words(const Plan& plan) {
  const QString note = sentence(spoken(plan.proof.note));
  if (plan.proof.proved) return tr("Proved. %1").arg(note);
  const Worth reached = plan.aim == Aim::most_worth ? plan.worth : plan.net;
  return tr("Not proved best: this plan is worth %1, no plan can be worth more than %2. %3")
      .arg(worth_words(reached), worth_words(plan.proof.bound), note);
}

QString folding_words(const Pattern& pattern) {
  const FoldPlan& fold = pattern.fold;
  const bool left_on_top = !fold.levels.empty() && fold.levels.front() != 0;
  QString words;
  switch (fold.way.kind) {
    case FoldKind::open:
      words = tr("Lay the length open, face up.");
      break;
    case FoldKind::selvedge_to_selvedge:
      words = left_on_top
                  ? tr("Fold the left side over the right, selvedge on selvedge.")
                  : tr("Fold the right side over the left, selvedge on selvedge.");
      break;
    case FoldKind::off_centre:
      words = left_on_top ? tr("Fold the left side over to the right.")
                          : tr("Fold the right side over to the left.");
      break;
    case FoldKind::both_edges_in:
      words = tr("Fold both sides in over the middle.");
      break;
    case FoldKind::fan:
      words = tr("Fold to and fro into %1 plies.").arg(fold.levels.size());
      break;
    case FoldKind::quarters:
      words = tr("Fold double, then double again.");
      break;
  }
  if (fold.way.end_to_end)
    words += tr(" Then bring the near end over onto the far end.");
  return words;
}

QStringList fold_line_words(const Pattern& pattern, Length width, Unit unit) {
  QStringList words;
  const auto& lines = pattern.fold.lines;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const Length left = lines[i], right = width - lines[i];
    const QString edge = left == right  ? tr("either edge")
                         : left < right ? tr("the left edge")
                                        : tr("the right edge");
    words << tr("fold line %1: %2 from %3")
                 .arg(QString::number(i + 1), length_words(std::min(left, right), unit), edge);
  }
  if (pattern.fold.way.end_to_end)
    words << tr("last fold, across: %1 from either end")
                 .arg(length_words(pattern.length / 2, unit));
  return words;
}

}  // namespace foldyard
