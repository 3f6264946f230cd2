#pragma once

// How a piece is sewn: the steps of one order of operations, and how long each
// takes.
//
// usual: basic time of the step for one piece, as assumed until it is timed.
// timed: times that were taken, in the order they were; their median counts then.
// A product may have several orders; the first is the one that is used, the others
// are there to compare.
//
// Facts of the trade, common practice, no source: edges first and then side seams
// takes under 2 min, side seams first 2 min 40; about 9 to 10 min a piece in all.

#include <string>
#include <vector>

#include "measure/duration.h"

namespace foldyard {

struct SewingStep {
  std::string name;
  Duration usual;
  std::vector<Duration> timed = {};
  bool operator==(const SewingStep&) const = default;
};

struct SewingOrder {
  std::string name;
  std::vector<SewingStep> steps;
  bool operator==(const SewingOrder&) const = default;
};

}  // namespace foldyard
