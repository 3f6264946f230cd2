#include "cli/choice.h"

#include <algorithm>

#include "language/spoken.h"

namespace foldyard {
namespace {

QString name_of(const Roll& roll) { return QString::fromStdString(roll.name); }

QString roll_names(const Job& job) {
  QStringList names;
  for (const Roll& roll : job.rolls) names << QLatin1Char('"') + name_of(roll) + QLatin1Char('"');
  return names.join(QStringLiteral(", "));
}

QString way_keys(const std::vector<FoldWay>& ways) {
  QStringList keys;
  for (const FoldWay& way : ways) keys << QString::fromStdString(way_key(way));
  return keys.join(QStringLiteral(", "));
}

bool has_roll(const Job& job, const QString& name) {
  return std::any_of(job.rolls.begin(), job.rolls.end(),
                     [&](const Roll& roll) { return name_of(roll) == name; });
}

}  // namespace

std::optional<Problem> wrong_choice(const Job& job, const Call& call) {
  if (call.roll && !has_roll(job, *call.roll)) {
    return Problem{"", say("the job has no roll \"%1\"", call.roll->toStdString()),
                   say("its rolls are %1", roll_names(job).toStdString())};
  }
  const std::vector<FoldWay> ways = all_ways(job.longest_fan);
  if (call.way && std::find(ways.begin(), ways.end(), *call.way) == ways.end()) {
    return Problem{"", say("this job does not plan the way \"%1\"", way_key(*call.way)),
                   say("take one of %1, or give a larger longest_fan in the job", way_keys(ways).toStdString())};
  }
  return {};
}

std::vector<int> chosen_rolls(const Job& job, const Call& call) {
  std::vector<int> rolls;
  for (std::size_t i = 0; i < job.rolls.size(); ++i) {
    if (!call.roll || name_of(job.rolls[i]) == *call.roll) rolls.push_back(static_cast<int>(i));
  }
  return rolls;
}

int chosen_way(const Comparison& comparison, const Call& call) {
  if (!call.way) return comparison.ranking.empty() ? -1 : comparison.ranking.front();
  const auto found =
      std::find_if(comparison.ways.begin(), comparison.ways.end(),
                   [&](const WayResult& result) { return result.way == *call.way; });
  if (found == comparison.ways.end() || !found->plan) return -1;
  return static_cast<int>(found - comparison.ways.begin());
}

QString refusal_words(const Comparison& comparison, bool in_english) {
  QStringList reasons;
  for (const WayResult& result : comparison.ways) {
    const QString reason = in_english ? QString::fromStdString(result.refused) : spoken(result.refused);
    if (!reason.isEmpty() && !reasons.contains(reason)) reasons << reason;
  }
  return reasons.join(QStringLiteral("; ")) + QLatin1Char('.');
}

}  // namespace foldyard
