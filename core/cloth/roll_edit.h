#pragma once

// Edits of a roll that carry along what hangs on the edited figure, so that
// nothing a maker has put in is lost or made untrue.
//
// with_width: a flaw over the whole width goes on reaching over it; the length
// of a roll that was measured by its weight is estimated anew (it stays where
// the figures give none: whoever checks the job says so).
// with_length: of a measured roll it is the length that was found now.
//
// Example: a join over 140 cm of cloth: with_width(roll, 150 cm) has it over 150.

#include "cloth/roll.h"

namespace foldyard {

Roll with_width(Roll roll, Length width);
Roll with_length(Roll roll, Length length);

}  // namespace foldyard
