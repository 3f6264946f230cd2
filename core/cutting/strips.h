#pragma once

// Strips: how the three strips of a layout lie at given positions of the folds,
// and how many slits part them. Internal to the strip search.

#include "cutting/fold_layout.h"

namespace foldyard {

// How a strip is cut: not for panels at all; slit at some place narrower than
// its size; or exactly as wide, so that its rim is the slit to its neighbour.
enum class StripUse { none, narrower, exact };

// The size the fold gives a strip, and where it is slit: at its size, or at less
// where the middle goes on under it.
struct SizedStrip {
  Length size;
  Length slit_at;
  StripUse use = StripUse::none;
};

// Left and right strip of a layout, and what they leave.
struct StripsAt {
  StripsAt(const FoldLayout& layout, const SizedStrip& left, const SizedStrip& right);

  // How many slits it takes, when the middle is used so. A narrower middle may
  // end anywhere short of its neighbour.
  int slits(StripUse middle_use) const;

  SizedStrip left;
  SizedStrip right;
  Length whole;
  Length start;   // of the middle
  Length middle;  // negative where the strips do not fit
};

}  // namespace foldyard
