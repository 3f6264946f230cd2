#include "job/most_abreast.h"

#include <algorithm>
#include <set>

#include "measure/index.h"

namespace foldyard {

std::int64_t most_abreast(const Job& job) {
  std::set<int> used;
  for (const Product& product : job.products)
    for (const PanelCount& each : product.panels) used.insert(each.panel);
  std::int64_t abreast = 0;
  for (const Roll& roll : job.rolls) {
    if (roll.in_batch == InBatch::never) continue;
    for (const int panel : used) {
      const Panel& p = job.panels[ix(panel)];
      abreast += roll.fabric.usable_width().units() / std::min(p.across, p.along).units();
    }
  }
  return abreast;
}

}  // namespace foldyard
