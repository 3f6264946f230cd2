#include "inspect/checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

bool names_what_is_lost(const Plan& plan) {
  for (const LostPanel& lost : plan.lost) {
    if (lost.length < 0 || lost.length >= std::ssize(plan.lengths)) return false;
    const auto lay = static_cast<std::size_t>(plan.lengths[ix(lost.length)].lay);
    const Pattern& pattern = plan.patterns[ix(plan.lays[lay].pattern)];
    if (lost.panel < 0 || lost.panel >= std::ssize(pattern.panels)) return false;
  }
  return true;
}

}  // namespace

std::int64_t copies_of(int panel, const Plan& plan) {
  std::int64_t copies = 0;
  for (const LengthOnRoll& length : plan.lengths) {
    for (const PlacedPanel& placed : pattern_of(plan, length).panels)
      copies += placed.panel == panel;
  }
  for (const LostPanel& lost : plan.lost) {
    const auto lay = static_cast<std::size_t>(plan.lengths[ix(lost.length)].lay);
    const Pattern& pattern = plan.patterns[ix(plan.lays[lay].pattern)];
    copies -= pattern.panels[ix(lost.panel)].panel == panel;
  }
  return copies;
}

void inspect_limits(const Job& job, const Plan& plan, Findings& findings) {
  if (!names_what_is_lost(plan)) return;
  for (std::size_t i = 0; i < job.panels.size(); ++i) {
    const Panel& panel = job.panels[i];
    if (!panel.at_most) continue;
    const std::int64_t copies = copies_of(static_cast<int>(i), plan);
    findings.require(copies <= *panel.at_most, "Of ", panel.name, ", ", copies,
                     " are cut, but at most ", *panel.at_most, " are wanted");
  }
}

}  // namespace foldyard::inspection
