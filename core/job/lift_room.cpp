#include "job/lift_room.h"

namespace foldyard {

std::int64_t lengths_in_a_lift(const Job& job, int roll, const FoldWay& way) {
  const Fabric& fabric = job.rolls[static_cast<std::size_t>(roll)].fabric;
  return lengths_per_lift(job.cutter, fabric.thickness, most_plies(way));
}

}  // namespace foldyard
