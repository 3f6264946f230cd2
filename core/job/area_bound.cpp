#include "job/area_bound.h"

#include "job/cloth_to_cut.h"
#include "measure/wide.h"

namespace foldyard {

Worth area_bound(const Job& job, const Roll& roll) {
  Wide best_worth = 0, best_area = 1;
  for (const Panel& p : job.panels)
    if (p.worth.parts() * best_area > best_worth * p.area().square_units()) {
      best_worth = p.worth.parts();
      best_area = p.area().square_units();
    }
  const Area cloth = roll.fabric.usable_width() * cloth_to_cut(roll, job.losses).size();
  return Worth::parts(static_cast<std::int64_t>(cloth.square_units() * best_worth / best_area));
}

}  // namespace foldyard
