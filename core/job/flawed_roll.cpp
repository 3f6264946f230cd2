#include "job/flawed_roll.h"

#include <algorithm>
#include <memory>
#include <set>

#include "cutting/reflected.h"
#include "job/around_on_roll.h"
#include "job/cloth_to_cut.h"
#include "job/flaw_bound.h"
#include "job/lost_panels.h"
#include "job/sum_up.h"
#include "job/write_pattern.h"

namespace foldyard {

namespace {

FlawedCloth cloth_of(const Job& job, const Roll& roll) {
  FlawedCloth cloth{cloth_to_cut(roll, job.losses),
                    job.losses.allowance / 2, {}};
  for (const Flaw& flaw : flaws_that_matter(roll, cloth_to_cut(roll, job.losses)))
    cloth.flaws.push_back({flaw.across, flaw.along});
  std::stable_sort(cloth.flaws.begin(), cloth.flaws.end(), [](const Rect& a, const Rect& b) {
    return a.along.from < b.along.from;
  });
  return cloth;
}

Worth value_of(const Plan& plan) { return plan.aim == Aim::most_worth ? plan.worth : plan.net; }

bool is_better(const Plan& a, const Plan& b) {
  if (value_of(a) != value_of(b)) return value_of(a) > value_of(b);
  if (a.cuts + a.cross_cuts != b.cuts + b.cross_cuts) return a.cuts + a.cross_cuts < b.cuts + b.cross_cuts;
  return a.travel < b.travel;
}

// The entries of one run along the roll, with the patterns they stand for.
struct Entries {
  std::vector<FlawedEntry> list;
  std::vector<std::vector<Pattern>> patterns;  // by entry, then layout
};

class Planner {
 public:
  explicit Planner(const FlawedCase& c)
      : c_(c), roll_(c.job.rolls[c.clean.roll]), cloth_(cloth_of(c.job, roll_)),
        around_(AroundOnRoll::can_cut(c.way) ? std::make_unique<AroundOnRoll>(around_case()) : nullptr) {}

  Plan best() {
    Plan best = c_.clean;
    bool complete = true;
    for (const std::int64_t copies : lay_sizes()) {
      const Entries entries = entries_for(copies);
      const FlawedSeries series =
          best_flawed_series(entries.list, cloth_, around_.get(), {steps(), around_tries(), c_.budget.cancelled});
      complete = complete && series.complete;
      if (series.picks.empty()) continue;
      Plan plan = plan_of(entries, series);
      if (is_better(plan, best)) best = std::move(plan);
    }
    best.proof = proof_of(best, complete);
    return best;
  }

 private:
  AroundCase around_case() const {
    return {c_.job, roll_, c_.way, c_.scale, c_.tables, cloth_};
  }

  std::int64_t steps() const {
    return std::max<std::int64_t>(1000, c_.budget.steps / 4 / std::ssize(lay_sizes()));
  }

  std::int64_t around_tries() const { return steps() / 2000; }

  std::set<std::int64_t> lay_sizes() const {
    std::set<std::int64_t> sizes;
    for (const FlawedCandidate& candidate : c_.candidates) sizes.insert(candidate.copies);
    return sizes;
  }

  std::int64_t gain_of(int panel) const {
    for (const Shape& shape : c_.scale.shapes)
      if (shape.panel == panel) return shape.gain;
    return 0;
  }

  Entries entries_for(std::int64_t copies) const {
    Entries entries;
    for (const FlawedCandidate& candidate : c_.candidates)
      if (candidate.copies == copies) add(candidate, entries);
    return entries;
  }

  void add(const FlawedCandidate& candidate, Entries& entries) const {
    FlawedEntry entry;
    entry.size = candidate.pattern.length + c_.job.losses.allowance;
    for (const PlacedPanel& placed : candidate.pattern.panels) entry.gain += gain_of(placed.panel);
    const bool worth_first = c_.scale.objective.worth_first;
    const std::int64_t in_lay = worth_first ? c_.most_lengths : candidate.copies;
    const std::int64_t cost = (candidate.cost + c_.scale.per_lay) / in_lay + c_.scale.per_length;
    (worth_first ? entry.cost : entry.gain) += worth_first ? cost : -cost;
    if (entry.gain <= 0) return;
    std::vector<Pattern> layouts = layouts_of_pattern(candidate.pattern);
    for (const Pattern& pattern : layouts) entry.layouts.push_back(panels_of(pattern));
    entries.list.push_back(std::move(entry));
    entries.patterns.push_back(std::move(layouts));
  }

  std::vector<FlawedPanel> panels_of(const Pattern& pattern) const {
    std::vector<FlawedPanel> panels;
    for (const PlacedPanel& placed : pattern.panels)
      panels.push_back({placed.flat, c_.scale.lost[placed.panel]});
    return panels;
  }

