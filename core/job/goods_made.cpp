#include "job/goods_made.h"

#include <algorithm>
#include <limits>

#include "goods/goods_panels.h"

namespace foldyard {
namespace {

const Panel& panel_at(const Job& job, int index) {
  return job.panels[static_cast<std::size_t>(index)];
}

bool takes(const Job& job, const GoodsMade& made, const Sewn& sewn) {
  return made.goods == sewn.goods &&
         std::none_of(made.panels.begin(), made.panels.end(), [&](int index) {
           return *panel_at(job, index).sewn == sewn;
         });
}

}  // namespace

std::vector<GoodsMade> goods_of(const Job& job) {
  std::vector<GoodsMade> all;
  for (int i = 0; i < static_cast<int>(job.panels.size()); ++i) {
    const std::optional<Sewn>& sewn = panel_at(job, i).sewn;
    if (!sewn) continue;
    auto place = std::find_if(all.begin(), all.end(),
                              [&](const GoodsMade& made) { return takes(job, made, *sewn); });
    if (place == all.end()) {
      all.push_back({goods_name(panel_at(job, i).name, *sewn), sewn->goods, {}, 0});
      place = all.end() - 1;
    }
    place->panels.push_back(i);
  }
  return all;
}

std::vector<GoodsMade> goods_made(const Job& job, const std::vector<std::int64_t>& yield) {
  std::vector<GoodsMade> all = goods_of(job);
  for (GoodsMade& made : all) {
    made.pieces = std::numeric_limits<std::int64_t>::max();
    for (int index : made.panels) {
      const std::int64_t there = yield[static_cast<std::size_t>(index)];
      made.pieces = std::min(made.pieces, there / needed(*panel_at(job, index).sewn));
    }
  }
  return all;
}

}  // namespace foldyard
