#pragma once

// The cloth of a roll that lengths may be cut from: without what squaring its ends
// costs. An end that was squared before costs nothing.
//
// Example: 10 m, squaring 10 cm: from 10 cm to 9.9 m; with a squared free end from 0.

#include "job/job.h"

namespace foldyard {

inline Span cloth_to_cut(const Roll& roll, const Losses& losses) {
  return {roll.squared == Squared::none ? losses.squaring : Length(),
          roll.squared == Squared::both ? roll.length : roll.length - losses.squaring};
}

}  // namespace foldyard
