#include "job/matched_planner.h"

#include <algorithm>
#include <limits>

#include "job/cloth_to_cut.h"
#include "job/sum_up.h"
#include "job/write_pattern.h"
#include "measure/index.h"
#include "measure/write_length.h"

namespace foldyard {

namespace {

bool must_match(const Panel& panel) { return panel.match != Match::none; }

Job without_matched_panels(Job job) {
  for (Panel& p : job.panels)
    if (must_match(p)) p.worth = Worth();
  return job;
}

const char* broken_match(const Repeat& repeat, const FoldWay& way) {
  return repeat.across > Length() && way.kind != FoldKind::open
             ? to_say("on a ply turned over by a fold along the roll the pattern runs the other way across")
             : to_say("on a ply turned over end to end the pattern runs the other way along");
}

// The stages of the planners within are not counted as those of the whole.
SearchBudget uncounted(SearchBudget budget) {
  budget.progress = nullptr;
  return budget;
}

bool fits_budget(const MatchedTables& tables, std::int64_t steps) {
  return tables.steps() <= steps * 2;
}

constexpr int kMostPlaces = 1024;
constexpr int kLeastPlaces = 32;

}  // namespace

bool needs_matching(const Job& job, int roll) {
  return job.rolls[ix(roll)].fabric.repeat.is_any() &&
         std::any_of(job.panels.begin(), job.panels.end(), must_match);
}

MatchedPlanner::MatchedPlanner(const Job& job, int roll, Aim aim, const SearchBudget& budget)
    : job_(job), without_match_(without_matched_panels(job)), roll_index_(roll),
      roll_(job.rolls[ix(roll)]), aim_(aim), budget_(uncounted(budget)),
      unmatched_(job_, roll, aim, budget_), others_(without_match_, roll, aim, budget_) {
  if (usable_roll().size() > job_.losses.allowance) tables_ = make_tables();
}

Span MatchedPlanner::usable_roll() const {
  return cloth_to_cut(roll_, job_.losses);
}

// By where lengths begin, half their allowance before their pattern.
RollRepeat MatchedPlanner::roll_repeat() const {
  const Repeat& repeat = roll_.fabric.repeat;
  return {repeat.along, repeat.start_along - job_.losses.allowance / 2};
}

std::vector<PhasedShape> MatchedPlanner::phased_shapes(const std::vector<Shape>& shapes) const {
  const Repeat& repeat = roll_.fabric.repeat;
  std::vector<PhasedShape> phased;
  for (const Shape& s : shapes) {
    const Match match = job_.panels[ix(s.panel)].match;
    phased.push_back({s, matched_phase(match, s.across, repeat.across),
                      matched_phase(match, s.along, repeat.along)});
  }
  return phased;
}

// On as many places as the budget lets a table have.
std::unique_ptr<MatchedTables> MatchedPlanner::make_tables() const {
  const Fabric& fabric = roll_.fabric;
  const AimScale scale = aim_scale(job_, roll_, FoldWay{}, aim_);
  MatchedLimits limits;
  limits.widest = fabric.usable_width();
  limits.tallest = std::min(job_.table.length, usable_roll().size() - job_.losses.allowance);
  limits.fold_trim = std::max(job_.losses.fold_trim, Length::units(1));
  limits.repeat_across = fabric.repeat.across;
  limits.repeat_along = fabric.repeat.along;
  if (fabric.repeat.across > Length())
    limits.phase_across = phase_at(fabric.selvedge, fabric.repeat.start_across, fabric.repeat.across);
  limits.cancelled = budget_.cancelled;
  std::unique_ptr<MatchedTables> tables;
  for (limits.most_places = kMostPlaces;; limits.most_places = limits.most_places * 3 / 4) {
    tables = std::make_unique<MatchedTables>(phased_shapes(scale.shapes), scale.objective, limits);
    if (fits_budget(*tables, budget_.steps) || limits.most_places < kLeastPlaces) return tables;
  }
}

bool MatchedPlanner::keeps_match(const FoldWay& way) const {
  const Repeat& repeat = roll_.fabric.repeat;
  return (way.kind == FoldKind::open || repeat.across <= Length()) &&
         (!way.end_to_end || repeat.along <= Length());
}

Result<Plan> MatchedPlanner::plan(const FoldWay& way) {
  const Result<Plan> unmatched = unmatched_.plan(way);
  if (!unmatched) return unmatched;
  Result<Plan> found = keeps_match(way) ? plan_matched(way) : plan_unmatched_panels(way);
  if (!found) return found;
  Plan plan = std::move(found).value();
  plan.unmatched = Unmatched{unmatched->worth, unmatched->used};
  if (!plan.proof.proved) plan.proof.bound = std::min(plan.proof.bound, unmatched->proof.bound);
  return plan;
}

Result<Plan> MatchedPlanner::plan_unmatched_panels(const FoldWay& way) {
  const Words why = say(broken_match(roll_.fabric.repeat, way));
  Result<Plan> found = others_.plan(way);
  if (!found)
    return Problem{way_name(way), say("%1, so no panel that must match is cut there; %2", why, found.problem().what), ""};
  Plan plan = std::move(found).value();
  plan.proof.note = say("%1; panels that must match are left out: %2", plan.proof.note, why);
  return plan;
}

Length MatchedPlanner::length_of(const FoldWay& way, int state) const {
  return tables_->along(way.end_to_end)[state].size * (way.end_to_end ? 2 : 1);
}

PhasedEntry MatchedPlanner::entry_of(const LayOption& o, const FoldWay& way,
                                     const AimScale& scale) const {
  const PhaseAxis& along = tables_->along(way.end_to_end);
  PhasedEntry entry;
  entry.size = length_of(way, o.state) + job_.losses.allowance;
  entry.lengths = o.copies;
  if (!along.is_joint() && along[o.state].family < along.lost())
    entry.phase = along.phases()[ix(along[o.state].family)];
  const std::int64_t gain = o.choice.cell.gain * o.copies;
  const std::int64_t cost = o.choice.cell.cost + scale.per_length * o.copies + scale.per_lay;
  const bool worth_first = tables_->aim().worth_first;
  entry.gain = worth_first ? gain : gain - cost;
  entry.cost = worth_first ? cost : 0;
  return entry;
}

// One that gains no more than a shorter one of its family is left out.
void MatchedPlanner::add_options(const Layouts& layouts, const FoldWay& way, std::int64_t copies,
                                 std::vector<LayOption>& options) {
  const PhaseAxis& along = tables_->along(way.end_to_end);
  for (int f = 0; f <= along.lost(); ++f) {
    Cell best;
    for (const int state : along.family(f)) {
      if (tables_->is_cancelled()) return;
      const MatchedChoice choice = matched_choice(*tables_, layouts, way.end_to_end, copies, state);
      if (!choice.layout || !is_better(tables_->aim(), choice.cell, best, copies)) continue;
      best = choice.cell;
      options.push_back({state, copies, choice});
    }
  }
}

std::vector<MatchedPlanner::LayOption> MatchedPlanner::lay_options(const Layouts& layouts,
                                                                   const FoldWay& way) {
  const std::int64_t most = lengths_per_lift(job_.cutter, roll_.fabric.thickness, most_plies(way));
  std::vector<LayOption> options;
  for (std::int64_t copies = 1; copies <= most; ++copies) {
    if (copies == 1 || !tables_->aim().worth_first) {
      add_options(layouts, way, copies, options);
      continue;
    }
    const std::vector<LayOption> single = options;
    for (const LayOption& o : single)
      if (o.copies == 1) options.push_back({o.state, copies, o.choice});
  }
  return options;
}

void MatchedPlanner::lay_on_roll(const std::vector<PhasedEntry>& entries, const PhasedSeries& series,
                                 Plan& plan) const {
  Length last = usable_roll().from;
  for (int lay = 0; lay < std::ssize(series.picks); ++lay) {
    const PhasedPick& pick = series.picks[ix(lay)];
    const PhasedEntry& entry = entries[ix(pick.entry)];
    for (const Length at : places_along(entry, roll_repeat(), pick.at)) {
      if (at > last) plan.cut_out.push_back({last, at});
      plan.lengths.push_back({lay, {at, at + entry.size}});
      last = at + entry.size;
    }
  }
  set_remnant(job_, last, plan);
}

Plan MatchedPlanner::write_plan(const FoldWay& way, const std::vector<LayOption>& options,
                                const std::vector<PhasedEntry>& entries,
                                const PhasedSeries& series) {
  Plan plan;
  plan.roll = roll_index_;
  plan.way = way;
  plan.aim = aim_;
  for (const PhasedPick& pick : series.picks) {
    const LayOption& o = options[ix(pick.entry)];
    const std::int64_t copies = tables_->aim().worth_first ? 1 : o.copies;
    const FoldPlan fold{way, o.choice.layout->lines(o.choice.left, o.choice.right), levels_of(way)};
    Pattern pattern = write_pattern(job_, roll_, fold, length_of(way, o.state),
                                    matched_tree(*tables_, o.choice, way.end_to_end, copies, o.state));
    const auto same = std::find(plan.patterns.begin(), plan.patterns.end(), pattern);
    plan.lays.push_back({static_cast<int>(same - plan.patterns.begin()), static_cast<int>(o.copies)});
    if (same == plan.patterns.end()) plan.patterns.push_back(std::move(pattern));
  }
  lay_on_roll(entries, series, plan);
  sum_up(job_, plan);
  return plan;
}

Result<Plan> MatchedPlanner::plan_matched(const FoldWay& way) {
  const Length depth = deepest_fold(job_.table);
  const AimScale scale = aim_scale(job_, roll_, way, aim_);
  Layouts layouts = layouts_of(way, roll_.fabric, {tables_->fold_trim(), tables_->least_flap(), depth});
  std::erase_if(layouts, [&](const auto& l) { return l->is_fixed() && l->folded({}, {}) > depth; });
  const std::vector<LayOption> all = lay_options(layouts, way);
  std::vector<LayOption> options;
  std::vector<PhasedEntry> entries;
  for (const LayOption& o : all) {
    const PhasedEntry entry = entry_of(o, way, scale);
    if (entry.gain <= 0 || entry.size > usable_roll().size()) continue;
    options.push_back(o);
    entries.push_back(entry);
  }
  const PhasedSeries series = best_phased_series(entries, usable_roll(), roll_repeat(),
                                                 budget_.steps, budget_.cancelled);
  if (series.picks.empty())
    return Problem{way_name(way), say("no panel that matches the pattern, and no other, can be cut "
                                      "from this roll so that it is worth it"), ""};
  Plan plan = write_plan(way, options, entries, series);
  plan.proof = prove(plan, series);
  return plan;
}

// A panel that the plan holds by the way makes it better than what was proved.
Proof MatchedPlanner::prove(const Plan& plan, const PhasedSeries& series) const {
  const bool as_searched = aim_ != Aim::most_worth || plan.worth.parts() == series.gain;
  const Worth reached = aim_ == Aim::most_worth ? plan.worth : plan.net;
  if (series.proved && as_searched && !tables_->is_thinned() && !budget_.is_cancelled())
    return {reached, true,
            say("every place where a fold or a cut can matter was searched, with each panel that "
                "must match in cloth whose phase is kept; none gives more")};
  return {Worth::parts(std::numeric_limits<std::int64_t>::max()), false,
          say("this is the best found, not proved best; the bound is what the roll gives where nothing "
              "need match")};
}

}  // namespace foldyard
