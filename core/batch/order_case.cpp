#include "batch/order_case.h"

#include <algorithm>

#include "measure/index.h"

namespace foldyard {

namespace {

// Pieces take some panel of their own cloth.
bool takes_own(const PieceLine& line) {
  return std::any_of(line.needs.begin(), line.needs.end(), [](const PieceNeed& need) { return need.from.empty(); });
}

bool asks_for(const PieceLine& line, int cloth) {
  const std::vector<int> alone{cloth};
  const bool by_rule = std::any_of(line.rules.begin(), line.rules.end(), [&](const PieceRule& rule) {
    return rule.at_least > 0 && rule.cloths == alone;
  });
  return takes_own(line) && (by_rule || (line.must > 0 && line.cloths == alone));
}

bool is_free(const OrderCase& order, int cloth) {
  const auto c = static_cast<std::size_t>(cloth);
  const bool on_hand = c < order.on_hand.size() &&
                       std::any_of(order.on_hand[c].begin(), order.on_hand[c].end(), [](std::int64_t n) { return n > 0; });
  return !on_hand && order.also_for(cloth).empty() &&
         std::none_of(order.rolls.begin(), order.rolls.end(),
                      [&](const CaseRoll& roll) { return roll.cloth == cloth && (roll.must || roll.kept > 0); });
}

}  // namespace

std::vector<bool> cloths_opened(const OrderCase& order) {
  std::vector<bool> opened;
  for (int c = 0; c < static_cast<int>(order.cloths.size()); ++c)
    opened.push_back(is_free(order, c) && std::any_of(order.lines.begin(), order.lines.end(),
                                                      [&](const PieceLine& line) { return asks_for(line, c); }));
  return opened;
}

std::vector<std::vector<bool>> panels_wanted(const OrderCase& order) {
  std::vector<std::vector<bool>> wanted(order.cloths.size(),
                                        std::vector<bool>(static_cast<std::size_t>(order.panels), false));
  for (const PieceLine& line : order.lines)
    for (const PieceNeed& need : line.needs)
      for (const int cloth : need.from.empty() ? line.cloths : need.from)
        wanted[ix(cloth)][ix(need.panel)] = true;
  for (std::size_t cloth = 0; cloth < order.also.size(); ++cloth)
    for (const int apart : order.also[cloth])
      for (std::size_t p = 0; p < wanted[cloth].size(); ++p)
        if (wanted[cloth][p]) wanted[ix(apart)][p] = true;
  return wanted;
}

}  // namespace foldyard
