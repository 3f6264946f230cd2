#pragma once

// Whether what a batch is planned from can stand: cloths, marks and prices of
// rolls, webbing, products and order, within their limits (job/limits.h) and
// without contradiction:
//   a product has a panel, each panel and its counts once; names differ
//   rolls of one cloth have the same marks, in whatever order
//   every word of an order or a product is the cloth or a mark of some roll
//   a line asks for a piece; what it asks of cloths adds up to no more than it
//   takes; at_least is no more than at_most; each aim stands once
//   a length of webbing can be cut from a full roll, loss included
//
// Example: an order from "velvet" where no roll is: "order.lines[0].from[0]: no
// roll is of the cloth "velvet" or has it as a mark; …".

#include "job/first_fault.h"
#include "job/job.h"

namespace foldyard {

void check_order_values(FirstFault& faults, const Job& job);

}  // namespace foldyard
