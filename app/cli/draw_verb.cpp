#include "cli/draw_verb.h"

#include "cli/choice.h"
#include "cli/interrupt.h"
#include "cli/range_answer.h"
#include "cli/sheet_choice.h"
#include "file/safe_write.h"
#include "job/plan_roll.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

constexpr int kDotsPerInch = 150;

QByteArray drawing_of(const Sheet& sheet, const Call& call) {
  switch (call.format) {
    case Format::pdf: return sheet_pdf(sheet, call.pages);
    case Format::svg: return sheet_svg(sheet, call.pages);
    default: return sheet_png(sheet, kDotsPerInch, call.pages);
  }
}

QString why_not(const Comparison& comparison, const Call& call) {
  if (!call.way) return refusal_words(comparison);
  for (const WayResult& result : comparison.ways) {
    if (result.way == *call.way) return spoken(result.refused) + QLatin1Char('.');
  }
  return {};
}

QString done_words(const Sheet& sheet, const QString& roll, const Call& call) {
  const auto pages = pages_in(sheet, call.pages).size();
  const int count = static_cast<int>(pages);
  if (call.templates)
    return tr("Drew templates for roll %1 on %n page(s) to %2. Print it at 100 %.\n", nullptr, count)
        .arg(roll, call.to);
  return tr("Drew roll %1, folded %2, on %n page(s) to %3. Print it at 100 %.\n", nullptr, count)
      .arg(roll, spoken(way_name(sheet.plan().way)), call.to);
}

// The sheet that the call asks for. REQUIRES a plan at the way.
Result<Sheet> sheet_of(const Job& job, const Comparison& comparison, int way, const Call& call,
                       const SearchBudget& budget) {
  const Plan& plan = *comparison.ways[ix(way)].plan;
  const Result<SheetOptions> options = sheet_options(call, job, plan);
  if (!options) return options.problem();
  std::optional<YieldRange> range;
  if (options->diagram) range = range_of(job, plan, budget);
  Sheet sheet(job, comparison, way, *options, std::move(range));
  if (const auto problem = wrong_pages(call, sheet)) return *problem;
  return sheet;
}

}  // namespace

Outcome draw_verb(const Job& job, const Call& call) {
  const int roll = chosen_rolls(job, call).front();
  const QString name = QString::fromStdString(job.rolls[ix(roll)].name);
  const Interruptible interruptible;
  const Comparison comparison = compare_ways(job, roll, call.aim, interruptible.budget());
  const int way = chosen_way(comparison, call);
  if (way < 0) {
    return {Exit::cannot_plan, {}, tr("Roll %1 cannot be planned: %2")
                                       .arg(name, why_not(comparison, call))};
  }
  const Result<Sheet> sheet = sheet_of(job, comparison, way, call, interruptible.budget());
  if (!sheet) return refusal(Exit::wrong_call, sheet.problem());
  const QByteArray bytes = drawing_of(*sheet, call);
  if (bytes.isEmpty()) {
    return {Exit::cannot_plan, {}, tr("The diagram could not be drawn; try another "
                                                  "kind of file.")};
  }
  if (const auto problem = safe_write(call.to, bytes)) {
    return refusal(Exit::wrong_call, *problem);
  }
  return {Exit::done, done_words(*sheet, name, call), interruptible.complaint()};
}

}  // namespace foldyard
