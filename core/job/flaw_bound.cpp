#include "job/flaw_bound.h"

#include <algorithm>

#include "batch/series.h"

namespace foldyard {

namespace {

constexpr std::int64_t kBoundSteps = 2'000'000;

// Whether no panel fits beside the flaw, so that none lies over any of it.
bool parts_the_roll(const Rect& flaw, Span usable, const std::vector<Shape>& shapes) {
  const Length room = std::max(flaw.across.from - usable.from, usable.to - flaw.across.to);
  return std::all_of(shapes.begin(), shapes.end(), [&](const Shape& s) { return s.across > room; });
}

// The cloth between the flaws that part it, each stretch as long as it counts.
std::vector<Length> stretches(const Job& job, const FlawedCloth& cloth, Span usable,
                              const std::vector<Shape>& shapes) {
  std::vector<Length> sizes;
  Length at = cloth.usable.from, extra;
  for (const Rect& flaw : cloth.flaws) {
    if (!parts_the_roll(flaw, usable, shapes)) continue;
    sizes.push_back(flaw.along.from - at + extra + job.losses.allowance);
    extra = job.losses.allowance;
    at = std::max(at, flaw.along.to);
  }
  sizes.push_back(cloth.usable.to - at + extra);
  return sizes;
}

}  // namespace

Worth flaw_bound(const Job& job, const Roll& roll, const FlawedCloth& cloth,
                 const std::vector<Shape>& shapes, const std::vector<FlawedCandidate>& candidates) {
  std::vector<SeriesEntry> entries;
  for (const FlawedCandidate& c : candidates)
    entries.push_back({c.pattern.length + job.losses.allowance, c.pattern.worth.parts(), 0});
  Worth bound;
  for (const Length size : stretches(job, cloth, roll.fabric.usable(), shapes))
    if (size > Length()) bound += Worth::parts(best_series(entries, size, kBoundSteps).bound);
  return bound;
}

}  // namespace foldyard
