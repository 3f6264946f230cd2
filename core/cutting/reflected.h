#pragma once

// The same cuts, mirror-wise: a tree reflected about the middle of its cloth,
// from side to side or end to end. The order of the cuts stays.
//
// Example: cloth 1000 wide, cut along at 300: reflected across, cut at 700.

#include "cutting/cut_tree.h"

namespace foldyard {

CutTree reflected_across(CutTree tree);
CutTree reflected_along(CutTree tree);

}  // namespace foldyard
