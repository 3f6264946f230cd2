#pragma once

// StripColumns: a cut table read as strips: for each width what a strip gives at
// every folded length. Internal to the strip search.
//
// Column x holds a value for each length that is a sum of panels, in ascending
// order (TableSet::lengths):
//   exact   the strip is as wide as place x, so that its rim is the slit to its
//           neighbour
//   upto    it is slit at place x or any narrower one
//   full    exact, where the strip uses its whole width; elsewhere kNever: there
//           the fold had better lie nearer
// Values count for as many plies (at a fold edge: pairs) as the strip has.
//
// Columns are made when they are first asked for; several threads may ask.

#include <mutex>
#include <vector>

#include "cutting/cut_table.h"

namespace foldyard {

template <class V>
class StripColumns {
 public:
  // rows: the places along of the lengths. REQUIRES both to live as long as
  // this, and V as the table keeps it.
  StripColumns(const CutTable& table, const std::vector<int>& rows, int plies)
      : table_(table), rows_(rows), plies_(plies) {}

  const V* exact(int x) const;
  const V* upto(int x) const;
  // Null where the strip is full at no length.
  const V* full(int x) const;

 private:
  void make_whole() const;  // exact and upto
  void make_full() const;
  std::size_t width() const { return table_.across().size(); }

  const CutTable& table_;
  const std::vector<int>& rows_;
  int plies_;
  mutable std::once_flag whole_once_, full_once_;
  mutable std::vector<V> exact_, upto_, full_;
  mutable std::vector<int> full_column_;  // of each place, or −1
};

}  // namespace foldyard
