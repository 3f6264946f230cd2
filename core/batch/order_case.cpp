#include "batch/order_case.h"

namespace foldyard {

std::vector<std::vector<bool>> panels_wanted(const OrderCase& order) {
  std::vector<std::vector<bool>> wanted(order.cloths.size(),
                                        std::vector<bool>(static_cast<std::size_t>(order.panels), false));
  for (const PieceLine& line : order.lines)
    for (const PieceNeed& need : line.needs)
      for (const int cloth : need.from.empty() ? line.cloths : need.from)
        wanted[static_cast<std::size_t>(cloth)][static_cast<std::size_t>(need.panel)] = true;
  for (std::size_t cloth = 0; cloth < order.also.size(); ++cloth)
    for (const int apart : order.also[cloth])
      for (std::size_t p = 0; p < wanted[cloth].size(); ++p)
        if (wanted[cloth][p]) wanted[static_cast<std::size_t>(apart)][p] = true;
  return wanted;
}

}  // namespace foldyard
