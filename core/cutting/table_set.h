#pragma once

// TableSet: the cut tables that the fold ways of one cloth share, each made
// when it is first asked for.
//
// A shape without gain is never cut, but counts for where folds may lie.
// widest and tallest bound the rectangles; a joint halves the width but not
// the height (a length folded end to end is twice as long as it lies).
// most_places caps a grid; a capped set says so by is_thinned(), and then its
// answers are good plans but not proved best.
//
// table() may be called from several threads at once: who asks first for a kind
// makes it, the others wait. What is made does not depend on who makes it.

#include <algorithm>
#include <atomic>
#include <future>
#include <map>
#include <memory>
#include <mutex>

#include "cutting/cut_table.h"
#include "cutting/strip_columns.h"
#include "measure/stop.h"

namespace foldyard {

struct TableLimits {
  Length widest;
  Length tallest;
  Length fold_trim;
  int most_places = kAllPlaces;
  const std::atomic<bool>* cancelled = nullptr;  // true: tables stay unfinished

  bool is_cancelled() const { return is_set(cancelled); }
};

class TableSet {
 public:
  TableSet(std::vector<Shape> shapes, const Objective& aim, const TableLimits& limits);

  const CutTable& table(TableKind kind);
  // The table of kind, with plies (at a fold edge: pairs) for each of its copies,
  // as strips at lengths(kind.joint_along).
  // REQUIRES V as the packing says.
  template <class V> const StripColumns<V>& columns(const TableKind& kind, int plies);
  // The places along that are sums: the lengths worth cutting.
  const std::vector<int>& lengths(bool joint) const { return lengths_[joint]; }
  const Objective& aim() const { return packing_.aim(); }
  const Packing& packing() const { return packing_; }
  const std::vector<Shape>& shapes() const { return shapes_; }
  const Grid& across(bool joint) const { return across_[joint]; }
  const Grid& along(bool joint) const { return along_[joint]; }
  Length widest() const { return limits_.widest; }
  Length fold_trim() const { return limits_.fold_trim; }
  // The least strip at a fold edge that can hold a panel: half of one on the
  // fold, or the fold trim and a whole one.
  Length least_flap() const { return least_flap_; }
  bool is_thinned() const { return thinned_; }
  // What the tables take at most, in bytes, each kind made for so many copies and read as
  // strips. Nothing of it is made.
  std::int64_t most_bytes(std::int64_t copies) const;
  // Of the largest grid of cloth without a joint.
  int most_places() const { return std::max(across_[0].size(), along_[0].size()); }
  // Tables made since may be unfinished: what they give can be cut, but more may
  // be had.
  bool is_cancelled() const { return limits_.is_cancelled(); }

 private:
  // Made once for each kind, by whom asks first.
  template <class Made>
  class Shelf {
   public:
    template <class Make> const Made& get(const TableKind& kind, Make make);

   private:
    std::mutex mutex_;  // guards made_
    std::map<TableKind, std::shared_future<std::unique_ptr<Made>>> made_;
  };

  std::unique_ptr<CutTable> make(const TableKind& kind);
  Grid with_remainders(const Grid& joint, const Grid& normal, Length limit) const;

  Length shared_unit() const;

  std::vector<Shape> shapes_;
  Grid across_[2];
  Grid along_[2];
  TableLimits limits_;
  Length least_flap_;
  bool thinned_ = false;
  Packing packing_;
  std::vector<int> lengths_[2];
  Shelf<CutTable> tables_;
  Shelf<StripColumns<std::int64_t>> columns_;
  Shelf<StripColumns<Wide>> wide_columns_;
};

}  // namespace foldyard
