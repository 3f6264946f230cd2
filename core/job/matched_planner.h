#pragma once

// MatchedPlanner: plans a roll with a pattern repeat that some panels must match.
// Internal to the doors of job/plan_roll.h, like RollPlanner.
//
// Each way is planned three times over: as if nothing need match (what matching
// costs, and a bound); where a fold would break the match, with the panels that
// need none alone; else by matched tables and a series of lengths that begin at
// their phases.
//
// A fold along the roll keeps the phase along and breaks the one across; end to
// end it is the other way round. So cloth that repeats along may be folded along,
// cloth that repeats across end to end, and cloth that does both neither way.
//
// plan() may be called from several threads at once.

#include "batch/phased_series.h"
#include "cutting/matched_strips.h"
#include "job/roll_planner.h"

namespace foldyard {

// Whether the cloth repeats and some panel is to match it.
bool needs_matching(const Job& job, int roll);

class MatchedPlanner {
 public:
  MatchedPlanner(const Job& job, int roll, Aim aim, const SearchBudget& budget);

  Result<Plan> plan(const FoldWay& way);

 private:
  // A lay that may be cut: so many lengths of a state of the axis along.
  struct LayOption {
    int state = 0;
    std::int64_t copies = 1;
    MatchedChoice choice;
  };

  bool keeps_match(const FoldWay& way) const;
  Result<Plan> plan_unmatched_panels(const FoldWay& way);
  Result<Plan> plan_matched(const FoldWay& way);
  std::vector<PhasedShape> phased_shapes(const std::vector<Shape>& shapes) const;
  std::unique_ptr<MatchedTables> make_tables() const;
  std::vector<LayOption> lay_options(const Layouts& layouts, const FoldWay& way);
  void add_options(const Layouts& layouts, const FoldWay& way, std::int64_t copies,
                   std::vector<LayOption>& options);
  PhasedEntry entry_of(const LayOption& option, const FoldWay& way, const AimScale& scale) const;
  Plan write_plan(const FoldWay& way, const std::vector<LayOption>& options,
                  const std::vector<PhasedEntry>& entries, const PhasedSeries& series);
  void lay_on_roll(const std::vector<PhasedEntry>& entries, const PhasedSeries& series,
                   Plan& plan) const;
  Proof prove(const Plan& plan, const PhasedSeries& series) const;
  RollRepeat roll_repeat() const;
  Span usable_roll() const;
  Length length_of(const FoldWay& way, int state) const;

  const Job& job_;
  Job without_match_;  // panels that must match are worth nothing
  int roll_index_;
  const Roll& roll_;
  Aim aim_;
  SearchBudget budget_;
  RollPlanner unmatched_;
  RollPlanner others_;
  std::unique_ptr<MatchedTables> tables_;  // null where the roll is too short to cut
};

}  // namespace foldyard
