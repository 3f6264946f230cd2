#pragma once

// Plans made by hand, for tests of the drawings: no search stands behind them,
// so only what a picture needs is filled in.

#include "drawing/sheet.h"

namespace foldyard::samples {

struct Sample {
  Job job;
  Comparison comparison;
  int chosen = 0;

  const Plan& plan() const { return *comparison.ways[static_cast<std::size_t>(chosen)].plan; }
  Sheet sheet(Paper paper) const { return sheet(SheetOptions{paper}); }
  Sheet sheet(const SheetOptions& options) const { return Sheet(job, comparison, chosen, options); }
};

// 1500 mm selvedge to selvedge, 450 × 900 mm panels: one on the fold, two
// through both plies of every length.
Sample carriers();
// Both edges in, two fold edges, with a second, shorter pattern.
Sample both_edges_in();
// A fan of five, one-way cloth, lengths of 30 cm: many lengths on the roll.
Sample fan_of_five();
// In thirds and end to end: a fold across, too.
Sample end_to_end();
// Open cloth with 12 panels of long names, in inches; one name needs escaping.
Sample open_long_names();

std::vector<Sample> all();

}  // namespace foldyard::samples
