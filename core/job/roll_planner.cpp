#include "job/roll_planner.h"

#include <algorithm>
#include <map>
#include <set>

#include "batch/tight_entries.h"
#include "cutting/given_layout.h"
#include "job/area_bound.h"
#include "job/check_fold.h"
#include "job/cloth_to_cut.h"
#include "job/flawed_roll.h"
#include "job/lost_panels.h"
#include "job/sum_up.h"
#include "job/write_pattern.h"
#include "measure/write_length.h"

namespace foldyard {

namespace {

bool is_small_enough(std::int64_t places_across, std::int64_t places_along, std::int64_t steps) {
  return places_across * places_along * (places_across + places_along) / 4 <= steps;
}

// How many places a grid may have so that a table takes no more than the steps.
int most_places(const std::vector<Shape>& shapes, const TableLimits& limits, std::int64_t steps) {
  std::vector<Length> across, along;
  for (const Shape& s : shapes) {
    across.push_back(s.across);
    along.push_back(s.along);
  }
  const std::int64_t x = normal_places(across, limits.widest).size();
  const std::int64_t y = normal_places(along, limits.tallest).size();
  if (is_small_enough(x, y, steps)) return 1 << 20;
  int most = 1;
  while (is_small_enough(std::min<std::int64_t>(x, most + 1), std::min<std::int64_t>(y, most + 1), steps))
    ++most;
  return most;
}

// Why a way cannot keep the nap of one-way cloth; empty where it can.
Words against_nap(const FoldWay& way, const Fabric& fabric) {
  if (fabric.nap == Nap::none) return {};
  if (!fabric.railroaded && way.end_to_end)
    return say("the cloth is one-way: folded end to end, every second ply would lie against the nap");
  if (fabric.railroaded && way.kind != FoldKind::open)
    return say("the cloth is one-way and its nap runs from selvedge to selvedge: folded along the "
               "roll, every second ply would lie against the nap");
  return {};
}

constexpr const char* kAllSearched =
    to_say("every place where a fold or a cut can matter was searched; none gives more");
// Fold places are complete for worth; a fold elsewhere could save a cut.
constexpr const char* kAllWhereWorthChanges =
    to_say("with the folds at any place where the worth can change, every place where a cut can matter "
           "was searched; none gives more");
constexpr const char* kAllCuts = to_say("with the folds where they are, every place where a cut can matter was "
                                        "searched; none gives more");

constexpr int kFewestPlaces = 32;

// Of the patterns that are laid around flaws, each up to four times turned about: a
// kilobyte or two a node.
constexpr std::int64_t kMostNodesAroundFlaws = 80'000;

}  // namespace

RollPlanner::RollPlanner(const Job& job, int roll, Aim aim, const SearchBudget& budget, const Prices& prices)
    : job_(job), roll_index_(roll), roll_(job.rolls[roll]), aim_(aim), budget_(budget),
      capacity_(cloth_to_cut(roll_, job.losses).size()) {
  if (capacity_ <= job.losses.allowance) return;
  const AimScale scale = priced(aim_scale(job_, roll_, FoldWay{}, aim_), prices);
  TableLimits limits;
  limits.widest = roll_.fabric.usable_width();
  limits.tallest = std::min(job_.table.length, capacity_ - job_.losses.allowance);
  limits.fold_trim = std::max(job_.losses.fold_trim, Length::units(1));
  limits.most_places = most_places(scale.shapes, limits, budget_.steps);
  limits.cancelled = budget_.cancelled;
  tables_ = std::make_unique<TableSet>(scale.shapes, scale.objective, limits);
  while (bytes_of_one() > budget_.bytes && limits.most_places > kFewestPlaces) {
    limits.most_places = std::min(limits.most_places, tables_->most_places()) * 3 / 4;
    tables_ = std::make_unique<TableSet>(scale.shapes, scale.objective, limits);
  }
}

// Of an aim that weighs time each number of copies has tables of its own: lengths in the lift
// times plies. Of the other one they differ by the plies of a fold.
std::int64_t RollPlanner::bytes_of_all() const {
  return tables_->most_bytes(tables_->aim().worth_first ? job_.longest_fan : most_lengths(FoldWay{}));
}

// Up to three plies of a fold, in the middle and at both fold edges; it needs no more than half
// of all kinds of tables.
std::int64_t RollPlanner::bytes_of_one() const {
  if (!tables_) return 0;
  return tables_->aim().worth_first ? tables_->most_bytes(3) : bytes_of_all() / 2;
}

bool RollPlanner::may_share() const { return !tables_ || bytes_of_all() <= budget_.bytes; }

Words RollPlanner::refusal(const FoldWay& way) const {
  const auto text = [&](Length l) { return Words::number(write_length(l, job_.unit)); };
  const Words against = against_nap(way, roll_.fabric);
  if (!against.empty()) return against;
  const int plies = most_plies(way);
  if (lengths_per_lift(job_.cutter, roll_.fabric.thickness, plies) < 1)
    return say("%n plies make a stack of %2; the cutter takes %3 and %4 plies at most", plies,
               text(roll_.fabric.thickness * plies), text(job_.cutter.height), job_.cutter.most_plies);
  if (!tables_) return say("the roll is no longer than its end losses");
  return {};
}

std::int64_t RollPlanner::most_lengths(const FoldWay& way) const {
  return lengths_per_lift(job_.cutter, roll_.fabric.thickness, most_plies(way));
}

Length RollPlanner::size_of(const TableSet& tables, const FoldWay& way, const LayOption& option) const {
  const Length place = tables.along(way.end_to_end)[option.place] * (way.end_to_end ? 2 : 1);
  return (option.length.value_or(place) + job_.losses.allowance) * option.copies;
}

// An aim that weighs time cuts differently for each number of lengths in the
// lay; one that puts worth first does not.
RollPlanner::Searches RollPlanner::searches_of(TableSet& tables, const Layouts& layouts,
                                               const FoldWay& way) const {
  const bool once = tables.aim().worth_first || tables.along(way.end_to_end).size() == 0;
  const std::int64_t most = once ? 1 : most_lengths(way);
  Searches searches;
  for (std::int64_t copies = 1; copies <= most; ++copies) {
    if (copies > 1 && size_of(tables, way, {0, copies, nullptr}) > capacity_) break;
    searches.push_back(std::make_unique<StripSearch>(tables, layouts, way.end_to_end, copies));
  }
  return searches;
}

std::vector<RollPlanner::LayOption> RollPlanner::lay_options(const TableSet& tables,
                                                             const Searches& searches,
                                                             const FoldWay& way) const {
  std::vector<LayOption> options;
  const std::int64_t most = most_lengths(way);
  for (std::int64_t copies = 1; copies <= most; ++copies) {
    const std::size_t nth = std::min<std::size_t>(copies, searches.size()) - 1;
    const StripSearch& search = *searches[nth];
    bool any_fits = false;
    for (int v = 0; v < static_cast<int>(search.cells().size()); ++v) {
      const LayOption option{v, copies, &search};
      if (size_of(tables, way, option) > capacity_) break;
      any_fits = true;
      if (option.cell().gain > 0) options.push_back(option);
    }
    if (!any_fits) break;
  }
  return options;
}

std::vector<SeriesEntry> RollPlanner::entries_of(const std::vector<LayOption>& options,
                                                 const TableSet& tables, const FoldWay& way,
                                                 const AimScale& scale) const {
  std::vector<SeriesEntry> entries;
  for (const LayOption& o : options) {
    const std::int64_t more = scale.per_length * o.copies + scale.per_lay;
    const Length size = size_of(tables, way, o);
    entries.push_back(tables.aim().worth_first
                          ? SeriesEntry{size, o.cell().gain * o.copies, o.cell().cost + o.trim + more}
                          : SeriesEntry{size, o.cell().gain - o.trim - more, 0});
  }
  return entries;
}

Pattern RollPlanner::pattern_of(TableSet& tables, const FoldWay& way, const LayOption& o) const {
  const std::int64_t copies = tables.aim().worth_first ? 1 : o.copies;
  const StripChoice choice = o.search->choice(o.place);
  const FoldPlan fold{way, choice.layout->lines(choice.left.size, choice.right.size), levels_of(way)};
  const int half = way.end_to_end ? 2 : 1;
  CutTree tree = strip_tree(tables, choice, way.end_to_end, copies, o.place);
  if (o.length) tree = with_rest_beyond(std::move(tree), *o.length / half);
  return write_pattern(job_, roll_, fold, o.length.value_or(tables.along(way.end_to_end)[o.place] * half),
                       std::move(tree));
}

// The patterns and lays of the chosen options, the longest lengths first.
Plan RollPlanner::write_plan(TableSet& tables, const FoldWay& way, std::vector<LayOption> chosen) const {
  std::stable_sort(chosen.begin(), chosen.end(), [](const LayOption& a, const LayOption& b) {
    return a.place != b.place ? a.place > b.place : a.copies > b.copies;
  });
  Plan plan;
  plan.roll = roll_index_;
  plan.way = way;
  plan.aim = aim_;
  for (const LayOption& o : chosen) {
    Pattern pattern = pattern_of(tables, way, o);
    const auto same = std::find(plan.patterns.begin(), plan.patterns.end(), pattern);
    plan.lays.push_back({static_cast<int>(same - plan.patterns.begin()), static_cast<int>(o.copies)});
    if (same == plan.patterns.end()) plan.patterns.push_back(std::move(pattern));
  }
  lay_along(job_, plan);
  sum_up(job_, plan);
  return plan;
}

Worth RollPlanner::area_bound() const { return foldyard::area_bound(job_, roll_); }

// A ply that covers a panel but not its whole strip gives that panel, too,
// though the search did not count on it: then the plan is better than what was
// proved best, and no more is known than the bound by area.
Proof RollPlanner::prove(const Plan& plan, Worth lost, const Series& series, const Choice& choice) const {
  const bool as_searched = aim_ != Aim::most_worth || (plan.worth + lost).parts() == series.gain;
  if (series.proved && choice.is_complete && !tables_->is_thinned() && as_searched && !budget_.is_cancelled())
    return {(aim_ == Aim::most_worth ? plan.worth : plan.net) + lost, true, say(choice.note)};
  return {area_bound(), false,
          say("this is the best found, not proved best; the bound counts every bit of usable cloth")};
}

// Of the lays that may be cut, those of a single length, of as many as fit and
// of the sizes in the plan without flaws; of each size, longer lengths only
// where they give more; together no more than memory is for.
Plan RollPlanner::plan_around_flaws(TableSet& tables, const FoldWay& way, const AimScale& scale,
                                    const std::vector<LayOption>& options, const Plan& clean) const {
  const bool worth_first = tables.aim().worth_first;
  std::set<std::int64_t> sizes{1};
  if (!worth_first) sizes.insert(options.back().copies);
  for (const Lay& lay : clean.lays)
    if (!worth_first) sizes.insert(lay.lengths);
  std::map<std::int64_t, std::int64_t> best;
  std::int64_t room = kMostNodesAroundFlaws;
  FlawedCase flawed{job_, way, aim_, scale, tables, {}, most_lengths(way), clean,
                    clean.proof.bound, clean.proof.proved, area_bound(), budget_};
  for (const LayOption& o : options) {
    if (!sizes.contains(o.copies) || o.cell().gain <= best[o.copies]) continue;
    best[o.copies] = o.cell().gain;
    Pattern pattern = pattern_of(tables, way, o);
    room -= std::ssize(pattern.tree.nodes);
    if (room < 0) {  // all longer ones are larger still; without them no bound is proved
      flawed.clean_is_proved = false;
      break;
    }
    const std::int64_t cost = scale.objective.per_cut * std::ssize(pattern.cuts) +
                              scale.objective.per_unit * pattern.travel.units();
    flawed.candidates.push_back({o.copies, cost, std::move(pattern)});
  }
  return plan_flawed_roll(flawed);
}

void RollPlanner::count_stage() const {
  if (budget_.progress) ++budget_.progress->done;
}

FoldLimits RollPlanner::fold_limits() const {
  return {tables_->fold_trim(), tables_->least_flap(), deepest_fold(job_.table)};
}

Layouts RollPlanner::layouts_for(const FoldWay& way) const {
  const FoldLimits limits = fold_limits();
  Layouts layouts = layouts_of(way, roll_.fabric, limits);
  std::erase_if(layouts, [&](const auto& l) { return l->is_fixed() && l->folded({}, {}) > limits.depth; });
  return layouts;
}

Result<RollPlanner::Searched> RollPlanner::search(const FoldWay& way) {
  if (budget_.is_cancelled()) return refused(way, say("planning was stopped before this way"));
  const Words why_not = refusal(way);
  if (!why_not.empty()) return refused(way, why_not);
  const Layouts layouts = layouts_for(way);
  if (layouts.empty()) return refused(way, say("folded so it is too deep for the table"));
  const AimScale scale = aim_scale(job_, roll_, way, aim_);
  const Searches searches = searches_of(*tables_, layouts, way);
  const std::vector<LayOption> options = lay_options(*tables_, searches, way);
  const std::vector<SeriesEntry> entries = entries_of(options, *tables_, way, scale);
  const Series series = best_series(entries, capacity_, budget_.steps, budget_.cancelled);
  Searched found;
  std::vector<LayOption> chosen;
  for (int pick : series.picks) chosen.push_back(options[pick]);
  found.plan = write_plan(*tables_, way, std::move(chosen));
  found.bound = series.bound;
  found.is_whole = !tables_->is_thinned() && !budget_.is_cancelled();
  found.lays = lays_of(options, entries, way, scale);
  return found;
}

// A place where nothing gains has no option, but its lay is a lay.
std::vector<RollPlanner::PricedLay> RollPlanner::lays_of(const std::vector<LayOption>& options,
                                                         const std::vector<SeriesEntry>& entries,
                                                         const FoldWay& way, const AimScale& scale) const {
  const Grid& along = tables_->along(way.end_to_end);
  const std::int64_t most = tables_->aim().worth_first ? 1 : most_lengths(way);
  std::vector<PricedLay> lays;
  std::size_t next = 0;
  for (std::int64_t copies = 1; copies <= most; ++copies)
    for (int v = 0; v < along.size(); ++v) {
      const bool gains = next < options.size() && options[next].place == v && options[next].copies == copies;
      const std::size_t option = gains ? next++ : next;
      const Length size = size_of(*tables_, way, {v, copies});
      if (size > capacity_ || !along.is_sum(v)) continue;
      const std::int64_t apart = tables_->aim().worth_first ? 0 : scale.per_length * copies + scale.per_lay;
      lays.push_back({v, copies, size, gains ? entries[option].gain : -apart, apart});
    }
  return lays;
}

Result<Plan> RollPlanner::plan(const FoldWay& way, bool around_flaws) {
  const Words why_not = refusal(way);
  if (!why_not.empty()) return refused(way, why_not);
  if (budget_.is_cancelled()) return refused(way, say("planning was stopped before this way"));
  Choice choice{layouts_for(way)};
  if (choice.layouts.empty())
    return refused(way, say("folded so it is deeper than the %1 that fit the table and can be reached",
                            Words::number(write_length(deepest_fold(job_.table), job_.unit))));
  const bool folds_are_found = aim_ == Aim::worth_less_time && !way.plain;
  choice.note = folds_are_found ? kAllWhereWorthChanges : kAllSearched;
  return plan_among(way, choice, around_flaws);
}

Result<Plan> RollPlanner::plan_at(const FoldPlan& fold) {
  Words why_not = refusal(fold.way);
  if (why_not.empty())
    why_not = why_no_such_fold(fold, roll_.fabric, deepest_fold(job_.table), job_.unit);
  if (!why_not.empty()) return refused(fold.way, why_not);
  if (budget_.is_cancelled()) return refused(fold.way, say("planning was stopped before this way"));
  const FoldPlan as_way{fold.way, fold.lines, levels_of(fold.way)};
  Choice choice{layouts_at(as_way, roll_.fabric, fold_limits())};
  choice.note = kAllCuts;
  return plan_among(fold.way, choice, true);
}

Result<Plan> RollPlanner::plan_among(const FoldWay& way, const Choice& choice, bool around_flaws) {
  const AimScale scale = aim_scale(job_, roll_, way, aim_);
  TableSet& tables = *tables_;
  const Searches searches = searches_of(tables, choice.layouts, way);
  const std::vector<LayOption> options = options_of(searches, way, choice);
  count_stage();
  const std::vector<SeriesEntry> all = entries_of(options, tables, way, scale);
  std::vector<SeriesEntry> entries;
  std::vector<LayOption> tight;
  for (const int i : tight_entries(all, capacity_)) {
    entries.push_back(all[i]);
    tight.push_back(options[i]);
  }
  const Series series = best_series(entries, capacity_, budget_.steps, budget_.cancelled);
  count_stage();
  if (series.picks.empty() && budget_.is_cancelled())
    return refused(way, say("planning was stopped before a plan of this way was found"));
  if (series.picks.empty())
    return refused(way, tables.aim().worth_first ? say("no panel fits")
                                                 : say("no panel that fits is worth the time of cutting it"));
  std::vector<LayOption> chosen;
  for (int pick : series.picks) chosen.push_back(tight[pick]);
  Plan plan = write_plan(tables, way, std::move(chosen));
  const Worth lost = lost_worth(job_, plan);
  plan.proof = prove(plan, lost, series, choice);
  if (plan.lost.empty()) return plan;
  if (around_flaws && !budget_.is_cancelled()) plan = plan_around_flaws(tables, way, scale, options, plan);
  if (plan.worth == Worth()) return refused(way, say("every panel that fits would touch a flaw"));
  return plan;
}

namespace {

// The least of a range, and the places in it that are sums.
std::vector<Length> sizes_in(const SizeRange& range, const Grid& places, bool any_strip) {
  std::vector<Length> sizes{range.least};
  for (int i = 0; any_strip && i < places.size(); ++i)
    if (places.is_sum(i) && range.least < places[i] && places[i] <= range.most) sizes.push_back(places[i]);
  return sizes;
}

// Where the middle goes on under a strip, that may take up what the middle lacks.
bool has_room(const FoldLayout& layout, Length x, Length y) {
  const Length under = (layout.goes_under_left() ? x : Length()) + (layout.goes_under_right() ? y : Length());
  return layout.middle(x, y) + under >= Length();
}

}  // namespace

std::vector<std::vector<Length>> RollPlanner::fold_places(const FoldWay& way) const {
  std::vector<std::vector<Length>> all;
  if (!refusal(way).empty()) return all;
  const Grid& places = tables_->across(true);
  for (const auto& layout : layouts_for(way)) {
    const SizeRange left = layout->left();
    if (left.most < left.least) continue;
    for (const Length x : sizes_in(left, places, layout->shares().left_pairs > 0)) {
      const SizeRange right = layout->right(x);
      if (right.most < right.least) continue;
      for (const Length y : sizes_in(right, places, layout->shares().right_pairs > 0))
        if (has_room(*layout, x, y)) all.push_back(layout->lines(x, y));
    }
    if (layout->is_fixed()) return {layout->lines({}, {})};
  }
  return all;
}

}  // namespace foldyard
