#pragma once

// FlawedRoll: plans one roll with flaws from the best pattern of each length.
//
// Lengths are placed exactly along the roll (batch/flawed_series.h): a flaw is
// cut out, or lies in the allowance or in a rest, or costs the panels that touch
// it, or the length is cut around it, whichever is worth more. A pattern may
// also lie end for end, and on open cloth side for side, where no fold across
// the length forbids it. Only open cloth and cloth folded selvedge to selvedge
// is cut around flaws (cutting/around_flaws.h).
//
// What lays cost depends on how many lengths share a pattern, wherever they lie
// on the roll. Along the roll every length bears its share of a full lay; for
// an aim that weighs time that is done for lays of several sizes, and the plan
// with the best sum is taken. Plans come out summed up but not yet inspected.

#include "batch/flawed_series.h"
#include "cutting/table_set.h"
#include "job/aim_scale.h"
#include "job/plan_roll.h"

namespace foldyard {

// A pattern that is best for its length when `copies` lie in a lay; cost: of
// the cuts through one such lay, in the aim's scale.
struct FlawedCandidate {
  std::int64_t copies = 1;
  std::int64_t cost = 0;
  Pattern pattern;
};

// What is planned, and with what. clean: the plan of the same roll without its
// flaws taken into account (they only cost it panels), with its proof.
// most_lengths: in one lift.
struct FlawedCase {
  const Job& job;
  FoldWay way;
  Aim aim;
  const AimScale& scale;
  TableSet& tables;
  std::vector<FlawedCandidate> candidates;
  std::int64_t most_lengths;
  const Plan& clean;
  Worth clean_bound;       // of the roll without flaws
  bool clean_is_proved;    // and reached there
  Worth area_bound;        // of every bit of usable cloth
  SearchBudget budget;
};

Plan plan_flawed_roll(const FlawedCase& flawed);

}  // namespace foldyard
