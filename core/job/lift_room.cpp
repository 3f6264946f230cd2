#include "job/lift_room.h"

#include "measure/index.h"

namespace foldyard {

std::int64_t lengths_in_a_lift(const Job& job, int roll, const FoldWay& way) {
  const Fabric& fabric = job.rolls[ix(roll)].fabric;
  return lengths_per_lift(job.cutter, fabric.thickness, most_plies(way));
}

}  // namespace foldyard
