#pragma once

// What a maker can measure of a roll without unrolling it: each figure with its
// give, the most by which it may be off either way.
//
// ByDiameters: outer and tube diameter, thickness of one ply as it lies wound.
// ByTurns: a count of turns on the rim of the roll, with both diameters.
// ByWeight: the roll on the scales, its bare tube, grams per square metre.
// How each becomes a length: cloth/length_estimate.h.
//
// Weights are in grams, grams_per_square_metre in tenths of a gram.

#include <cstdint>
#include <variant>

#include "measure/length.h"

namespace foldyard {

struct MeasuredLength {
  Length value;
  Length give;
  bool operator==(const MeasuredLength&) const = default;
};

struct MeasuredCount {
  std::int64_t value = 0;
  std::int64_t give = 0;
  bool operator==(const MeasuredCount&) const = default;
};

struct ByDiameters {
  MeasuredLength outer;
  MeasuredLength tube;
  MeasuredLength thickness;
  bool operator==(const ByDiameters&) const = default;
};

struct ByTurns {
  MeasuredCount turns;
  MeasuredLength outer;
  MeasuredLength tube;
  bool operator==(const ByTurns&) const = default;
};

struct ByWeight {
  MeasuredCount roll;
  MeasuredCount tube;
  MeasuredCount per_square_metre;
  bool operator==(const ByWeight&) const = default;
};

using RollMeasure = std::variant<ByDiameters, ByTurns, ByWeight>;

}  // namespace foldyard
