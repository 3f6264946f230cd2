#pragma once

// Panels on hand answer to what a roll of their cloth would answer to
// (cloth/cloth_of.h): a roll of no length that stands for them.

#include "cloth/roll.h"
#include "job/order.h"

namespace foldyard {

inline Roll as_roll(const CutPanels& cut) {
  Roll roll;
  roll.cloth = cut.cloth;
  roll.marks = cut.marks;
  return roll;
}

}  // namespace foldyard
