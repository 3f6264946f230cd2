#pragma once

// The width of a roll while it is typed, digit by digit.
//
// A flaw over the whole width goes with it (cloth/roll_edit.h); one that is as wide as
// the cloth would be for a moment, on the way to the width that is meant, does not.
//
// Example: cloth of 140 cm, a flaw over its left 14 cm; "1", "14", "145" cm are
// typed: the flaw is 14 cm wide still.

#include <optional>
#include <vector>

#include "cloth/roll.h"

namespace foldyard {

class WidthTyping {
 public:
  // The roll with another width, from what it was when typing began.
  Roll typed(Roll roll, Length width);
  // The field is left, or the roll has been edited otherwise.
  void end() { before_.reset(); }

 private:
  struct Before {
    Length width;
    std::vector<Flaw> flaws;
  };
  std::optional<Before> before_;
};

}  // namespace foldyard
