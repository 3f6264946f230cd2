#pragma once

// Plan: how one roll is cut under one fold way, with all a person needs.
//
// Coordinates. On the roll: y from the free end. In a pattern, flat: x from
// the left edge of the cloth, y from the start of the length; folded: u and v
// (see fold/fold_map.h). A pattern is one kind of length; it is cut in lays
// (stacks of folded lengths that go under the cutter together).
//
// Conservation (inspected): in a pattern, panels + rests = width × length; on
// the roll, lengths + cloth cut out for flaws + losses + remnant = the roll.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "cutting/cut_tree.h"
#include "fold/fold_plan.h"
#include "measure/duration.h"
#include "measure/index.h"
#include "measure/rect.h"
#include "measure/words.h"
#include "measure/worth.h"

namespace foldyard {

// What a plan is best for. most_worth: the most worth; among equals the fewest
// cuts at the fold positions tried (cross-cuts counted), then the least travel
// where uneven rests are trimmed first (docs/method.md). worth_less_time: the
// most of worth minus the maker's time at their rate, on the same terms.
enum class Aim { most_worth, worth_less_time };

struct PlacedPanel {
  int panel = 0;  // index into Job::panels
  bool turned = false;
  bool on_fold = false;  // a crease runs through it
  Rect flat;
  Rect folded;
  bool operator==(const PlacedPanel&) const = default;
};

enum class RestKind { selvedge, offcut, remnant };

struct Rest {
  RestKind kind = RestKind::offcut;
  Rect flat;
  bool operator==(const Rest&) const = default;
};

// One straight cut in its order: at u over a span of v, or at v over a span of u.
struct Cut {
  Direction direction = Direction::along;
  Length at;
  Span over;
  bool operator==(const Cut&) const = default;
};

struct Pattern {
  Length length;  // flat, along the roll, without allowance
  FoldPlan fold;
  Length folded_across;
  Length folded_along;
  CutTree tree;
  std::vector<Cut> cuts;
  std::vector<PlacedPanel> panels;
  std::vector<Rest> rests;
  Worth worth;        // of one length
  Length travel;      // of the cutter through one lay
  int plies = 1;      // the most that lie on one place in one length
  bool operator==(const Pattern&) const = default;
};

// Lay number i (from 0) is a stack of `lengths` equal folded lengths.
struct Lay {
  int pattern = 0;
  int lengths = 1;
  bool operator==(const Lay&) const = default;
};

// A length where it lies on the roll; its allowance is included in the span,
// half of it (rounded down to a unit) before its pattern, the rest behind.
struct LengthOnRoll {
  int lay = 0;
  Span on_roll;
  // The place on the roll where its pattern's y is 0.
  Length pattern_start(Length allowance) const { return on_roll.from + allowance / 2; }
  bool operator==(const LengthOnRoll&) const = default;
};

// A panel that is cut and touches a flaw: it counts neither in yield nor in
// worth. Indices into Plan::lengths, Pattern::panels and Roll::flaws (the first
// flaw that it touches).
struct LostPanel {
  int length = 0;
  int panel = 0;
  int flaw = 0;
  bool operator==(const LostPanel&) const = default;
};

// bound: no plan of the kind that `bound_of` names has more worth (for
// worth_less_time: net worth). proved: the plan reaches it, or the search was
// exhaustive. note: how, in one sentence.
struct Proof {
  Worth bound;
  bool proved = false;
  Words note;
  bool operator==(const Proof&) const = default;
};

// What the same roll and way give where no panel need match the pattern.
struct Unmatched {
  Worth worth;
  Area used;
  bool operator==(const Unmatched&) const = default;
};

struct Plan {
  int roll = 0;  // index into Job::rolls
  FoldWay way;    // of every length; of a batch's roll that of its first
  Aim aim = Aim::most_worth;
  std::vector<Pattern> patterns;
  std::vector<Lay> lays;
  std::vector<LengthOnRoll> lengths;  // from the free end
  // Of the roll, between lengths: for flaws, or so that the next length begins
  // where the pattern lets it.
  std::vector<Span> cut_out;
  std::vector<LostPanel> lost;        // in the order of lengths, then panels
  Span remnant;                       // on the roll; may be empty
  bool remnant_kept = false;          // large enough by Losses::keep_*

  std::vector<std::int64_t> yield;  // by panel
  Worth worth;
  Worth net;      // worth minus the time at the maker's rate
  Area used;      // in panels
  Area cloth;     // the whole roll
  std::int64_t cuts = 0;        // under the cutter, over all lays
  std::int64_t cross_cuts = 0;  // along the roll
  Length travel;                // of the cutter, over all lays, without cross-cuts
  Duration time;
  Proof proof;
  std::optional<Unmatched> unmatched;  // where panels must match the pattern
  bool operator==(const Plan&) const = default;
};

// How a lay, or a length, is cut. REQUIRES one of this plan.
inline const Pattern& pattern_of(const Plan& plan, const Lay& lay) { return plan.patterns[ix(lay.pattern)]; }
inline const Pattern& pattern_of(const Plan& plan, const LengthOnRoll& length) {
  return pattern_of(plan, plan.lays[ix(length.lay)]);
}

// A way in the comparison: its plan, or why there is none.
struct WayResult {
  FoldWay way;
  std::optional<Plan> plan;
  Words refused;
};

struct Comparison {
  int roll = 0;
  Aim aim = Aim::most_worth;
  std::vector<WayResult> ways;  // in the order of all_ways
  std::vector<int> ranking;     // indices into ways, best first, refused left out
  // Indices into ways of the plans that no other beats in both worth and time,
  // from most worth to least time.
  std::vector<int> frontier;
};

}  // namespace foldyard
