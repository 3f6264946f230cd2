#pragma once

// Strips: what the three strips of a layout give at one folded length, and how
// many slits part them. Internal to the strip search.

#include "cutting/fold_layout.h"
#include "cutting/table_set.h"

namespace foldyard {

// A strip as it would be cut: its whole size is a place (`exact`), so that its
// rim is the slit to its neighbour, or it is slit at a narrower place.
struct Strip {
  Cell cell;
  int place = -1;  // exact: the place; else the floor place
  bool exact = false;
  bool is_used() const { return cell.gain > 0; }
};

struct StripTables {
  const CutTable* left = nullptr;
  const CutTable* middle = nullptr;
  const CutTable* right = nullptr;
};

StripTables strip_tables(TableSet& tables, const FoldLayout::Shares& shares, bool end_to_end,
                         std::int64_t copies);

inline Strip exact_strip(const CutTable& table, int place, int v) {
  return {table.at(place, v), place, true};
}
inline Strip narrower_strip(const CutTable& table, int floor_place, int v) {
  return {table.best_up_to(floor_place, v), floor_place, false};
}

// A strip, the size the fold gives it, and where it is slit (its size, or less
// where the middle goes on under it).
struct Sized {
  Length size;
  Length slit_at;
  Strip strip;
};

// A strip of a size that need not be a place: slit narrower, or whole if it is.
std::vector<Sized> forced_strips(const CutTable* table, Length size, int v);

// The three together; slit is the cost of one cut over the folded length.
struct StripsAt {
  StripsAt(const FoldLayout& layout, const Sized& left, const Sized& right, std::int64_t slit);

  const FoldLayout* layout;
  Length left_slit;
  Length right_slit;
  Length whole;
  Length start;   // of the middle
  Length middle;  // negative where the strips do not fit
  std::int64_t slit;
};

int slits(const StripsAt& at, const Strip& left, const Strip& middle, Length middle_size,
          const Strip& right);
Cell total(const StripsAt& at, const Strip& left, const Strip& middle, Length middle_size,
           const Strip& right);

}  // namespace foldyard
