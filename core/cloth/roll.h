#pragma once

// A roll of cloth as it lies on the shelf.
//
// width is selvedge to selvedge, measured flat and at its narrowest. selvedge
// is the strip along each edge that ends in no panel; width − 2 × selvedge is
// the usable width. thickness is that of one ply. Nap::one_way says that the
// cloth looks different turned end for end (pile or print), so that all panels
// keep one direction. On railroaded cloth pattern and nap run from the left
// selvedge to the right one, else from the free end along the roll.
//
// length is the cloth on the roll, from the free end, that plans may count on:
// as known or found, or else the low end of what `measured` says (it is rounded
// down). measured: how the length was estimated; is_found: the length of a
// measured roll that has been unrolled since. cut_since: what was cut off since it was
// measured (cloth/roll_estimate.h); 0 where nothing was measured.
//
// Invariants, held by the reader of job files: all > 0 but selvedge ≥ 0,
// 2 × selvedge < width; flaws lie on the cloth, in order of where they begin.

#include <optional>
#include <string>
#include <vector>

#include "cloth/flaw.h"
#include "cloth/repeat.h"
#include "cloth/roll_measure.h"
#include "cloth/shrinkage.h"
#include "measure/length.h"
#include "measure/rect.h"
#include "measure/worth.h"

namespace foldyard {

enum class Nap { none, one_way };

struct Fabric {
  Length width;
  Length selvedge;
  Length thickness;
  Nap nap = Nap::none;
  std::string colour;  // "#rrggbb", only for pictures
  Repeat repeat = {};
  bool railroaded = false;
  Shrinkage shrinkage = {};

  Length usable_width() const { return width - selvedge * 2; }
  Span usable() const { return {selvedge, width - selvedge}; }
  bool operator==(const Fabric&) const = default;
};

// Which ends are square already, so that squaring them costs no cloth: the free end
// of a roll that was cut from, both ends of a remnant.
enum class Squared { none, free_end, both };

// Whether a batch cuts from the roll: where it pays, in any case, or not at all.
enum class InBatch { may, must, never };

struct Roll {
  std::string name;
  Fabric fabric;
  Length length;
  std::optional<RollMeasure> measured = {};
  bool is_found = false;
  Length cut_since = {};
  Squared squared = Squared::none;
  std::vector<Flaw> flaws = {};
  std::string cloth = {};                // of which cloth it is; empty: one of its own
  std::vector<std::string> marks = {};   // such as "printed"; orders may ask for them
  std::optional<Worth> price = {};       // of a metre of it
  InBatch in_batch = InBatch::may;
  bool operator==(const Roll&) const = default;
};

}  // namespace foldyard
