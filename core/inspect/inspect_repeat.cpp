#include "inspect/checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

// The pattern along one axis: how far apart repeats begin, and where one does.
struct Motif {
  Length repeat;
  Length start;
};

std::int64_t left_over(Length place, Length repeat) {
  const std::int64_t over = place.units() % repeat.units();
  return over < 0 ? over + repeat.units() : over;
}

bool begins_a_repeat(Span place, const Motif& motif) {
  return left_over(place.from - motif.start, motif.repeat) == 0;
}

// Twice the way from a panel's middle up to a motif's centre is a whole number of
// double repeats, or one unit more where the middle lies between two units.
bool has_motif_in_its_middle(Span place, const Motif& motif) {
  const Length twice_centre = motif.start * 2 + motif.repeat;
  const std::int64_t off = left_over(twice_centre - (place.from + place.to), motif.repeat * 2);
  return off == 0 || off == 1;
}

bool matches(Span place, const Motif& motif, Match match) {
  if (motif.repeat <= Length() || match == Match::none) return true;
  return match == Match::start ? begins_a_repeat(place, motif)
                               : has_motif_in_its_middle(place, motif);
}

struct Laid {
  std::size_t number;
  Length start;  // of its pattern, on the roll
  const Pattern& pattern;
};

void inspect_length(const Job& job, const Fabric& fabric, const Laid& length, Findings& findings) {
  const Repeat& r = fabric.repeat;
  std::size_t number = 0;
  for (const PlacedPanel& placed : length.pattern.panels) {
    const Panel& goods = job.panels[ix(placed.panel)];
    const Span along{length.start + placed.flat.along.from, length.start + placed.flat.along.to};
    ++number;
    const auto require = [&](bool holds, const char* way) {
      findings.require(holds, "Length ", length.number, ": panel ", number, " (", goods.name,
                       ") does not match the pattern ", way);
    };
    require(matches(along, {r.along, r.start_along}, goods.match), "along");
    require(matches(placed.flat.across, {r.across, r.start_across}, goods.match), "across");
  }
}

}  // namespace

void inspect_repeat(const Job& job, const Plan& plan, Findings& findings) {
  const Fabric& fabric = job.rolls[ix(plan.roll)].fabric;
  if (!fabric.repeat.is_any()) return;
  for (std::size_t i = 0; i < plan.lengths.size(); ++i) {
    const LengthOnRoll& length = plan.lengths[i];
    const Length start = length.on_roll.from + job.losses.allowance / 2;
    inspect_length(job, fabric, {i + 1, start, pattern_of(plan, length)}, findings);
  }
}

}  // namespace foldyard::inspection
