#include "inspect/inspect_plan.h"

#include "inspect/checks.h"
#include "measure/index.h"

namespace foldyard {

namespace inspection {

namespace {

bool names_a_panel(const Job& job, int panel) {
  return 0 <= panel && panel < static_cast<int>(job.panels.size());
}

bool names_its_panels(const Subject& subject, Findings& findings) {
  bool all = true;
  for (const PlacedPanel& placed : subject.pattern.panels) {
    all &= findings.require(names_a_panel(subject.job, placed.panel), subject.name,
                            "a placed panel names no panel of the job");
  }
  for (const CutNode& node : subject.pattern.tree.nodes) {
    all &= findings.require(node.kind != NodeKind::take || names_a_panel(subject.job, node.panel),
                            subject.name, "a taken rectangle names no panel of the job");
  }
  return all;
}

// Whether the sums of the pattern can be made.
bool inspect_pattern(const Subject& subject, Findings& findings) {
  inspect_table(subject, findings);
  const bool named = names_its_panels(subject, findings);
  if (!can_be_folded(subject, findings)) return named;
  const FoldedCloth cloth = fold_cloth(subject);
  inspect_fold(subject, cloth, findings);
  if (inspect_tree(subject, cloth, findings) && named) {
    inspect_panels(subject, cloth, findings);
    inspect_cover(subject, cloth, findings);
  }
  return named;
}

bool inspect_patterns(const Job& job, const Plan& plan, PlanOf of, Findings& findings) {
  const Fabric& fabric = job.rolls[ix(plan.roll)].fabric;
  bool sums = true;
  for (std::size_t i = 0; i < plan.patterns.size(); ++i) {
    const std::string name = "Pattern " + std::to_string(i + 1) + ": ";
    const FoldWay& way = of == PlanOf::batch ? plan.patterns[i].fold.way : plan.way;
    sums &= inspect_pattern({job, fabric, way, plan.patterns[i], name}, findings);
  }
  return sums;
}

}  // namespace

}  // namespace inspection

std::vector<std::string> inspect_plan(const Job& job, const Plan& plan, PlanOf of) {
  inspection::Findings findings(job.unit);
  const bool has_roll = 0 <= plan.roll && plan.roll < static_cast<int>(job.rolls.size());
  if (findings.require(has_roll, "The plan names no roll of the job")) {
    const bool patterns = inspection::inspect_patterns(job, plan, of, findings);
    const bool roll = inspection::inspect_roll(job, plan, findings);
    if (roll) inspection::inspect_limits(job, plan, findings);
    if (patterns && roll) {
      inspection::inspect_lost_panels(job, plan, findings);
      inspection::inspect_repeat(job, plan, findings);
      inspection::inspect_sums(job, plan, findings);
    }
  }
  return std::move(findings).take();
}

}  // namespace foldyard
