#include "job/panel_away.h"

#include <algorithm>

namespace foldyard {
namespace {

bool is_sewn_from(const Product& product, int panel) {
  return std::any_of(product.panels.begin(), product.panels.end(),
                     [&](const PanelCount& each) { return each.panel == panel; });
}

bool are_among(const std::vector<CutPanels>& cut, int panel) {
  return std::any_of(cut.begin(), cut.end(), [&](const CutPanels& each) { return each.panel == panel; });
}

bool is_cut(const Job& job, int panel) {
  return are_among(job.on_hand, panel) ||
         std::any_of(job.history.begin(), job.history.end(),
                     [&](const CutRecord& record) {
                       return are_among(record.panels, panel) || are_among(record.spoilt, panel);
                     });
}

bool is_kept(const KeptLength& kept, int panel) {
  return std::any_of(kept.steps.begin(), kept.steps.end(),
                     [&](const KeptStep& step) { return step.kind == NodeKind::take && step.panel == panel; });
}

Problem at_panel(int panel, Words what, Words next) {
  return {"panels[" + std::to_string(panel) + "]", std::move(what), std::move(next)};
}

void move_up(int& index, int gone) {
  if (index > gone) --index;
}

void move_up(std::vector<CutPanels>& cut, int gone) {
  for (CutPanels& each : cut) move_up(each.panel, gone);
}

}  // namespace

Result<Job> without_panel(const Job& job, int panel) {
  if (job.panels.size() < 2) {
    return at_panel(panel, say("it is the last panel of the job"), say("add another before you take it away"));
  }
  for (const Product& product : job.products) {
    if (!is_sewn_from(product, panel)) continue;
    return at_panel(panel, say("the product \"%1\" is sewn from it", product.name),
                    say("take it out of the product first"));
  }
  if (is_cut(job, panel)) {
    return at_panel(panel, say("some of it are cut, on hand or in the records"),
                    say("keep it, or use them up and clear the records first"));
  }
  for (const KeptLength& kept : job.order.kept) {
    if (!is_kept(kept, panel)) continue;
    return at_panel(panel, say("a length that is kept on \"%1\" has it", kept.roll),
                    say("let that length go first"));
  }
  Job next = job;
  next.panels.erase(next.panels.begin() + panel);
  for (Product& product : next.products) {
    for (PanelCount& each : product.panels) move_up(each.panel, panel);
  }
  move_up(next.on_hand, panel);
  for (KeptLength& kept : next.order.kept)
    for (KeptStep& step : kept.steps) move_up(step.panel, panel);
  for (CutRecord& record : next.history) {
    move_up(record.panels, panel);
    move_up(record.spoilt, panel);
  }
  return next;
}

}  // namespace foldyard
