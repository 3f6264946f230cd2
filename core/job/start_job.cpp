#include "job/start_job.h"

#include <algorithm>

#include "job/defaults.h"

namespace foldyard {
namespace {

template <class List>
bool is_taken(const List& list, const std::string& name) {
  return std::any_of(list.begin(), list.end(), [&](const auto& each) { return each.name == name; });
}

std::string numbered(const std::string& name, int number) {
  return number == 1 ? name : name + " " + std::to_string(number);
}

Panel panel_of(const GoodsPanel& cut) {
  Panel panel;
  panel.name = cut.name;
  panel.across = cut.size.across;
  panel.along = cut.size.along;
  panel.worth = default_worth(panel.area());
  panel.sewn = cut.sewn;
  return panel;
}

}  // namespace

void add_roll(Job& job, const ClothKind& kind, Length length) { add_roll(job, kind, length, std::string(kind.name)); }

void add_roll(Job& job, const ClothKind& kind, Length length, const std::string& name) {
  int number = 1;
  while (is_taken(job.rolls, numbered(name, number))) ++number;
  Roll roll;
  roll.name = numbered(name, number);
  roll.fabric = kind.fabric;
  roll.length = length;
  job.rolls.push_back(roll);
}

std::optional<Problem> add_goods(Job& job, const std::string& name, const Goods& goods,
                                 bool is_lined, const SayPiece& say) {
  for (int number = 1;; ++number) {
    const auto cuts = panels_of(numbered(name, number), goods, is_lined, say);
    if (!cuts) return cuts.problem();
    if (std::any_of(cuts->begin(), cuts->end(),
                    [&](const GoodsPanel& cut) { return is_taken(job.panels, cut.name); })) {
      continue;
    }
    for (const GoodsPanel& cut : *cuts) job.panels.push_back(panel_of(cut));
    return {};
  }
}

}  // namespace foldyard
