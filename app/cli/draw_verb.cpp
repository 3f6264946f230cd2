#include "cli/draw_verb.h"

#include "cli/choice.h"
#include "cli/interrupt.h"
#include "cli/range_answer.h"
#include "file/safe_write.h"
#include "job/plan_roll.h"

namespace foldyard {
namespace {

constexpr int kDotsPerInch = 150;

QByteArray drawing_of(const Sheet& sheet, Format format) {
  switch (format) {
    case Format::pdf: return sheet_pdf(sheet);
    case Format::svg: return sheet_svg(sheet);
    default: return sheet_png(sheet, kDotsPerInch);
  }
}

QString why_not(const Comparison& comparison, const Call& call) {
  if (!call.way) return refusal_words(comparison);
  for (const WayResult& result : comparison.ways) {
    if (result.way == *call.way) return QString::fromStdString(result.refused) + QLatin1Char('.');
  }
  return {};
}

QString done_words(const Sheet& sheet, const QString& roll, const QString& file) {
  return QStringLiteral("Drew roll %1, folded %2, on %3 to %4. Print it at 100 %.\n")
      .arg(roll, QString::fromStdString(way_name(sheet.plan().way)),
           sheet.pages() == 1 ? QStringLiteral("1 page")
                              : QStringLiteral("%1 pages").arg(sheet.pages()),
           file);
}

}  // namespace

Outcome draw_verb(const Job& job, const Call& call) {
  const int roll = chosen_rolls(job, call).front();
  const QString name = QString::fromStdString(job.rolls[static_cast<std::size_t>(roll)].name);
  const Interruptible interruptible;
  const Comparison comparison = compare_ways(job, roll, call.aim, interruptible.budget());
  const int way = chosen_way(comparison, call);
  if (way < 0) {
    return {Exit::cannot_plan, {}, QStringLiteral("Roll %1 cannot be planned: %2")
                                       .arg(name, why_not(comparison, call))};
  }
  const Sheet sheet(job, comparison, way, call.paper,
                    range_of(job, *comparison.ways[static_cast<std::size_t>(way)].plan,
                             interruptible.budget()));
  const QByteArray bytes = drawing_of(sheet, call.format);
  if (bytes.isEmpty()) {
    return {Exit::cannot_plan, {}, QStringLiteral("The diagram could not be drawn; try another "
                                                  "kind of file.")};
  }
  if (const auto problem = safe_write(call.to, bytes)) {
    return refusal(Exit::wrong_call, *problem);
  }
  return {Exit::done, done_words(sheet, name, call.to), interruptible.complaint()};
}

}  // namespace foldyard
