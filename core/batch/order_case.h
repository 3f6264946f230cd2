#pragma once

// OrderCase: an order over many rolls in bare numbers, as the search sees it.
//
// A kind is cloth that can be cut by the same patterns (equal width, selvedge, nap,
// repeat and shrinkage). Rolls of one cloth, kind and price on which every length
// finds room are one source; a shorter roll is a source of its own.
//
// A roll's stretches are its cloth between the squared ends and between flaws: a
// length lies in one of them. Cloth cut off is paid for from the free end to the
// last length.
//
// A roll set apart for some lines is a cloth of its own; the cloth it is cut from may
// take panels of it too: `also`.
//
// A rule holds the number of pieces from its cloths together. What a line asks of
// each cloth is a rule for each.
//
// Example: price 8.00 by the metre is 80 000 parts over 320 000 units.

#include <algorithm>
#include <cstdint>
#include <limits>
#include <string>
#include <vector>

#include "lay/cutter.h"
#include "measure/duration.h"
#include "measure/index.h"
#include "measure/length.h"
#include "measure/rect.h"
#include "measure/wide.h"

namespace foldyard {

inline constexpr std::int64_t kAnyNumber = std::numeric_limits<std::int64_t>::max();

// Panels that go into one piece. from: cloths that may serve; empty: the piece's own.
struct PieceNeed {
  int panel = 0;
  std::int64_t count = 1;
  std::vector<int> from = {};
};

struct PieceRule {
  std::vector<int> cloths;
  std::int64_t at_least = 0;
  std::int64_t at_most = kAnyNumber;
};

struct PieceLine {
  std::int64_t worth = 0;  // of a piece, in parts
  std::int64_t must = 0;
  std::int64_t may = 0;
  std::vector<int> cloths;  // that may serve, ascending
  std::vector<PieceNeed> needs;
  std::vector<PieceRule> rules = {};
};

// Worth of cloth by its length, in parts.
struct ClothPrice {
  std::int64_t parts = 0;
  std::int64_t units = 1;
  // Rounded down.
  std::int64_t of(Length length, std::int64_t scale = 1) const {
    return static_cast<std::int64_t>(Wide(parts) * scale * length.units() / units);
  }
  double by_metre() const { return static_cast<double>(parts) / static_cast<double>(units) * 32.0; }  // whole
  bool operator==(const ClothPrice&) const = default;
};

struct CaseRoll {
  int cloth = 0;
  int kind = 0;
  ClothPrice price;
  Length squaring;
  Length room;  // without flaws
  std::vector<Span> stretches;
  Length thickness = Length::units(1);
  Length keep = Length::units(1);  // the least remnant that is kept
  bool must = false;               // be cut from
  int kept = 0;                    // so many of its lengths, the first, stay as they are
  Length kept_size = {};           // of these, with their allowances
  std::vector<std::int64_t> kept_yield = {};  // of these, by panel; empty: nothing
};

struct CaseSource {
  int cloth = 0;
  int kind = 0;
  std::vector<int> rolls;
  Length room;  // of its longest roll
};

// What counts when what must be made is made, and rules are kept: the first of the
// order's aims first (job/order.h). All are to be little.
enum class CaseAim { cost, lifts, minutes, remnants };

// By cloth, then by panel.
using ByClothAndPanel = std::vector<std::vector<std::int64_t>>;

struct OrderCase {
  int panels = 0;
  int kinds = 0;
  std::vector<std::string> cloths;
  std::vector<CaseRoll> rolls;
  std::vector<CaseSource> sources;
  std::vector<PieceLine> lines;
  Cutter cutter = {Length::units(1), 1};
  Duration unroll = {};  // of a roll
  std::vector<CaseAim> aims = {CaseAim::cost, CaseAim::lifts, CaseAim::minutes, CaseAim::remnants};
  ByClothAndPanel on_hand = {};  // cut before; cloths at the end may be left out
  std::vector<std::vector<int>> also = {};  // by cloth; cloths at the end may be left out

  // Cloths set apart whose panels serve for this one, too.
  const std::vector<int>& also_for(int cloth) const {
    static const std::vector<int> none;
    return cloth < static_cast<int>(also.size()) ? also[ix(cloth)] : none;
  }
};

// A length as it may be cut from any roll of a kind, under one of its ways: `size`
// of roll, with its allowance.
struct OrderLength {
  int kind = 0;
  int way = 0;
  Length size;
  std::vector<std::int64_t> yield;  // by panel
  int plies = 1;
  Duration each = {};  // its time, but for that of the lay in which it is cut
  Duration lay = {};   // of a lay of such lengths
};

// By line, then by cloth (all cloths of the case).
using PiecesMade = std::vector<std::vector<std::int64_t>>;

// By cloth, whether some roll of it is cut in every plan that makes all that must be made and
// keeps the rules: a rule or a line asks for it alone, no panel of it is on hand, and no
// roll is set apart, must be cut or keeps lengths.
std::vector<bool> cloths_opened(const OrderCase& order);
// Which panels of a cloth go into any piece.
std::vector<std::vector<bool>> panels_wanted(const OrderCase& order);

inline bool is_among(const std::vector<int>& cloths, int cloth) {
  return std::find(cloths.begin(), cloths.end(), cloth) != cloths.end();
}

}  // namespace foldyard
