#pragma once

// The filling of a cut table, row by row (all places across at one place
// along). Internal to CutTable.
//
// A row begins with what is taken, with the best of lower rows trimmed to, and
// with the partings along, which only read finished rows: whole rows are added
// up at once. The partings across then run from the narrowest place to the
// widest; each place that is done is paired at once with every remainder that
// is done.

#include <atomic>
#include <vector>

#include "cutting/packing.h"
#include "cutting/row_ops.h"

namespace foldyard {

class CutTable;

// A panel taken whole: at a place, with its value.
struct Leaf {
  int x;
  int y;
  std::int64_t gain;
};

// Fills `values`, all 0, of a table that has all but its values. Once cancelled,
// the higher rows stay 0.
template <class V>
void fill_table(const CutTable& table, const std::vector<Leaf>& leaves, std::vector<V>& values,
                const std::atomic<bool>* cancelled);

extern template void fill_table<std::int64_t>(const CutTable&, const std::vector<Leaf>&,
                                              std::vector<std::int64_t>&, const std::atomic<bool>*);
extern template void fill_table<Wide>(const CutTable&, const std::vector<Leaf>&, std::vector<Wide>&,
                                      const std::atomic<bool>*);

}  // namespace foldyard
