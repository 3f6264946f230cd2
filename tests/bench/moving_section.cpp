#include <algorithm>
#include <string>

#include "bench/apart.h"
#include "bench/markdown.h"
#include "bench/sections.h"
#include "bench/workshop_job.h"
#include "core/support/fold_ways.h"
#include "job/roll_desk.h"

namespace foldyard::bench {

namespace {

constexpr double kFrame = 0.016;
constexpr int kMoves = 12;

// Nanoseconds: a plan from scratch, and the middle and the longest of so many
// moves of the first fold line, over all the places it snaps to.
Numbers measured(const FoldWay& way, Aim aim) {
  const Job job = workshop_job();
  const double scratch = spent_on([&] { plan_roll(job, 0, way, aim); }, 3).processor;
  RollDesk desk(job, 0, aim);
  const auto best = desk.best(way);
  if (!best) return {};
  const std::vector<Length> places = desk.snaps(way, 0);
  std::vector<double> moves;
  for (int i = 0; i < kMoves; ++i) {
    const Length place = places[static_cast<std::size_t>(i) * places.size() / kMoves];
    const FoldPlan fold = desk.snapped(best->patterns[0].fold, 0, place);
    moves.push_back(spent_on([&] { desk.at(fold); }).processor);
  }
  std::sort(moves.begin(), moves.end());
  Numbers numbers;
  for (const double seconds : {scratch, moves[kMoves / 2], moves.back()})
    numbers.push_back(static_cast<std::int64_t>(seconds * 1e9));
  return numbers;
}

}  // namespace

std::string moving_section(bool) {
  Table table({"fold way", "aim", "of a plan from scratch", "of a frame (16 ms)", "the longest of a frame", "ms"});
  for (const Aim aim : {Aim::most_worth, Aim::worth_less_time})
    for (const FoldWay& way : {test::kOffCentre, test::kFlaps, test::kThirds}) {
      const Outcome outcome = run_apart([&] { return measured(way, aim); });
      if (!outcome.finished || outcome.numbers.empty()) continue;
      const auto seconds = [&](std::size_t i) { return static_cast<double>(outcome.numbers[i]) * 1e-9; };
      table.add({way_name(way), aim == Aim::most_worth ? "most worth" : "worth less time",
                 times(seconds(1) / seconds(0)), times(seconds(1) / kFrame), times(seconds(2) / kFrame),
                 milliseconds(seconds(1))});
    }
  return "## Moving a fold line by hand\n\nThe same roll on a desk that keeps its tables, the first "
         "fold line moved to places over\nits whole range; the middle of " + std::to_string(kMoves) +
         " moves, of processor time.\n\n" + table.text();
}

}  // namespace foldyard::bench
