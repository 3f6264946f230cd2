#pragma once

// An order: how many pieces of which products are to be made, of which cloth.
//
// A line asks for `must` pieces and takes up to `may` more, which fill what cloth
// is left where they are worth more than it. from: cloths or marks that may
// serve; empty: any. A cloth is what rolls of the same Roll::cloth hold; a roll
// without one is a cloth of its own, by its name. A piece is of one cloth, from
// one or more rolls of it. Rolls of one cloth have the same marks.
// each_at_least: of every cloth that may serve. rules: how many pieces of a
// cloth, or of all cloths with a mark, there are to be.
//
// roll: all panels of a line's pieces, but those that name cloths of their own, come
// from the roll of this name, and none that is on hand; empty: from any.
//
// kept: lengths that are cut as they stand here, whatever else is planned; what they
// yield serves the order. steps: the cuts of one length in preorder (cutting/cut_tree.h):
// what a step of kind cut parts is told by the steps after it, first the part below.
// The levels of the folds are those of the way.
//
// aims: what to look for when the order is filled, most important first; each
// once. What comes first is never given up for what comes later.
//   cloth     least worth of cloth cut off (Roll::price by the metre), less the
//             worth of the pieces that may be made
//   lifts     fewest lifts under the cutter
//   minutes   least time at the cutting table
//   remnants  most worth of cloth in remnants that are kept
//
// Example: "40 carriers, at least 6 of each colour, no more than 12 printed":
//   {product 0, must 40, may 0, from {}, each_at_least 6, rules {{"printed", 0, 12}}}
// Two lengths of 96 cm kept on "moss 1", slit at 45 cm, a body on the left of it:
//   {"moss 1", 2, 96 cm, open, {}, {{cut, along, 45 cm}, {take, body}, {leave}}}

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "cutting/cut_tree.h"
#include "fold/fold_plan.h"
#include "measure/length.h"

namespace foldyard {

struct ClothRule {
  std::string of;  // a cloth or a mark
  std::int64_t at_least = 0;
  std::optional<std::int64_t> at_most = {};
  bool operator==(const ClothRule&) const = default;
};

struct OrderLine {
  int product = 0;  // index into Job::products
  std::int64_t must = 0;
  std::int64_t may = 0;
  std::vector<std::string> from = {};
  std::int64_t each_at_least = 0;
  std::vector<ClothRule> rules = {};
  std::string roll = {};
  bool operator==(const OrderLine&) const = default;
};

// Panels that are cut and not yet sewn: they serve the order as panels of their
// cloth, which may have no roll left; marks are the cloth's.
struct CutPanels {
  int panel = 0;  // index into Job::panels
  std::string cloth;
  std::vector<std::string> marks = {};
  std::int64_t count = 1;
  bool operator==(const CutPanels&) const = default;
};

// Cloth that was cut off a roll with its losses, as reckoned, and what the roll held
// then, as found; 0 where it left the shelf.
struct CutFromRoll {
  std::string roll;  // its name then
  Length cut;
  Length left;
  bool operator==(const CutFromRoll&) const = default;
};

// What was cut at one time: so many lays, and what they gave. spoilt: what was cut
// besides and is lost.
struct CutRecord {
  std::string when;  // in the maker's words
  std::int64_t lays = 0;
  std::vector<CutPanels> panels;
  std::vector<CutPanels> spoilt = {};
  std::vector<CutFromRoll> rolls = {};
  bool operator==(const CutRecord&) const = default;
};

struct KeptStep {
  NodeKind kind = NodeKind::leave;
  Direction direction = Direction::along;  // kind cut
  Length at = {};                          // kind cut
  int panel = -1;                          // kind take: index into Job::panels
  bool turned = false;
  bool operator==(const KeptStep&) const = default;
};

// So many equal lengths of a roll, by its name.
struct KeptLength {
  std::string roll;
  std::int64_t count = 1;
  Length length;  // flat, along the roll, without allowance
  FoldWay way = {};
  std::vector<Length> lines = {};
  std::vector<KeptStep> steps;
  bool operator==(const KeptLength&) const = default;
};

enum class BatchAim { cloth, lifts, minutes, remnants };

struct Order {
  std::vector<OrderLine> lines;
  std::vector<BatchAim> aims = {BatchAim::cloth, BatchAim::lifts, BatchAim::minutes, BatchAim::remnants};
  std::vector<KeptLength> kept = {};
  bool operator==(const Order&) const = default;
};

}  // namespace foldyard
