#pragma once

// The repeat of a pattern: the distance after which it looks the same again.
//
// along, across: 0 where the pattern does not repeat (or need not match) that
// way. start_along: where a repeat begins, from the free end; start_across:
// the same from the left edge of the cloth; both less than the repeat. The
// motif's centre lies in the middle of a repeat. symmetric: the motif looks the
// same mirrored about its centre line, so that a ply turned over may match.
//
// Example: along 64 cm, start_along 10 cm: repeats begin at 10, 74, 138 … cm.

#include "measure/length.h"

namespace foldyard {

struct Repeat {
  Length along;
  Length across;
  Length start_along;
  Length start_across;
  bool symmetric = false;

  bool is_any() const { return along > Length{} || across > Length{}; }
  bool operator==(const Repeat&) const = default;
};

}  // namespace foldyard
