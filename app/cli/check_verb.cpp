#include "cli/check_verb.h"

#include "cli/call.h"
#include "cli/goods_lines.h"
#include "drawing/facts.h"
#include "drawing/flaw_words.h"
#include "inspect/inspect_plan.h"
#include "job/plan_roll.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

struct Tally {
  int plans = 0;
  int sound = 0;
  int proved = 0;
  int refused = 0;
  QString faults;
};

void inspect_result(const Job& job, const QString& title, const WayResult& result, Tally& tally) {
  if (!result.plan) {
    ++tally.refused;
    return;
  }
  ++tally.plans;
  tally.proved += result.plan->proof.proved;
  const std::vector<std::string> findings = inspect_plan(job, *result.plan);
  tally.sound += findings.empty();
  for (const std::string& finding : findings) {
    tally.faults += QStringLiteral("%1, %2: %3\n")
                        .arg(title, QString::fromStdString(way_key(result.way)),
                             QString::fromStdString(finding));
  }
}

void check_roll(const Job& job, int roll, Aim aim, Tally& tally) {
  const QString title =
      tr("Roll %1, %2").arg(QString::fromStdString(job.rolls[ix(roll)].name), aim_key(aim));
  for (const WayResult& result : compare_ways(job, roll, aim).ways) {
    inspect_result(job, title, result, tally);
  }
}

// "Roll Oak: one-way; railroaded." for each roll and panel of which there is
// something to say.
QString fact_line(const QString& line, const std::string& name, const QStringList& facts) {
  return facts.isEmpty() ? QString() : line.arg(QString::fromStdString(name), facts.join(QStringLiteral("; ")));
}

QString facts_words(const Job& job) {
  QString words;
  for (const Roll& roll : job.rolls) words += fact_line(tr("Roll %1: %2.\n"), roll.name, roll_facts(roll, job.unit));
  for (const Panel& panel : job.panels) words += fact_line(tr("Panel %1: %2.\n"), panel.name, panel_facts(panel));
  return words;
}

QString tally_words(const Job& job, const Tally& tally) {
  return tr("%1 rolls and %2 panels read. %3 plans made for both aims, %4 of them "
            "proved best; %5 were inspected and sound. %6 times a way could not be "
            "planned (foldyard compare says why).\n")
      .arg(job.rolls.size())
      .arg(job.panels.size())
      .arg(tally.plans)
      .arg(tally.proved)
      .arg(tally.plans == tally.sound ? tr("all", "plans") : QString::number(tally.sound))
      .arg(tally.refused);
}

// How each roll with flaws is graded, to judge it before it is bought.
QString grades_words(const Job& job) {
  QString words;
  for (const Roll& roll : job.rolls) {
    if (roll.flaws.empty()) continue;
    words += tr("Roll %1: %n flaw(s), %2.\n", nullptr, static_cast<int>(roll.flaws.size()))
                 .arg(QString::fromStdString(roll.name), grade_words(job, roll));
  }
  return words;
}

}  // namespace

Outcome check_verb(const Job& job) {
  Tally tally;
  for (int roll = 0; roll < static_cast<int>(job.rolls.size()); ++roll) {
    check_roll(job, roll, Aim::most_worth, tally);
    check_roll(job, roll, Aim::worth_less_time, tally);
  }
  const QString words =
      facts_words(job) + grades_words(job) + goods_legend(job) + tally.faults + tally_words(job, tally);
  if (tally.plans == 0) {
    return {Exit::cannot_plan, words, tr("no roll can be planned in any way")};
  }
  if (tally.sound < tally.plans) {
    return {Exit::cannot_plan, words,
            tr("a plan is not sound; this is a fault of Foldyard, do not cut by it")};
  }
  return {Exit::done, words, {}};
}

}  // namespace foldyard
