#pragma once

// Whether what a panel is sewn into can stand: limits (job/limits.h), sizes its
// kind does not have (goods/cut_size.h), and a panel whose across and along are
// not its cut size, one way round or the other.
//
// Problem::where is the field within the panel: "sewn.depth", or "across".

#include <optional>

#include "goods/panel.h"
#include "measure/result.h"
#include "measure/write_length.h"

namespace foldyard {

// unit: for the words. REQUIRES that the panel is sewn.
std::optional<Problem> check_sewn(const Panel& panel, Unit unit);

}  // namespace foldyard
