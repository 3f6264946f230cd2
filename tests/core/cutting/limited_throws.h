#pragma once

// Tiny random problems with limited copies, open or beside a fold edge.

#include <string>
#include <utility>

#include "core/support/dice.h"
#include "cutting/limited_problem.h"

namespace foldyard::test {

// In the quanta of a problem beside a fold edge half a panel is whole: there
// loose panels are twice as many quanta across, and take two copies.
inline void add_panel(LimitedProblem& problem, int across, int along, std::int64_t worth,
                      bool on_fold, bool turned) {
  LimitedShape shape;
  shape.panel = static_cast<int>(problem.limits.size()) - 1;
  shape.turned = turned;
  shape.along = Length::units(along);
  shape.uses = problem.joint ? 2 : 1;
  shape.across = Length::units(across * shape.uses);
  shape.gain = worth * shape.uses;
  problem.shapes.push_back(shape);
  // No panel is halved to less than the fold trim.
  if (!problem.joint || !on_fold || Length::units(across) < problem.fold_trim) return;
  shape.at_joint = true;
  shape.uses = 1;
  shape.across = Length::units(across);
  shape.gain = worth;
  problem.shapes.push_back(shape);
}

inline LimitedProblem throw_limited(unsigned seed, bool joint) {
  Dice dice(seed);
  LimitedProblem problem;
  problem.joint = joint;
  problem.width = Length::units(dice.from_to(3, joint ? 16 : 12));
  problem.height = Length::units(dice.from_to(3, joint ? 8 : 10));
  if (joint) problem.fold_trim = Length::units(dice.from_to(1, 3));
  const int largest = joint ? 3 : 5;
  for (int n = dice.from_to(1, 4); n > 0; --n) {
    const int across = dice.from_to(1, largest), along = dice.from_to(1, largest);
    const int worth = dice.coin() ? across * along : dice.from_to(1, 20);
    const bool on_fold = dice.from_to(0, 3) > 0, may_turn = dice.coin();
    problem.limits.push_back(dice.from_to(0, n == 1 ? 4 : 2));
    add_panel(problem, across, along, worth, on_fold, false);
    if (may_turn && across != along) add_panel(problem, along, across, worth, on_fold, true);
  }
  return problem;
}

// Every length so many times as long.
inline LimitedProblem scaled(LimitedProblem problem, std::int64_t scale) {
  problem.width = problem.width * scale;
  problem.height = problem.height * scale;
  problem.fold_trim = problem.fold_trim * scale;
  for (LimitedShape& s : problem.shapes) {
    s.across = s.across * scale;
    s.along = s.along * scale;
  }
  return problem;
}

inline std::string text(const LimitedProblem& problem) {
  const auto number = [](auto n) { return std::to_string(n); };
  std::string s = number(problem.width.units()) + " x " + number(problem.height.units()) +
                  (problem.joint ? ", joint, trim " + number(problem.fold_trim.units()) : "");
  for (const LimitedShape& p : problem.shapes)
    s += "; panel " + number(p.panel) + ": " + number(p.across.units()) + " x " +
         number(p.along.units()) + (p.at_joint ? " at the joint" : "") + " gain " + number(p.gain) +
         " uses " + number(p.uses) + " of " +
         number(problem.limits[static_cast<std::size_t>(p.panel)]);
  return s;
}

}  // namespace foldyard::test
