#pragma once

// An order over a few rolls as a general model with whole unknowns: how often each of
// the given lengths is cut from each roll, and how many pieces are made of each cloth.

#include <optional>

#include "batch/order_state.h"

namespace foldyard::test {

// The least cost, in parts, of plans that make all that must be made from these
// lengths; none where there is no such plan. parts_too: unknowns need not be whole.
// REQUIRES lines without named cloths and rolls without flaws.
std::optional<double> least_cost(const OrderCase& order, const LengthPool& pool, bool parts_too);

}  // namespace foldyard::test
