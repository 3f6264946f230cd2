#include <algorithm>

#include "inspect/checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

template <class Values>
bool has(const Values& values, int index) {
  return 0 <= index && index < static_cast<int>(values.size());
}

bool name_what_exists(const Plan& plan, Findings& findings) {
  bool all = true;
  for (std::size_t i = 0; i < plan.lays.size(); ++i) {
    all &= findings.require(has(plan.patterns, plan.lays[i].pattern), "Lay ", i + 1,
                            ": it names no pattern of the plan");
  }
  for (std::size_t i = 0; i < plan.lengths.size(); ++i) {
    all &= findings.require(has(plan.lays, plan.lengths[i].lay), "Length ", i + 1,
                            ": it names no lay of the plan");
  }
  return all;
}

const Lay& lay_of(const Plan& plan, const LengthOnRoll& length) {
  return plan.lays[ix(length.lay)];
}

void inspect_lays(const Job& job, const Plan& plan, Findings& findings) {
  const Fabric& fabric = job.rolls[ix(plan.roll)].fabric;
  for (std::size_t i = 0; i < plan.lays.size(); ++i) {
    const Lay& lay = plan.lays[i];
    const std::string name = "Lay " + std::to_string(i + 1) + ": ";
    const auto lengths = std::count_if(
        plan.lengths.begin(), plan.lengths.end(),
        [&](const LengthOnRoll& length) { return length.lay == static_cast<int>(i); });
    findings.require(lay.lengths > 0, name, "it holds no length");
    findings.agree(std::int64_t{lay.lengths}, std::int64_t{lengths}, name, "the number of lengths");
    inspect_lay({job, fabric, plan.way, pattern_of(plan, lay), {}}, lay, name, findings);
  }
}

void inspect_patterns_used(const Plan& plan, Findings& findings) {
  for (std::size_t i = 0; i < plan.patterns.size(); ++i) {
    const bool used = std::any_of(plan.lays.begin(), plan.lays.end(), [&](const Lay& lay) {
      return lay.pattern == static_cast<int>(i);
    });
    findings.require(used, "Pattern ", i + 1, ": no lay is cut by it");
  }
}

// Cloth cut out before a length: it begins where the cloth before it ends and
// ends where the length begins. Gives where the length has to begin.
Length inspect_cut_out(const Plan& plan, Length at, Length next, std::size_t& used,
                       Findings& findings) {
  if (used >= plan.cut_out.size() || plan.cut_out[used].from >= next) return at;
  const Span out = plan.cut_out[used];
  findings.require(at < next && out == Span{at, next}, "Cut-out ", ++used, ": it does not lie from ",
                   at, " to the next length at ", next);
  return next;
}

// Gives where the last length ends.
Length inspect_lengths(const Job& job, const Plan& plan, Findings& findings) {
  const Squared squared = job.rolls[ix(plan.roll)].squared;
  Length at = squared == Squared::none ? job.losses.squaring : Length();
  std::size_t used = 0;
  for (std::size_t i = 0; i < plan.lengths.size(); ++i) {
    const Span span = plan.lengths[i].on_roll;
    const Pattern& pattern = pattern_of(plan, lay_of(plan, plan.lengths[i]));
    at = inspect_cut_out(plan, at, span.from, used, findings);
    findings.require(span.from == at, "Length ", i + 1, ": it begins at ", span.from,
                     " on the roll and not at ", at);
    findings.agree(span.size(), pattern.length + job.losses.allowance, "Length ", i + 1,
                   ": its size along the roll");
    at = span.to;
  }
  for (; used < plan.cut_out.size(); ++used)
    findings.require(false, "Cut-out ", used + 1, ": no length follows it");
  return at;
}

void inspect_remnant(const Job& job, const Plan& plan, Length last, Findings& findings) {
  const Roll& roll = job.rolls[ix(plan.roll)];
  const Length end = roll.squared == Squared::both ? roll.length : roll.length - job.losses.squaring;
  if (!findings.require(last <= end, "The lengths run to ", last,
                        " on the roll, beyond the cloth that ends at ", end)) {
    return;
  }
  findings.require(plan.remnant == Span{last, end}, "The remnant of the roll does not lie from ",
                   last, " to ", end);
  const bool kept = last < end && job.losses.keep_across <= roll.fabric.width &&
                    job.losses.keep_along <= end - last;
  findings.require(plan.remnant_kept == kept, "The remnant of the roll is ",
                   kept ? "large enough to keep but given away" : "kept but too small");
}

}  // namespace

bool inspect_roll(const Job& job, const Plan& plan, Findings& findings) {
  if (!name_what_exists(plan, findings)) return false;
  inspect_lays(job, plan, findings);
  inspect_patterns_used(plan, findings);
  inspect_remnant(job, plan, inspect_lengths(job, plan, findings), findings);
  return true;
}

}  // namespace foldyard::inspection
