#pragma once

// The tables of a batch that look at its rolls and lays, and rows of the others
// (batch_tables.h).

#include "drawing/batch_tables.h"

namespace foldyard {

// A row for each lay, in cutting order.
BatchTable lays_table(const BatchAnswer& answer);
// A row for each roll that is cut.
BatchTable rolls_table(const BatchAnswer& answer);
// A row for each remnant that is kept: of rolls, and of lengths.
BatchTable remnants_table(const BatchAnswer& answer);
QStringList webbing_row(const Job& job, const WebbingPlan& plan, const LengthCuts& cuts);

}  // namespace foldyard
