#pragma once

// RollPlanner: plans one roll under any way for one aim, sharing the cut
// tables between the ways. Internal to the doors of job/plan_roll.h; plans
// come out summed up but not yet inspected. plan() may be called from several
// threads at once.

#include <memory>
#include <optional>

#include "batch/series.h"
#include "cutting/strip_search.h"
#include "job/aim_scale.h"
#include "job/hand.h"
#include "job/plan_roll.h"
#include "measure/words.h"

namespace foldyard {

class RollPlanner {
 public:
  // prices: of panels whose copies are limited; then a plan is best at these.
  RollPlanner(const Job& job, int roll, Aim aim, const SearchBudget& budget, const Prices& prices = {});

  // Counts each of its stages in budget.progress as it is done.
  static constexpr int kStages = 2;
  // around_flaws: else, and once cancelled, flaws only cost a plan its panels.
  Result<Plan> plan(const FoldWay& way, bool around_flaws = true);
  // With the folds where they are given; their levels are the way's.
  Result<Plan> plan_at(const FoldPlan& fold);
  // With lines and length as they are set; how many of a panel is not looked at.
  // Where not every fold that may lie so was searched, it is not proved.
  Result<Plan> plan_within(const FoldWay& way, const Hand& hand);
  // The lines of every fold among which plan() finds the best: in no order, some
  // more than once. Empty where the way is refused.
  std::vector<std::vector<Length>> fold_places(const FoldWay& way) const;
  // Whether the tables of all ways together take no more bytes than the budget has. Those of
  // one way never do: of large ones places are left out.
  bool may_share() const;
  // What the tables of one way take at most, in bytes, by estimate; nothing for a roll that is
  // no longer than its end losses.
  std::int64_t bytes_of_one() const;
  // No plan of any way has more worth than this.
  Worth area_bound() const;

  // What a search at prices goes on from. The plan may have no lengths: then
  // nothing gains. bound: in gain units, of any series of lays; true where
  // is_whole.
  struct PricedLay {
    int place = 0;             // of the grid along
    std::int64_t lengths = 1;  // more than one only for an aim that weighs time
    Length size;               // of roll
    std::int64_t value = 0;    // the most
    std::int64_t apart = 0;    // what the lay costs besides its cuts, taken off in value
  };
  struct Searched {
    Plan plan;
    std::int64_t bound = 0;
    bool is_whole = false;  // no place was left out, no table is unfinished
    std::vector<PricedLay> lays;
  };
  Result<Searched> search(const FoldWay& way);
  // The same with lines and length as they are set; lays stays empty. patterns:
  // of the lays worth most for their cloth, at most so many.
  struct SearchedWithin {
    Searched best;
    std::vector<Pattern> patterns;
  };
  Result<SearchedWithin> search_within(const FoldWay& way, const Hand& hand, std::size_t patterns);
  TableSet& tables() { return *tables_; }  // REQUIRES a search that was not refused
  Layouts layouts_for(const FoldWay& way) const;
  // Why no plan may be of this way; empty where one may.
  Words refusal(const FoldWay& way) const;
  std::int64_t most_lengths(const FoldWay& way) const;

 private:
  // A lay that may be cut: so many lengths of grid place `place`.
  struct LayOption {
    int place = 0;
    std::int64_t copies = 1;
    const StripSearch* search = nullptr;
    // Longer than the place, flat: the rest of the length is cut off first.
    std::optional<Length> length = {};
    std::int64_t trim = 0;  // what that costs a lay
    const Cell& cell() const { return search->cells()[place]; }
  };
  // What may be searched: the folds, and where it is set, the only length.
  struct Choice {
    Layouts layouts;
    bool is_complete = true;  // every fold that may lie so
    std::optional<Length> length = {};
    const char* note = "";  // of a proof, to say
  };
  using Searches = std::vector<std::unique_ptr<StripSearch>>;  // by copies, from 1

  std::int64_t bytes_of_all() const;
  FoldLimits fold_limits() const;
  FoldPlan fold_with(const FoldWay& way, const Hand& hand) const;
  Result<Choice> choice_within(const FoldWay& way, const Hand& hand) const;
  Words why_no_such_length(const FoldWay& way, Length length) const;
  Result<Plan> plan_among(const FoldWay& way, const Choice& choice, bool around_flaws);
  std::vector<LayOption> options_of(const Searches& searches, const FoldWay& way, const Choice& choice) const;
  std::vector<LayOption> options_of_length(const Searches& searches, const FoldWay& way, Length length) const;
  std::optional<LayOption> best_of_length(const StripSearch& search, std::int64_t copies, const FoldWay& way,
                                          Length length) const;
  Searches searches_of(TableSet& tables, const Layouts& layouts, const FoldWay& way) const;
  std::vector<LayOption> lay_options(const TableSet& tables, const Searches& searches,
                                     const FoldWay& way) const;
  std::vector<SeriesEntry> entries_of(const std::vector<LayOption>& options, const TableSet& tables,
                                      const FoldWay& way, const AimScale& scale) const;
  Pattern pattern_of(TableSet& tables, const FoldWay& way, const LayOption& option) const;
  Plan write_plan(TableSet& tables, const FoldWay& way, std::vector<LayOption> chosen) const;
  // lost: what flaws take from the plan; the proof is of the roll without them.
  Proof prove(const Plan& plan, Worth lost, const Series& series, const Choice& choice) const;
  // REQUIRES a plan that flaws take panels from, its proof as above.
  Plan plan_around_flaws(TableSet& tables, const FoldWay& way, const AimScale& scale,
                         const std::vector<LayOption>& options, const Plan& clean) const;
  void count_stage() const;
  Length size_of(const TableSet& tables, const FoldWay& way, const LayOption& option) const;
  std::vector<PricedLay> lays_of(const std::vector<LayOption>& options, const std::vector<SeriesEntry>& entries,
                                 const FoldWay& way, const AimScale& scale) const;

  const Job& job_;
  int roll_index_;
  const Roll& roll_;
  Aim aim_;
  SearchBudget budget_;
  Length capacity_;  // of the roll, less the squaring of both ends
  std::unique_ptr<TableSet> tables_;  // null where the roll is too short to cut
};

}  // namespace foldyard
