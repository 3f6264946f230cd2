#include "batch/order_case.h"

namespace foldyard {

std::vector<std::vector<bool>> panels_wanted(const OrderCase& order) {
  std::vector<std::vector<bool>> wanted(order.cloths.size(),
                                        std::vector<bool>(static_cast<std::size_t>(order.panels), false));
  for (const PieceLine& line : order.lines)
    for (const PieceNeed& need : line.needs)
      for (const int cloth : need.from.empty() ? line.cloths : need.from)
        wanted[static_cast<std::size_t>(cloth)][static_cast<std::size_t>(need.panel)] = true;
  return wanted;
}

}  // namespace foldyard
