#include "job/mark_cut.h"

#include <algorithm>
#include <map>
#include <set>

#include "cloth/cloth_of.h"
#include "cloth/roll_estimate.h"
#include "job/cloth_to_cut.h"
#include "job/kept_length.h"
#include "job/limits.h"
#include "job/roll_of.h"
#include "job/yield_range.h"
#include "measure/index.h"

namespace foldyard {
namespace {

static_assert(kLeastLeft == limits::kRollLength.least);  // what may be all gone is a roll still

std::string number(std::int64_t n) { return std::to_string(n); }

class Marking {
 public:
  Marking(const Job& job, const BatchPlan& plan, const CutReport& report) : job_(job), plan_(plan), report_(report) {}

  Result<Job> run() {
    if (auto problem = wrong_lays()) return *problem;
    gather();
    if (auto problem = wrong_order()) return *problem;
    next_ = job_;
    for (const auto& [roll, lengths] : cut_) shorten(plan_.rolls[ix(roll)], lengths);
    if (auto problem = take_found()) return *problem;
    put_remnants_on_shelf();
    let_go();
    if (auto problem = take_spoilt()) return *problem;
    put_on_hand();
    clear_shelf();
    record_rolls();
    if (next_.rolls.size() > limits::kMostRolls)
      return Problem{"rolls", say("the shelf would hold more than %1 rolls", limits::kMostRolls),
                     say("take away remnants you do not need, then mark again")};
    return next_;
  }

 private:
  std::optional<Problem> wrong_lays() const {
    if (report_.lays.empty()) return Problem{"", say("no lay is marked as cut"), say("name at least one")};
    std::set<int> met;
    for (const int lay : report_.lays) {
      if (lay < 0 || lay >= std::ssize(plan_.lays))
        return Problem{"", say("the plan has no lay %1", lay + 1), say("it has 1 to %1", std::ssize(plan_.lays))};
      if (!met.insert(lay).second)
        return Problem{"", say("lay %1 is marked twice", lay + 1), say("name it once")};
    }
    return {};
  }

  void gather() {
    for (const int lay : report_.lays) {
      for (const StackedLength& length : plan_.lays[ix(lay)].lengths)
        cut_[length.roll].insert(length.length);
    }
  }

  // Where places on the roll matter, lengths are cut from the free end on.
  std::optional<Problem> wrong_order() const {
    for (const auto& [roll, lengths] : cut_) {
      const Roll& cloth = job_.rolls[ix(plan_.rolls[ix(roll)].roll)];
      if (cloth.flaws.empty() && !cloth.fabric.repeat.is_any()) continue;
      if (*lengths.rbegin() + 1 == std::ssize(lengths)) continue;
      return Problem{"", say("on \"%1\" a length is marked as cut that lies behind one that is not", cloth.name),
                     say("mark the lays of the lengths before it too, since this cloth has flaws or a repeat")};
    }
    return {};
  }

  Roll& next_of(const Plan& plan) { return next_.rolls[ix(plan.roll)]; }

  void shorten(const Plan& plan, const std::set<int>& lengths) {
    Roll& roll = next_of(plan);
    Length gone = cloth_to_cut(roll, job_.losses).from;
    const bool by_place = !roll.flaws.empty() || roll.fabric.repeat.is_any();
    if (by_place) {
      gone = plan.lengths[ix(*lengths.rbegin())].on_roll.to;
      move_places(roll, gone);
    } else {
      for (const int length : lengths) gone += plan.lengths[ix(length)].on_roll.size();
    }
    roll.length = roll.length - gone;
    gone_[plan.roll] = gone;
    measured_before(roll, gone);
    if (roll.squared == Squared::none) roll.squared = Squared::free_end;
    const bool all = lengths.size() == plan.lengths.size();
    if (all && !plan.remnant_kept && !may_hold_more(roll)) used_up_.insert(plan.roll);
  }

  // An estimate is one of what is left; a length that was found is known anew.
  static void measured_before(Roll& roll, Length gone) {
    roll.cut_since += gone;
    if (is_estimated(roll))
      if (const Result<LengthEstimate> left = estimate_of(roll)) {
        roll.length = left->least;
        return;
      }
    forget_measure(roll);
  }

  static void forget_measure(Roll& roll) {
    roll.measured.reset();
    roll.is_found = false;
    roll.cut_since = {};
  }

  // Whether what an estimated roll most likely holds can still be cut.
  bool may_hold_more(Roll roll) const {
    if (!is_estimated(roll)) return false;
    const Result<LengthEstimate> left = estimate_of(roll);
    if (left) roll.length = left->likely;
    return cloth_to_cut(roll, job_.losses).size() > job_.losses.allowance;
  }

