#include "shelf/roll_edits.h"

#include <QCoreApplication>

#include <algorithm>

#include "measure/index.h"

namespace foldyard {
namespace {

bool has_name(const Job& job, const std::string& name) {
  return std::any_of(job.rolls.begin(), job.rolls.end(), [&](const Roll& roll) { return roll.name == name; });
}

std::string free_name(const Job& job, const std::string& name) {
  for (int n = 2;; ++n) {
    const std::string numbered = name + ' ' + std::to_string(n);
    if (!has_name(job, numbered)) return numbered;
  }
}

}  // namespace

Job with_copy(const Job& job, int roll) {
  Job next = job;
  Roll copy = next.rolls[ix(roll)];
  copy.name = free_name(job, copy.name);
  next.rolls.insert(next.rolls.begin() + roll + 1, std::move(copy));
  return next;
}

Result<Job> without_roll(const Job& job, int roll) {
  const auto say = [](const char* text) { return QCoreApplication::translate("RollEdits", text).toStdString(); };
  if (job.rolls.size() == 1)
    return Problem{"", say(QT_TRANSLATE_NOOP("RollEdits", "This is the only roll, and a job has at least one")),
                   say(QT_TRANSLATE_NOOP("RollEdits", "add another roll before you take it away"))};
  Job next = job;
  next.rolls.erase(next.rolls.begin() + roll);
  return next;
}

int place_after_move(int roll, int before) { return before > roll ? before - 1 : before; }

Job with_moved(const Job& job, int roll, int before) {
  Job next = job;
  const auto at = [&](int i) { return next.rolls.begin() + i; };
  if (before > roll) std::rotate(at(roll), at(roll + 1), at(before));
  else std::rotate(at(before), at(roll), at(roll + 1));
  return next;
}

std::vector<std::string> names_of(const std::vector<Roll>& rolls) {
  std::vector<std::string> names;
  for (const Roll& roll : rolls) names.push_back(roll.name);
  return names;
}

int followed(const std::vector<std::string>& names, int roll, const Job& now) {
  const int count = static_cast<int>(now.rolls.size());
  if (roll >= 0 && roll < static_cast<int>(names.size())) {
    const auto& name = names[ix(roll)];
    const auto found = std::find_if(now.rolls.begin(), now.rolls.end(), [&](const Roll& r) { return r.name == name; });
    if (found != now.rolls.end()) return static_cast<int>(found - now.rolls.begin());
  }
  return roll < 0 ? roll : std::clamp(roll, 0, std::max(0, count - 1));
}

}  // namespace foldyard
