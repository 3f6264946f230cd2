#pragma once

// A flaw at a known place of a roll: no panel that is counted may touch it.
//
// along runs from the free end, across from the left edge of the cloth (its
// selvedge included). Both ends belong to the flaw only in so far as a panel
// may end where a flaw begins. Invariant: neither span is empty.
//
// Example: a stain from 3.20 m to 3.26 m, 40 to 55 cm from the left edge.

#include <string>

#include "measure/rect.h"

namespace foldyard {

struct Flaw {
  Span along;
  Span across;
  std::string kind;  // in the maker's words; may be empty
  bool operator==(const Flaw&) const = default;
};

}  // namespace foldyard
