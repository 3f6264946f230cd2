#pragma once

// Cuts from the rolls that must be cut and are not: a length of another roll of the same
// kind is cut there instead, or one more is cut, whichever is better (order_state.h).
// Pieces are counted anew. Where no length of the pool finds room, or once cancelled, a roll
// stays uncut.

#include <atomic>

#include "batch/order_state.h"

namespace foldyard {

void cut_required(const OrderCase& order, const LengthPool& pool, OrderState& state,
                  const std::atomic<bool>* cancelled = nullptr);

}  // namespace foldyard
