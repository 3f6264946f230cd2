#pragma once

// What one length of cloth with a repeat gives under a fold way, matched panels
// included: the strips of strip_search over matched tables.
//
// MatchedTables holds the axes and, made when first asked for, the tables of one
// cloth. REQUIRES that no shape needs a phase on an axis that is folded.
// A length begins at a kept phase of the axis along, or anywhere (lost).
//
// matched_choice: for one state of the axis along, the best layout, strip sizes
// and cutting; layout null where nothing is gained. matched_tree: its cuts.

#include <map>
#include <memory>
#include <mutex>

#include "cutting/cut_tree.h"
#include "cutting/fold_layout.h"
#include "cutting/matched_table.h"
#include "cutting/strips.h"
#include "measure/stop.h"

namespace foldyard {

struct MatchedLimits {
  Length widest;
  Length tallest;
  Length fold_trim;
  Length repeat_across;
  Length repeat_along;
  Length phase_across;  // of the left end of the usable cloth
  int most_places = kAllPlaces;
  const std::atomic<bool>* cancelled = nullptr;
};

class MatchedTables {
 public:
  MatchedTables(std::vector<PhasedShape> shapes, const Objective& aim, const MatchedLimits& limits);
  MatchedTables(const MatchedTables&) = delete;
  MatchedTables& operator=(const MatchedTables&) = delete;

  // May be called from several threads at once.
  const MatchedTable& table(TableKind kind);
  const Objective& aim() const { return aim_; }
  const PhaseAxis& across() const { return across_; }
  const PhaseAxis& along(bool joint) const { return joint ? along_joint_ : along_; }
  Length fold_trim() const { return limits_.fold_trim; }
  // The least strip at a fold edge that can hold a panel (TableSet::least_flap).
  Length least_flap() const { return least_flap_; }
  // The family of the middle strip where it begins at the left selvedge.
  int first_family() const;
  bool is_thinned() const;
  std::int64_t steps() const;  // what a table without joints takes
  bool is_cancelled() const {
    return is_set(limits_.cancelled);
  }

 private:
  std::vector<PhasedShape> shapes_;
  Objective aim_;
  MatchedLimits limits_;
  PhaseAxis across_;
  PhaseAxis along_;
  PhaseAxis across_joint_;
  PhaseAxis along_joint_;
  Length least_flap_;
  const MatchedTable& make(const TableKind& kind);

  std::mutex mutex_;  // guards tables_
  std::map<TableKind, std::unique_ptr<MatchedTable>> tables_;
};

// How a strip is cut: its cell, and the state of the axis across that it is.
struct MatchedStrip {
  Cell cell;
  int state = -1;
  StripUse use = StripUse::none;
};

struct MatchedChoice {
  const FoldLayout* layout = nullptr;
  Length left;  // sizes that the folds give the strips
  Length right;
  Length start;  // of the middle
  Length whole;
  MatchedStrip left_strip, middle_strip, right_strip;
  Cell cell;
};

using Layouts = std::vector<std::unique_ptr<FoldLayout>>;

MatchedChoice matched_choice(MatchedTables& tables, const Layouts& layouts, bool end_to_end,
                             std::int64_t copies, int v);
CutTree matched_tree(MatchedTables& tables, const MatchedChoice& choice, bool end_to_end,
                     std::int64_t copies, int v);

}  // namespace foldyard
