#include "job/limited_pool.h"

#include <algorithm>

#include "job/cloth_to_cut.h"
#include "job/sum_up.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr std::size_t kMostPatterns = 400;

// As fine as the sums of a roll leave room for.
std::int64_t scale_for(const std::vector<std::int64_t>& gains) {
  const std::int64_t most = *std::max_element(gains.begin(), gains.end());
  std::int64_t scale = 1;
  while (scale < 4096 && most * scale < (std::int64_t{1} << 26)) scale *= 2;
  return scale;
}

std::int64_t cost_of_cuts(const Objective& aim, const Pattern& pattern) {
  return aim.per_cut * std::ssize(pattern.cuts) + aim.per_unit * pattern.travel.units();
}

}  // namespace

LimitedCase::LimitedCase(const Job& j, int r, Aim a, const FoldWay& w, const SearchBudget& b)
    : job(j), roll(r), aim(a), way(w), budget(b), costs(aim_scale(j, cloth(), w, a)) {
  worth_first = costs.objective.worth_first;
  capacity = cloth_to_cut(cloth(), job.losses).size();
  gains.assign(job.panels.size(), 0);
  for (const Shape& s : costs.shapes) gains[ix(s.panel)] = s.gain;
  if (worth_first) scale = scale_for(gains);
  for (std::int64_t& gain : gains) gain *= scale;
  most = limits_of(job);
  for (std::size_t p = 0; p < most.size(); ++p) {
    limit_of.push_back(most[p] == kNoLimit ? -1 : static_cast<int>(limited.size()));
    if (most[p] != kNoLimit) limited.push_back(static_cast<int>(p));
  }
}

std::vector<std::int64_t> LimitedCase::of_limited(const std::vector<std::int64_t>& by_panel) const {
  std::vector<std::int64_t> list;
  for (const int p : limited) list.push_back(by_panel[ix(p)]);
  return list;
}

CopyLimits LimitedCase::limits(const std::vector<std::int64_t>& prices) const {
  return {of_limited(most), of_limited(prices), scale};
}

std::int64_t LimitedCase::gain_of(const std::vector<std::int64_t>& copies) const {
  std::int64_t gain = 0;
  for (std::size_t p = 0; p < copies.size(); ++p) gain += gains[p] * copies[p];
  return gain;
}

std::int64_t LimitedCase::value_of(const Plan& plan) const {
  std::int64_t value = gain_of(plan.yield);
  if (worth_first) return value;
  for (const Lay& lay : plan.lays)
    value -= cost_of_cuts(costs.objective, pattern_of(plan, lay)) + costs.per_lay +
             costs.per_length * lay.lengths;
  return value;
}

void LimitedPool::add(const Pattern& pattern) {
  if (kept_.size() >= kMostPatterns) return;
  Pattern p = pattern;
  if (!is_within(copies_in(p, case_.most.size()), case_.most)) {
    std::optional<Pattern> less = cut_back(case_.job, case_.cloth(), p, case_.most);
    if (!less) return;
    p = *std::move(less);
  }
  for (const Kept& k : kept_)
    if (k.pattern == p) return;
  const auto copies = copies_in(p, case_.most.size());
  const std::int64_t cost = cost_of_cuts(case_.costs.objective, p);
  kept_.push_back({std::move(p), copies, cost});
}

// An aim that weighs time has an entry for each number of lengths in a lay.
void LimitedPool::add_entries(std::vector<LimitedEntry>& entries, std::vector<std::pair<int, std::int64_t>>& of) const {
  for (int i = 0; i < std::ssize(kept_); ++i) {
    const Kept& k = kept_[ix(i)];
    for (std::int64_t n = 1; n <= (case_.worth_first ? 1 : case_.most_lengths); ++n) {
      std::vector<std::int64_t> copies = case_.of_limited(k.copies);
      for (std::int64_t& c : copies) c *= n;
      const std::int64_t cost = k.cost + case_.costs.per_length * n + case_.costs.per_lay;
      entries.push_back({size_of(k.pattern) * n, case_.gain_of(k.copies) * n - (case_.worth_first ? 0 : cost),
                         case_.worth_first ? cost : 0, std::move(copies)});
      of.push_back({i, n});
    }
  }
}

