#pragma once

// Panel::at_most in an order: no more of the panel are cut from all rolls together.
//
// over_limit: an order that takes more than may be cut, what is on hand counted, is
// refused. hold_limits: spare panels beyond the limit are left uncut, of the last
// lengths first, but for lengths that are kept; where plies lie over each other several are
// left at once, and no more than are spare. Gives the state with other lengths, and the
// pool more of them; what cannot be held stays.
//
// Example: 10 of a panel may be cut and 9 are taken; lengths that give 12 lose two.

#include <optional>

#include "job/batch_lengths.h"
#include "measure/result.h"

namespace foldyard {

std::optional<Problem> over_limit(const Job& job);
OrderState hold_limits(const Job& job, const BatchCase& c, BatchLengths& lengths, OrderState state);

}  // namespace foldyard
