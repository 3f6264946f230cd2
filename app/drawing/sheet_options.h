#pragma once

// What a sheet shows and on which paper. As it stands, without any change: the
// whole diagram on upright A4 in the job's unit, and no templates.
//
// patterns: pages of these patterns only, in the plan's order; none named: of
// all. templates: panels that get a template in full size (template_page.h).
//
// Example: {Paper::letter} is the whole diagram on Letter.

#include <limits>
#include <optional>
#include <vector>

#include "drawing/paper.h"
#include "measure/write_length.h"

namespace foldyard {

struct SheetOptions {
  Paper paper = Paper::a4;
  bool landscape = false;
  bool diagram = true;     // false: the templates alone
  bool comparison = true;  // of the fold ways, on the first page
  std::optional<std::vector<int>> patterns = {};
  std::optional<Unit> unit = {};  // of all words; none: the job's
  std::vector<int> templates = {};
  bool operator==(const SheetOptions&) const = default;
};

// Pages from first to last, counted from 0, both included; what a sheet does
// not have is left out.
struct PageRange {
  int first = 0;
  int last = std::numeric_limits<int>::max();
  bool operator==(const PageRange&) const = default;
};

}  // namespace foldyard