  static void move_places(Roll& roll, Length by) {
    std::vector<Flaw> left;
    for (Flaw flaw : roll.flaws) {
      flaw.along = {std::max(Length(), flaw.along.from - by), flaw.along.to - by};
      if (!flaw.along.is_empty()) left.push_back(flaw);
    }
    roll.flaws = std::move(left);
    move_start(roll.fabric.repeat.start_along, by, roll.fabric.repeat.along);
  }

  // Of a pattern that repeats, seen from a place further on.
  static void move_start(Length& start, Length by, Length repeat) {
    if (repeat == Length()) return;
    const std::int64_t rest = (start - by).units() % repeat.units();
    start = Length::units(rest < 0 ? rest + repeat.units() : rest);
  }

  static Length most_before(const Roll& roll) {
    if (!is_estimated(roll)) return roll.length;
    const Result<LengthEstimate> before = estimate_of(roll);
    return before ? before->most : roll.length;
  }

  std::optional<Problem> take_found() {
    for (const FoundLeft& found : report_.left) {
      Roll& roll = next_.rolls[ix(found.roll)];
      if (found.left > most_before(job_.rolls[ix(found.roll)]))
        return Problem{"", say("\"%1\" is said to hold more than before it was cut", roll.name), say("measure it again")};
      roll.length = found.left;
      forget_measure(roll);
      std::erase_if(roll.flaws, [&](const Flaw& flaw) { return flaw.along.to > found.left; });
      if (found.left < limits::kRollLength.least) used_up_.insert(found.roll);
    }
    return {};
  }

  std::string name_for(const Roll& roll) const {
    for (int n = 1;; ++n) {
      std::string name = roll.name.substr(0, 60) + ", rest " + number(n);
      const bool is_free = std::none_of(next_.rolls.begin(), next_.rolls.end(),
                                        [&](const Roll& other) { return other.name == name; });
      if (is_free) return name;
    }
  }

  void put_remnants_on_shelf() {
    for (const auto& [roll, lengths] : cut_) {
      const Plan& plan = plan_.rolls[ix(roll)];
      for (const int length : lengths) {
        for (const Rest& rest : pattern_of(plan, plan.lengths[ix(length)]).rests) {
          if (rest.kind == RestKind::remnant) put_on_shelf(plan, length, rest);
        }
      }
    }
  }

  // What was kept and is cut is kept no more; a roll that had to be cut is.
  void let_go() {
    for (const auto& [roll, lengths] : cut_) {
      const Plan& plan = plan_.rolls[ix(roll)];
      next_of(plan).in_batch = InBatch::may;
      for (const int length : lengths)
        for (KeptLength& kept : next_.order.kept) {
          if (kept.count == 0 || kept.roll != next_of(plan).name || !is_cut_as(kept, pattern_of(plan, plan.lengths[ix(length)]))) continue;
          --kept.count;
          break;
        }
    }
    std::erase_if(next_.order.kept, [](const KeptLength& kept) { return kept.count == 0; });
  }

  // Cloth that touches a flaw of its roll is not kept as a remnant.
  bool is_flawed(const Plan& plan, int length, const Rest& rest) const {
    const Roll& roll = roll_of(job_, plan);
    const Length start = plan.lengths[ix(length)].pattern_start(job_.losses.allowance);
    const Rect place{rest.flat.across, {start + rest.flat.along.from, start + rest.flat.along.to}};
    return std::any_of(roll.flaws.begin(), roll.flaws.end(),
                       [&](const Flaw& flaw) { return Rect{flaw.across, flaw.along}.overlaps(place); });
  }

  void put_on_shelf(const Plan& plan, int length, const Rest& rest) {
    const Roll& roll = roll_of(job_, plan);
    if (is_flawed(plan, length, rest) || rest.flat.across.size() < roll.fabric.repeat.across) return;
    Roll remnant = roll;
    remnant.name = name_for(roll);
    remnant.in_batch = InBatch::may;
    remnant.cloth = cloth_of(roll);
    remnant.fabric.width = rest.flat.across.size();
    remnant.fabric.selvedge = Length();
    Repeat& repeat = remnant.fabric.repeat;
    const Length start = plan.lengths[ix(length)].pattern_start(job_.losses.allowance);
    move_start(repeat.start_along, start + rest.flat.along.from, repeat.along);
    move_start(repeat.start_across, rest.flat.across.from, repeat.across);
    remnant.length = rest.flat.along.size();
    forget_measure(remnant);
    remnant.flaws.clear();
    remnant.squared = Squared::both;
    next_.rolls.push_back(std::move(remnant));
  }

