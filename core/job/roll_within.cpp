// What a roll planner does within what is set by hand.

#include <algorithm>

#include "cutting/pinned_layout.h"
#include "job/check_fold.h"
#include "job/roll_planner.h"
#include "job/write_pattern.h"
#include "measure/write_length.h"

namespace foldyard {

namespace {

constexpr const char* kWithTheHand =
    to_say("with what is set by hand, every place where a cut can matter was searched, and the other folds at any "
           "place where the worth can change; none gives more");

std::vector<std::optional<Length>> pins_of(const FoldPlan& fold) { return {fold.lines.begin(), fold.lines.end()}; }

}  // namespace

Words RollPlanner::why_no_such_length(const FoldWay& way, Length length) const {
  const int half = way.end_to_end ? 2 : 1;
  const Grid& along = tables_->along(way.end_to_end);
  const Length most = std::min(job_.table.length * half, capacity_ - job_.losses.allowance);
  const auto text = [&](Length l) { return Words::number(write_length(l, job_.unit)); };
  if (length > most) return say("lengths of %1 are longer than the %2 that fit the table and the roll", text(length), text(most));
  if (length / half * half != length) return say("a length of %1 cannot be halved in whole units", text(length));
  if (along.size() == 0 || along[0] > length / half) return say("no panel fits lengths of %1", text(length));
  return {};
}

// The lines as far as they are known: those that are pinned, and those of a fold
// that has one place.
FoldPlan RollPlanner::fold_with(const FoldWay& way, const Hand& hand) const {
  FoldPlan fold{way, {}, levels_of(way)};
  if (way.plain || way.kind == FoldKind::selvedge_to_selvedge)
    fold.lines = layouts_of(way, roll_.fabric, fold_limits()).front()->lines({}, {});
  for (std::size_t i = 0; i < hand.lines.size(); ++i) {
    if (!hand.lines[i]) continue;
    if (i < fold.lines.size()) fold.lines[i] = *hand.lines[i];
    else if (i == fold.lines.size()) fold.lines.push_back(*hand.lines[i]);
  }
  return fold;
}

Result<RollPlanner::Choice> RollPlanner::choice_within(const FoldWay& way, const Hand& hand) const {
  Words why_not = refusal(way);
  if (why_not.empty() && hand.length) why_not = why_no_such_length(way, *hand.length);
  if (!why_not.empty()) return refused(way, why_not);
  if (budget_.is_cancelled()) return refused(way, say("planning was stopped before this way"));
  Choice choice;
  choice.length = hand.length;
  choice.note = kWithTheHand;
  if (!hand.has_lines()) {
    choice.layouts = layouts_for(way);
  } else {
    const FoldPlan fold = fold_with(way, hand);
    if (std::ssize(fold.lines) == way.legs - 1)
      why_not = why_no_such_fold(fold, roll_.fabric, deepest_fold(job_.table), job_.unit);
    if (!why_not.empty()) return refused(way, why_not);
    PinnedLayouts pinned = layouts_within(way, way.plain ? pins_of(fold) : hand.lines, roll_.fabric, fold_limits(), tables_->across(true));
    choice.layouts = std::move(pinned.layouts);
    choice.is_complete = pinned.is_complete;
  }
  if (choice.layouts.empty()) return refused(way, say("the folds cannot lie so with the pinned lines where they are"));
  return choice;
}

Result<Plan> RollPlanner::plan_within(const FoldWay& way, const Hand& hand) {
  Result<Choice> choice = choice_within(way, hand);
  if (!choice) return choice.problem();
  Result<Plan> plan = plan_among(way, *choice, !hand.length);
  return plan;
}

Result<RollPlanner::SearchedWithin> RollPlanner::search_within(const FoldWay& way, const Hand& hand,
                                                               std::size_t patterns) {
  Result<Choice> choice = choice_within(way, hand);
  if (!choice) return choice.problem();
  const AimScale scale = aim_scale(job_, roll_, way, aim_);
  const Searches searches = searches_of(*tables_, choice->layouts, way);
  const std::vector<LayOption> options = options_of(searches, way, *choice);
  const std::vector<SeriesEntry> entries = entries_of(options, *tables_, way, scale);
  const Series series = best_series(entries, capacity_, budget_.steps, budget_.cancelled);
  SearchedWithin found;
  std::vector<LayOption> chosen;
  for (int pick : series.picks) chosen.push_back(options[pick]);
  found.best.plan = write_plan(*tables_, way, std::move(chosen));
  found.best.bound = series.bound;
  found.best.is_whole = choice->is_complete && !tables_->is_thinned() && !budget_.is_cancelled();
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < entries.size(); ++i)
    if (entries[i].gain > 0) order.push_back(i);
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return Wide(entries[a].gain) * entries[b].size.units() > Wide(entries[b].gain) * entries[a].size.units();
  });
  if (order.size() > patterns) order.resize(patterns);
  for (const std::size_t i : order) found.patterns.push_back(pattern_of(*tables_, way, options[i]));
  return found;
}

std::vector<RollPlanner::LayOption> RollPlanner::options_of(const Searches& searches, const FoldWay& way,
                                                            const Choice& choice) const {
  return choice.length ? options_of_length(searches, way, *choice.length) : lay_options(*tables_, searches, way);
}

// One for each number of lengths in a lay.
std::vector<RollPlanner::LayOption> RollPlanner::options_of_length(const Searches& searches, const FoldWay& way,
                                                                   Length length) const {
  std::vector<LayOption> options;
  const std::int64_t most = std::min(most_lengths(way), capacity_ / (length + job_.losses.allowance));
  for (std::int64_t copies = 1; copies <= most; ++copies) {
    const std::size_t nth = std::min<std::size_t>(copies, searches.size()) - 1;
    if (const auto option = best_of_length(*searches[nth], copies, way, length)) options.push_back(*option);
  }
  return options;
}

// A shorter place serves where its panels, less the cut that takes the rest of
// the length off, are worth as much. How long that cut is depends on where the
// folds lie, and is only looked up for places that may be best.
std::optional<RollPlanner::LayOption> RollPlanner::best_of_length(const StripSearch& search, std::int64_t copies,
                                                                  const FoldWay& way, Length length) const {
  const Grid& along = tables_->along(way.end_to_end);
  const Length folded = length / (way.end_to_end ? 2 : 1);
  const Objective& aim = tables_->aim();
  const auto value = [&](const LayOption& o) {
    return aim.worth_first ? std::pair(o.cell().gain, -(o.cell().cost + o.trim))
                           : std::pair(o.cell().gain - o.trim, std::int64_t{0});
  };
  std::vector<LayOption> options;
  for (int v = along.floor_index(folded); v >= 0; --v)
    if (search.cells()[v].gain > 0) options.push_back({v, copies, &search, length, along[v] == folded ? 0 : aim.cut(0)});
  std::stable_sort(options.begin(), options.end(), [&](const LayOption& a, const LayOption& b) { return value(a) > value(b); });
  std::optional<LayOption> best;
  for (LayOption& option : options) {
    if (best && value(option) <= value(*best)) break;
    if (option.trim > 0) {
      const StripChoice at = search.choice(option.place);
      option.trim = aim.cut(at.layout->folded(at.left.size, at.right.size).units());
    }
    if (!best || value(option) > value(*best)) best = option;
  }
  if (best && value(*best).first <= 0) return std::nullopt;
  return best;
}

}  // namespace foldyard
