#pragma once

// OrderDive: from a plan that is cut in part, a whole one, led by the linear model.
//
// In turn: solve the model of what is still to do; cut each length as often as it
// says, rounded down; where that is never, the one that is nearest to a whole one,
// if it is no less than `share`. What then remains is little: the pieces are
// rounded, and what they lack is filled in cloth by cloth (order_fill.h).
// Once cancelled it goes on with what is cut.
// At the end pieces are counted anew, so what is left over makes more where it can.

#include "batch/order_fill.h"
#include "batch/order_model.h"

namespace foldyard {

struct DiveSettings {
  double share = 0.5;
  int most_turns = 400;
};

OrderState dive(const FillTools& tools, OrderModel& model, OrderState state, const DiveSettings& settings = {});

}  // namespace foldyard