  std::vector<Pattern> layouts_of_pattern(const Pattern& pattern) const {
    std::vector<Pattern> layouts{pattern};
    const auto add = [&](CutTree tree) {
      Pattern other = write_pattern(c_.job, roll_, pattern.fold, pattern.length, std::move(tree));
      if (other.worth == pattern.worth) layouts.push_back(std::move(other));
    };
    if (c_.way.end_to_end) return layouts;
    add(reflected_along(pattern.tree));
    if (c_.way.kind != FoldKind::open) return layouts;
    add(reflected_across(pattern.tree));
    add(reflected_across(reflected_along(pattern.tree)));
    return layouts;
  }

  Pattern pattern_of(const Entries& entries, const FlawedPick& pick) const {
    if (pick.entry >= 0) return entries.patterns[pick.entry][pick.layout];
    return around_->pattern(pick.on_roll);
  }

  // Lengths of one pattern share lays, wherever they lie.
  Plan plan_of(const Entries& entries, const FlawedSeries& series) const {
    Plan plan;
    plan.roll = c_.clean.roll;
    plan.way = c_.way;
    plan.aim = c_.aim;
    std::vector<int> used;  // the pattern of each pick
    for (const FlawedPick& pick : series.picks) {
      Pattern pattern = pattern_of(entries, pick);
      const auto same = std::find(plan.patterns.begin(), plan.patterns.end(), pattern);
      used.push_back(static_cast<int>(same - plan.patterns.begin()));
      if (same == plan.patterns.end()) plan.patterns.push_back(std::move(pattern));
    }
    longest_first(plan.patterns, used);
    make_lays(used, plan);
    lay_out(series, used, plan);
    sum_up(c_.job, plan);
    return plan;
  }

  static void longest_first(std::vector<Pattern>& patterns, std::vector<int>& used) {
    std::vector<int> order(patterns.size()), place(patterns.size());
    for (int i = 0; i < static_cast<int>(order.size()); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(),
                     [&](int a, int b) { return patterns[a].length > patterns[b].length; });
    std::vector<Pattern> sorted;
    for (int i = 0; i < static_cast<int>(order.size()); ++i) {
      place[order[i]] = i;
      sorted.push_back(std::move(patterns[order[i]]));
    }
    patterns = std::move(sorted);
    for (int& pattern : used) pattern = place[pattern];
  }

  void make_lays(const std::vector<int>& used, Plan& plan) const {
    for (int p = 0; p < static_cast<int>(plan.patterns.size()); ++p) {
      std::int64_t left = std::count(used.begin(), used.end(), p);
      for (; left > 0; left -= c_.most_lengths)
        plan.lays.push_back({p, static_cast<int>(std::min(left, c_.most_lengths))});
    }
  }

  void lay_out(const FlawedSeries& series, const std::vector<int>& used, Plan& plan) const {
    std::vector<int> room;
    for (const Lay& lay : plan.lays) room.push_back(lay.lengths);
    Length at = cloth_to_cut(roll_, c_.job.losses).from;
    for (std::size_t i = 0; i < used.size(); ++i) {
      const Span span = series.picks[i].on_roll;
      if (at < span.from) plan.cut_out.push_back({at, span.from});
      int lay = 0;
      while (plan.lays[lay].pattern != used[i] || room[lay] == 0) ++lay;
      --room[lay];
      plan.lengths.push_back({lay, span});
      at = span.to;
    }
    set_remnant(c_.job, at, plan);
  }

  Proof proof_of(const Plan& plan, bool complete) const {
    Worth bound = c_.clean_bound;
    if (plan.aim == Aim::most_worth && c_.clean_is_proved && !c_.way.end_to_end)
      bound = std::min(bound, flaw_bound(c_.job, roll_, cloth_, c_.scale.shapes, c_.candidates));
    if (value_of(plan) > bound)  // by a panel that a ply gives by the way
      return {c_.area_bound, false,
              say("this is the best found, not proved best; the bound counts every bit of usable cloth")};
    if (value_of(plan) == bound && !c_.budget.is_cancelled())
      return {value_of(plan), true,
              say("the flaws leave no more: what lies between them was searched at every place")};
    return {bound, false,
            complete ? say("every place of the lengths searched was tried around the flaws; the bound "
                           "counts the roll as if narrow flaws were not there")
                     : say("this is the best found around the flaws, not proved best; the bound counts "
                           "the roll as if narrow flaws were not there")};
  }

  const FlawedCase& c_;
  const Roll& roll_;
  FlawedCloth cloth_;
  std::unique_ptr<AroundOnRoll> around_;
};

}  // namespace

Plan plan_flawed_roll(const FlawedCase& flawed) { return Planner(flawed).best(); }

}  // namespace foldyard
