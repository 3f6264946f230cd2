#include "job/as_found.h"

#include "cloth/calibration.h"
#include "cloth/roll_estimate.h"
#include "job/limits.h"
#include "measure/index.h"

namespace foldyard {

Result<Job> as_found(const Job& job, int roll, Length found, bool correct) {
  Job next = job;
  Roll& cloth = next.rolls[ix(roll)];
  const std::string where = "rolls[" + std::to_string(roll) + "].length";
  if (!cloth.measured) return Problem{where, say("the roll was never measured"), say("change its length")};
  if (found < limits::kRollLength.least || found > limits::kRollLength.most)
    return Problem{where, say("no roll is so long"), say("give %1", say(limits::kRollLength.in_words.data()))};
  if (correct) {
    const Result<RollMeasure> right = corrected(*cloth.measured, found + cloth.cut_since, cloth.fabric.width);
    if (!right) return Problem{where, right.problem().what, right.problem().next};
    cloth.measured = *right;
  }
  cloth.length = found;
  cloth.is_found = true;
  return next;
}

bool was_foreseen(const Roll& roll, Length found) {
  if (!roll.measured) return false;
  const Result<LengthEstimate> range = estimate_of(roll);
  return range && range->least <= found && found <= range->most;
}

}  // namespace foldyard
