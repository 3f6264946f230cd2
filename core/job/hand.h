#pragma once

// Hand: what a person set for the plan of one roll under one way; the search
// fills in the rest. HandSet: all that was set, by roll and way.
//
// lines: a pinned fold line is where it is put, in x from the left edge of the
// flat cloth; one without a value is searched. Fewer than the way has: the others
// are searched. length: every length is cut just so long (flat, along the roll,
// without allowance); what is left over stays on the roll. at_least: so many of
// a panel, by its name, come out of the roll; every number > 0.
//
// Rolls and panels go by name, so that what was set stays with them when others
// come or go; a name that the job does not have sets nothing. A HandSet holds no
// empty Hand: equal sets are set alike.
//
// Example: off-centre with {lines {405 mm}, length 960 mm}: lengths of 96 cm,
// folded over at 40.5 cm.

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "fold/fold_plan.h"
#include "job/job.h"

namespace foldyard {

struct Hand {
  std::vector<std::optional<Length>> lines;
  std::optional<Length> length;
  std::map<std::string, std::int64_t> at_least;

  bool has_line(int line) const { return 0 <= line && line < std::ssize(lines) && lines[line].has_value(); }
  bool has_lines() const {
    for (const auto& line : lines)
      if (line) return true;
    return false;
  }
  bool is_empty() const { return !has_lines() && !length && at_least.empty(); }
  bool operator==(const Hand&) const = default;
};

struct HandSet {
  struct Place {
    std::string roll;
    FoldWay way;
    auto operator<=>(const Place&) const = default;
  };
  std::map<Place, Hand> hands;
  bool operator==(const HandSet&) const = default;
};

}  // namespace foldyard
