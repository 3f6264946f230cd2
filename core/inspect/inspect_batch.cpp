#include "inspect/inspect_batch.h"

#include "inspect/batch_checks.h"
#include "inspect/inspect_plan.h"

namespace foldyard {

namespace inspection {

const std::string& cloth_name(const Roll& roll) { return roll.cloth.empty() ? roll.name : roll.cloth; }

bool Cloth::serves(const std::vector<std::string>& asked) const {
  bool any = asked.empty();
  for (const std::string& word : asked) any |= words.contains(word);
  return any;
}

std::vector<Cloth> cloths_of(const Job& job) {
  std::vector<Cloth> cloths;
  for (const Roll& roll : job.rolls) {
    bool is_new = true;
    for (const Cloth& cloth : cloths) is_new &= cloth.name != cloth_name(roll);
    if (!is_new) continue;
    cloths.push_back({cloth_name(roll), {roll.marks.begin(), roll.marks.end()}});
    cloths.back().words.insert(cloths.back().name);
  }
  for (const CutPanels& cut : job.on_hand) {
    bool is_new = true;
    for (const Cloth& cloth : cloths) is_new &= cloth.name != cut.cloth;
    if (!is_new) continue;
    cloths.push_back({cut.cloth, {cut.marks.begin(), cut.marks.end()}});
    cloths.back().words.insert(cut.cloth);
  }
  return cloths;
}

namespace {

// REQUIRES a length.
const FoldWay& first_way(const Plan& plan) {
  return pattern_of(plan, plan.lengths[0]).fold.way;
}

// Whether every roll's plan is sound enough for sums.
bool inspect_rolls(const Job& job, const BatchPlan& plan, Findings& findings) {
  bool all = true;
  int last = -1;
  for (std::size_t i = 0; i < plan.rolls.size(); ++i) {
    const Plan& each = plan.rolls[i];
    const std::string name = "Roll " + std::to_string(i + 1) + ": ";
    all &= findings.require(last < each.roll, name, "it does not stand in the order of the job's rolls");
    all &= findings.require(!each.lengths.empty(), name, "nothing is cut from it");
    last = each.roll;
    for (const std::string& sentence : inspect_plan(job, each, PlanOf::batch)) {
      all = findings.require(false, name, sentence.substr(0, sentence.size() - 1));
    }
    if (all) findings.require(each.way == first_way(each), name, "its way is not that of its first length");
  }
  return all;
}

}  // namespace

}  // namespace inspection

std::vector<std::string> inspect_batch(const Job& job, const BatchPlan& plan) {
  inspection::Findings findings(job.unit);
  const bool rolls = inspection::inspect_rolls(job, plan, findings);
  const bool made = inspection::inspect_made(job, plan, findings);
  if (rolls && made) inspection::inspect_served(job, plan, findings);
  if (rolls && made) inspection::inspect_pins(job, plan, findings);
  if (rolls && inspection::inspect_lays(job, plan, findings) && made) {
    inspection::inspect_batch_sums(job, plan, findings);
  }
  return std::move(findings).take();
}

}  // namespace foldyard