  void count_panels() {
    for (const auto& [roll, lengths] : cut_) {
      const Plan& plan = plan_.rolls[ix(roll)];
      const Roll& cloth = roll_of(job_, plan);
      for (const int length : lengths) {
        for (const PlacedPanel& placed : pattern_of(plan, plan.lengths[ix(length)]).panels) ++gained_[{cloth_of(cloth), placed.panel}];
      }
      for (const LostPanel& lost : plan.lost) {
        if (lengths.contains(lost.length))
          --gained_[{cloth_of(cloth), pattern_of(plan, plan.lengths[ix(lost.length)]).panels[ix(lost.panel)].panel}];
      }
    }
  }

  std::optional<Problem> take_spoilt() {
    count_panels();
    for (const CutPanels& spoilt : report_.spoilt) {
      std::int64_t& gained = gained_[{spoilt.cloth, spoilt.panel}];
      if (spoilt.count < 0 || spoilt.count > gained)
        return Problem{"", say("%n panels are said to be spoilt of the %2 that were cut from %3", spoilt.count, gained, spoilt.cloth),
                       say("count them again")};
      gained -= spoilt.count;
    }
    return {};
  }

  std::vector<std::string> marks_of(const std::string& cloth) const {
    for (const Roll& roll : job_.rolls) {
      if (cloth_of(roll) == cloth) return roll.marks;
    }
    return {};
  }

  void put_on_hand() {
    CutRecord record{report_.when, std::ssize(report_.lays), {}};
    for (const auto& [place, count] : gained_) {
      if (count == 0) continue;
      record.panels.push_back({place.second, place.first, marks_of(place.first), count});
      add_on_hand(record.panels.back());
    }
    for (const CutPanels& spoilt : report_.spoilt) {
      if (spoilt.count > 0) record.spoilt.push_back({spoilt.panel, spoilt.cloth, marks_of(spoilt.cloth), spoilt.count});
    }
    next_.history.push_back(std::move(record));
    if (next_.history.size() > limits::kMostRecords) next_.history.erase(next_.history.begin());
  }

  void add_on_hand(const CutPanels& panels) {
    for (CutPanels& there : next_.on_hand) {
      if (there.panel != panels.panel || there.cloth != panels.cloth) continue;
      there.count += panels.count;
      return;
    }
    next_.on_hand.push_back(panels);
  }

  // Rolls of which nothing is left, from the back, so that indices hold.
  void clear_shelf() {
    for (std::size_t i = 0; i < job_.rolls.size(); ++i) {
      if (cloth_to_cut(next_.rolls[i], job_.losses).size() <= job_.losses.allowance && !may_hold_more(next_.rolls[i])) used_up_.insert(static_cast<int>(i));
    }
    for (auto roll = used_up_.rbegin(); roll != used_up_.rend() && next_.rolls.size() > 1; ++roll) {
      forget_in_order(next_, next_.rolls[ix(*roll)].name);
      next_.rolls.erase(next_.rolls.begin() + *roll);
    }
    Roll& last = next_.rolls.front();
    last.length = std::max(last.length, limits::kRollLength.least);
  }

  void record_rolls() {
    for (const auto& [at, gone] : gone_) {
      const std::string& name = job_.rolls[ix(at)].name;
      const auto roll = std::find_if(next_.rolls.begin(), next_.rolls.end(), [&](const Roll& each) { return each.name == name; });
      next_.history.back().rolls.push_back({name, gone, roll == next_.rolls.end() ? Length() : roll->length});
    }
  }

  const Job& job_;
  const BatchPlan& plan_;
  const CutReport& report_;
  std::map<int, std::set<int>> cut_;  // lengths by roll of the plan
  std::map<std::pair<std::string, int>, std::int64_t> gained_;  // by cloth and panel
  std::map<int, Length> gone_;  // by roll of the job
  std::set<int> used_up_;
  Job next_;
};

}  // namespace

Result<Job> mark_cut(const Job& job, const BatchPlan& plan, const CutReport& report) {
  return Marking(job, plan, report).run();
}

CutReport all_cut(const BatchPlan& plan, const std::string& when) {
  CutReport report{when, {}};
  for (int lay = 0; lay < std::ssize(plan.lays); ++lay) report.lays.push_back(lay);
  return report;
}

}  // namespace foldyard
