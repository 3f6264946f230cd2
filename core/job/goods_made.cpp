#include "job/goods_made.h"

#include <algorithm>
#include <limits>

#include "goods/goods_panels.h"
#include "measure/index.h"

namespace foldyard {
namespace {

const Panel& panel_at(const Job& job, int index) {
  return job.panels[ix(index)];
}

bool takes(const Job& job, const GoodsMade& made, const Sewn& sewn) {
  return made.goods == sewn.goods &&
         std::none_of(made.panels.begin(), made.panels.end(), [&](int index) {
           return *panel_at(job, index).sewn == sewn;
         });
}

// Goods of one piece are called as their panel.
std::string name_of(const Job& job, const GoodsMade& made) {
  std::vector<std::string> names;
  for (int index : made.panels) names.push_back(panel_at(job, index).name);
  const Sewn& sewn = *panel_at(job, made.panels.front()).sewn;
  return piece_name(sewn.goods.kind, sewn.piece, sewn.lining).empty() ? names.front() : goods_name(names);
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
      all.push_back({{}, sewn->goods, {}, 0});
      place = all.end() - 1;
    }
    place->panels.push_back(i);
  }
  for (GoodsMade& made : all) made.name = name_of(job, made);
  return all;
}

std::vector<GoodsMade> goods_made(const Job& job, const std::vector<std::int64_t>& yield) {
  std::vector<GoodsMade> all = goods_of(job);
  for (GoodsMade& made : all) {
    made.pieces = std::numeric_limits<std::int64_t>::max();
    for (int index : made.panels) {
      const std::int64_t there = yield[ix(index)];
      made.pieces = std::min(made.pieces, there / needed(*panel_at(job, index).sewn));
    }
  }
  return all;
}

}  // namespace foldyard
