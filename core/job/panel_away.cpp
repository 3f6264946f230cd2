#include "job/panel_away.h"

#include <algorithm>

namespace foldyard {
namespace {

bool is_sewn_from(const Product& product, int panel) {
  return std::any_of(product.panels.begin(), product.panels.end(),
                     [&](const PanelCount& each) { return each.panel == panel; });
}

Problem at_panel(int panel, std::string what, std::string next) {
  return {"panels[" + std::to_string(panel) + "]", std::move(what), std::move(next)};
}

void move_up(int& index, int gone) {
  if (index > gone) --index;
}

}  // namespace

Result<Job> without_panel(const Job& job, int panel) {
  if (job.panels.size() < 2) {
    return at_panel(panel, "it is the last panel of the job", "add another before you take it away");
  }
  for (const Product& product : job.products) {
    if (!is_sewn_from(product, panel)) continue;
    return at_panel(panel, "the product \"" + product.name + "\" is sewn from it",
                    "take it out of the product first");
  }
  Job next = job;
  next.panels.erase(next.panels.begin() + panel);
  for (Product& product : next.products) {
    for (PanelCount& each : product.panels) move_up(each.panel, panel);
  }
  return next;
}

}  // namespace foldyard
