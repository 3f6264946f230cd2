#pragma once

// Gives a panel that is sewn into goods another cut size: the goods follow from
// it, and from them the sizes of all their panels.
//
// Refused: a panel that is not the goods' body (its size follows from that one),
// and sizes that no goods have (goods/cut_size.h); Problem::where names the
// panel's field.
//
// Example: the body of a bag becomes 2 cm wider, so the bag does, and so its
// lining.

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

// Whether a panel that is sewn lies turned by a quarter from its cut size.
bool lies_turned(const Panel& panel);

// REQUIRES that job.panels[panel] is sewn.
Result<Job> resize_goods(const Job& job, int panel, Length across, Length along);

}  // namespace foldyard
