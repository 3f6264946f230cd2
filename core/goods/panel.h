#pragma once

// A panel: a rectangle that is sewn, as it measures when it is sewn (seams and
// hems included). On cloth that shrinks it is cut larger (cloth/shrinkage.h).
//
// across is its size from selvedge to selvedge, along its size in the roll's
// direction. may_turn: it may also lie turned by a quarter, its across size
// along the roll; never true in effect on one-way cloth. on_fold: it may be
// cut double across a fold edge, so that a crease runs through its middle.
// worth: what one is worth to the maker, more than zero. at_most: a plan cuts
// no more of them; none: as many as are worth it.
//
// grain, on railroaded cloth only: a panel that keeps to the pattern lies with
// its along size from selvedge to selvedge there; one that keeps to the warp
// lies as on any other cloth. match: on cloth with a repeat every such panel
// begins at the start of a repeat; centred: instead, the motif's centre lies in
// its middle.
//
// sewn: what it is sewn into; across and along are then its cut size
// (goods/cut_size.h), one way round or the other.
//
// Example: a carrier of 450 × 900 mm with the grain: across 450, along 900.

#include <cstdint>
#include <optional>
#include <string>

#include "goods/sewn.h"
#include "measure/length.h"
#include "measure/worth.h"

namespace foldyard {

enum class Grain { pattern, warp };
enum class Match { none, start, centred };

struct Panel {
  std::string name;
  Length across;
  Length along;
  bool may_turn = false;
  bool on_fold = true;
  Worth worth;
  std::optional<std::int64_t> at_most = {};
  Grain grain = Grain::pattern;
  Match match = Match::none;
  std::optional<Sewn> sewn = {};

  Area area() const { return across * along; }
  bool operator==(const Panel&) const = default;
};

}  // namespace foldyard
