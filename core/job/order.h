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

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

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

// What was cut at one time: so many lays, and what they gave.
struct CutRecord {
  std::string when;  // in the maker's words
  std::int64_t lays = 0;
  std::vector<CutPanels> panels;
  bool operator==(const CutRecord&) const = default;
};

enum class BatchAim { cloth, lifts, minutes, remnants };

struct Order {
  std::vector<OrderLine> lines;
  std::vector<BatchAim> aims = {BatchAim::cloth, BatchAim::lifts, BatchAim::minutes, BatchAim::remnants};
  bool operator==(const Order&) const = default;
};

}  // namespace foldyard
