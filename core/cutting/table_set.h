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

#include <atomic>
#include <future>
#include <map>
#include <memory>
#include <mutex>

#include "cutting/cut_table.h"

namespace foldyard {

struct TableLimits {
  Length widest;
  Length tallest;
  Length fold_trim;
  int most_places = kAllPlaces;
  const std::atomic<bool>* cancelled = nullptr;  // true: tables stay unfinished

  bool is_cancelled() const { return cancelled && cancelled->load(std::memory_order_relaxed); }
};

class TableSet {
 public:
  TableSet(std::vector<Shape> shapes, const Objective& aim, const TableLimits& limits);

  const CutTable& table(TableKind kind);
  const Objective& aim() const { return aim_; }
  const std::vector<Shape>& shapes() const { return shapes_; }
  const Grid& across(bool joint) const { return across_[joint]; }
  const Grid& along(bool joint) const { return along_[joint]; }
  Length widest() const { return limits_.widest; }
  Length fold_trim() const { return limits_.fold_trim; }
  // The least strip at a fold edge that can hold a panel: half of one on the
  // fold, or the fold trim and a whole one.
  Length least_flap() const { return least_flap_; }
  bool is_thinned() const { return thinned_; }
  // Tables made since may be unfinished: what they give can be cut, but more may
  // be had.
  bool is_cancelled() const { return limits_.is_cancelled(); }

 private:
  std::unique_ptr<CutTable> make(const TableKind& kind);
  Grid with_remainders(const Grid& joint, const Grid& normal, Length limit) const;

  std::vector<Shape> shapes_;
  Objective aim_;
  Grid across_[2];
  Grid along_[2];
  TableLimits limits_;
  Length least_flap_;
  bool thinned_ = false;
  std::mutex mutex_;  // guards tables_
  std::map<TableKind, std::shared_future<std::unique_ptr<CutTable>>> tables_;
};

}  // namespace foldyard
