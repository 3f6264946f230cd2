#pragma once

// Cutting webbing, tape, cord or zips to length: the fewest full rolls, with the
// ends on hand used first.
//
// Each cut takes its length and `loss`. Every wanted length is cut as often as
// asked, no more. Ends cost nothing; a full roll counts one.
//
// bound: no way of cutting needs fewer full rolls, by exact arithmetic: for any
// prices of the lengths, all that is wanted, less what the ends can be worth, over
// the most that a roll can be worth, rounded up. proved: the plan reaches it.
// rounds: of descents from the linear model's answer, each with other choices; the
// same everywhere.
// Method: Gilmore & Gomory 1961, Operations Research 9, column generation (from
// memory, no page seen), with a descent that fixes what is nearest to whole.
//
// Worked example: 4 of 55 cm and 1 of 120 cm, rolls of 2 m, an end of 60 cm, no
// loss: the end gives one of 55 cm, a roll 120 + 55, another 55 + 55: 2 rolls;
// they hold 3.4 m, and 2.85 m are wanted beyond the end: at least 2.
//
// REQUIRES lengths above 0 that with the loss fit a full roll, counts ≥ 0.

#include <cstdint>
#include <vector>

#include "measure/length.h"

namespace foldyard {

struct WantedLength {
  Length length;
  std::int64_t count = 0;
  bool operator==(const WantedLength&) const = default;
};

// What is cut from one end, or from each of so many full rolls; counts by wanted
// length.
struct LengthCuts {
  int end = -1;            // index into the ends; −1: full rolls
  std::int64_t rolls = 1;
  std::vector<std::int64_t> counts;
  bool operator==(const LengthCuts&) const = default;
};

struct CutToLength {
  std::vector<LengthCuts> cuts;  // ends first, then full rolls
  std::int64_t rolls = 0;
  std::int64_t bound = 0;
  bool proved = false;
  bool operator==(const CutToLength&) const = default;
};

CutToLength cut_to_length(const std::vector<WantedLength>& wanted, Length roll, Length loss,
                          const std::vector<Length>& ends, int rounds = 40);

}  // namespace foldyard
