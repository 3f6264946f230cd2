#pragma once

// Whether folds whose lines are given can lie so, for the way they name.
//
// Lines ascend inside the width, as many as the way has. Open cloth, selvedge to
// selvedge and plain ways have one place. Both edges in: the flaps do not
// overlap. Fans and quarters: inner legs equal, the first and the last no longer
// (so that every fold edge lies at a rim; an uneven fan is refused). The folded
// cloth is no deeper than `depth`. levels are not looked at: they are the way's.
//
// Gives the reason why not in one clause, or no words.

#include "cloth/roll.h"
#include "fold/fold_plan.h"
#include "measure/words.h"
#include "measure/write_length.h"

namespace foldyard {

Words why_no_such_fold(const FoldPlan& fold, const Fabric& fabric, Length depth, Unit unit);

}  // namespace foldyard
