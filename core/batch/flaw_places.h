#pragma once

// FlawPlaces: where flaws lie under lengths, and where lengths may begin so
// that a panel just clears a flaw. Internal to the series along a roll with
// flaws.
//
// Example: a flaw that ends at 5, a panel that begins 2 behind its pattern's
// start, no lead: the length may begin at 3.

#include <vector>

#include "batch/flawed_series.h"

namespace foldyard {

class FlawPlaces {
 public:
  // Indices of flaws, last excluded.
  struct Range {
    int first = 0;
    int last = 0;
  };
  struct Start {
    Length from;
    int entry = 0;
    int layout = 0;
  };

  // REQUIRES both to live as long as this.
  FlawPlaces(const std::vector<FlawedEntry>& entries, const FlawedCloth& cloth);

  const FlawedCloth& cloth() const { return cloth_; }
  // In order of place; each entry and layout at most once at a place.
  const std::vector<Start>& starts() const { return starts_; }
  // All flaws that meet the span lie in the range; it is empty if none does.
  Range under(Span on_roll) const;
  // The worth of the panels that touch a flaw of the range, the length
  // beginning there.
  std::int64_t loss(Range under, const std::vector<FlawedPanel>& layout, Length from) const;

 private:
  void add_starts(int entry, int layout, const FlawedPanel& panel, Length size);

  const std::vector<FlawedEntry>& entries_;
  const FlawedCloth& cloth_;
  std::vector<Length> furthest_;  // where the flaws up to here end at most
  std::vector<Start> starts_;
};

}  // namespace foldyard
