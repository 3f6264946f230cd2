#include "lay/cutter.h"

#include <algorithm>

namespace foldyard {

std::int64_t lengths_per_lift(const Cutter& cutter, Length thickness, int plies) {
  const std::int64_t by_height = cutter.height / (thickness * plies);
  const std::int64_t by_plies = cutter.most_plies / plies;
  return std::max<std::int64_t>(0, std::min(by_height, by_plies));
}

Length deepest_fold(const Table& table) {
  return std::min(table.depth, table.both_sides ? table.reach * 2 : table.reach);
}

}  // namespace foldyard