void LimitedPool::improve(const std::vector<std::int64_t>& prices, std::int64_t steps) {
  std::vector<LimitedEntry> entries;
  std::vector<std::pair<int, std::int64_t>> of;
  add_entries(entries, of);
  const LimitedSeries series = best_limited_series(entries, case_.capacity, case_.limits(prices), 0,
                                                   {steps, 20'000, case_.budget.cancelled});
  std::vector<std::pair<Pattern, std::int64_t>> lengths;
  for (const int pick : series.picks) {
    const auto [kept, n] = of[ix(pick)];
    lengths.push_back({kept_[ix(kept)].pattern, n});
  }
  consider(lengths);
  while (add_to_rest(lengths)) {
    add(lengths.back().first);
    consider(lengths);
  }
}

// Adds the pattern that gains most of those that fit, cut back to what the
// limits leave.
bool LimitedPool::add_to_rest(std::vector<std::pair<Pattern, std::int64_t>>& lengths) const {
  Length room = case_.capacity;
  std::vector<std::int64_t> left = case_.most;
  for (const auto& [pattern, n] : lengths) {
    room -= size_of(pattern) * n;
    const auto copies = copies_in(pattern, left.size());
    for (std::size_t p = 0; p < left.size(); ++p)
      if (left[p] != kNoLimit) left[p] -= copies[p] * n;
  }
  std::optional<Pattern> best;
  std::int64_t most = 0;
  for (const Kept& k : kept_) {
    if (size_of(k.pattern) > room) continue;
    std::optional<Pattern> less = cut_back(case_.job, case_.cloth(), k.pattern, left);
    if (!less) continue;
    const std::int64_t cost = cost_of_cuts(case_.costs.objective, *less) + case_.costs.per_length + case_.costs.per_lay;
    const std::int64_t gain = case_.gain_of(copies_in(*less, left.size())) - (case_.worth_first ? 0 : cost);
    if (gain > most) {
      most = gain;
      best = std::move(less);
    }
  }
  if (best) lengths.push_back({*std::move(best), 1});
  return most > 0;
}

Plan laid(const LimitedCase& c, const std::vector<std::pair<Pattern, std::int64_t>>& lengths) {
  std::vector<std::pair<Pattern, std::int64_t>> merged;
  for (const auto& [pattern, n] : lengths) {
    const auto same = std::find_if(merged.begin(), merged.end(), [&wanted = pattern](const auto& m) { return m.first == wanted; });
    same == merged.end() ? merged.push_back({pattern, n}) : void(same->second += n);
  }
  std::stable_sort(merged.begin(), merged.end(),
                   [](const auto& a, const auto& b) { return a.first.length > b.first.length; });
  Plan plan;
  plan.roll = c.roll;
  plan.way = c.way;
  plan.aim = c.aim;
  for (auto& [pattern, n] : merged) {
    for (std::int64_t left = n; left > 0; left -= c.most_lengths)
      plan.lays.push_back({static_cast<int>(plan.patterns.size()), static_cast<int>(std::min(left, c.most_lengths))});
    plan.patterns.push_back(std::move(pattern));
  }
  lay_along(c.job, plan);
  sum_up(c.job, plan);
  return plan;
}

void LimitedPool::consider(const std::vector<std::pair<Pattern, std::int64_t>>& lengths) {
  if (lengths.empty()) return;
  Plan plan = laid(case_, lengths);
  if (!is_within(plan.yield, case_.most)) return;
  const std::int64_t value = case_.value_of(plan);
  const auto effort = [](const Plan& p) { return std::pair(p.cuts + p.cross_cuts, p.time); };
  if (value < value_ || (value == value_ && (!has_plan() || effort(plan) >= effort(best_)))) return;
  best_ = std::move(plan);
  value_ = value;
}

}  // namespace foldyard
