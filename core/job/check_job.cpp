#include "job/check_job.h"

#include <algorithm>
#include <set>

#include "cloth/flaw_order.h"
#include "cutting/shape.h"
#include "job/check_order.h"
#include "job/check_roll.h"
#include "job/check_sewn.h"

namespace foldyard {
namespace {

class Checker {
 public:
  explicit Checker(const Job& job) : job_(job), faults_(job.unit) {}

  std::optional<Problem> run() {
    faults_.name("name", job_.name, false);
    rolls();
    panels();
    table_and_cutter();
    losses();
    pace();
    faults_.number("longest_fan", job_.longest_fan, limits::kLongestFan, 0);
    contradictions();
    check_order_values(faults_, job_);
    return faults_.fault();
  }

 private:
  template <class List>
  void names_differ(const std::string& where, const List& list) {
    std::set<std::string> seen;
    for (std::size_t i = 0; i < list.size(); ++i) {
      if (seen.insert(list[i].name).second) continue;
      faults_.keep(where + "[" + std::to_string(i) + "].name",
                   say("the name \"%1\" stands twice", list[i].name), say("give each its own"));
    }
  }

  void rolls() {
    faults_.count("rolls", job_.rolls.size(), limits::kMostRolls);
    for (std::size_t i = 0; i < job_.rolls.size(); ++i) {
      check_roll_limits(faults_, "rolls[" + std::to_string(i) + "].", job_.rolls[i]);
    }
    names_differ("rolls", job_.rolls);
  }

  void panels() {
    faults_.count("panels", job_.panels.size(), limits::kMostPanels);
    for (std::size_t i = 0; i < job_.panels.size(); ++i) {
      panel("panels[" + std::to_string(i) + "].", job_.panels[i]);
    }
    names_differ("panels", job_.panels);
  }

  void panel(const std::string& where, const Panel& panel) {
    faults_.name(where + "name", panel.name, true);
    faults_.length(where + "across", panel.across, limits::kPanelAcross);
    faults_.length(where + "along", panel.along, limits::kPanelAlong);
    faults_.number(where + "worth", panel.worth.parts(), limits::kPanelWorth, 4);
    if (panel.at_most) faults_.number(where + "at_most", *panel.at_most, limits::kAtMost, 0);
    if (!panel.sewn) return;
    if (const auto wrong = check_sewn(panel, job_.unit)) {
      faults_.keep(where + wrong->where, wrong->what, wrong->next);
    }
  }

  void table_and_cutter() {
    faults_.length("table.length", job_.table.length, limits::kTableLength);
    faults_.length("table.depth", job_.table.depth, limits::kTableDepth);
    faults_.length("table.reach", job_.table.reach, limits::kReach);
    faults_.length("cutter.height", job_.cutter.height, limits::kCutterHeight);
    faults_.number("cutter.most_plies", job_.cutter.most_plies, limits::kMostPlies, 0);
  }

  void losses() {
    faults_.length("losses.squaring", job_.losses.squaring, limits::kSquaring);
    faults_.length("losses.allowance", job_.losses.allowance, limits::kAllowance);
    faults_.length("losses.fold_trim", job_.losses.fold_trim, limits::kFoldTrim);
    faults_.length("losses.keep_across", job_.losses.keep_across, limits::kKeep);
    faults_.length("losses.keep_along", job_.losses.keep_along, limits::kKeep);
  }

  void pace() {
    const Pace& pace = job_.pace;
    faults_.step("pace.unroll", pace.unroll);
    faults_.step("pace.cross_cut", pace.cross_cut);
    faults_.step("pace.fold", pace.fold);
    faults_.step("pace.lift", pace.lift);
    faults_.step("pace.mark", pace.mark);
    faults_.number("pace.seconds_per_metre", pace.ms_per_metre, limits::kMsPerMetre, 3);
    faults_.step("pace.handle", pace.handle);
    faults_.number("pace.allowance_percent", pace.allowance_percent, limits::kAllowancePercent, 0);
    faults_.number("pace.rate", pace.rate.parts(), limits::kRate, 4);
  }

  void contradictions() {
    if (faults_.fault()) return;
    for (std::size_t i = 0; i < job_.rolls.size(); ++i) {
      check_roll_sense(faults_, "rolls[" + std::to_string(i) + "].", job_.rolls[i], job_);
    }
    if (faults_.fault()) return;
    const bool is_fresh = job_.history.empty();  // what fitted may be cut by now
    for (std::size_t i = 0; is_fresh && i < job_.panels.size(); ++i) {
      panel_fits("panels[" + std::to_string(i) + "]", job_.panels[i]);
    }
    if (!faults_.fault()) sums_fit();
  }

  bool lies_on(const Roll& roll, const SizeOnCloth& size) const {
    return size.across <= roll.fabric.usable_width() &&
           size.along <= longest_length(roll, job_.losses);
  }

  bool fits(const Roll& roll, const Panel& panel, bool turned) const {
    if (turned && (!panel.may_turn || roll.fabric.nap != Nap::none)) return false;
    return lies_on(roll, size_on_cloth(panel, roll.fabric, turned));
  }

  bool fits(const Roll& roll, const Panel& panel) const {
    return fits(roll, panel, false) || fits(roll, panel, true);
  }

  void panel_fits(const std::string& where, const Panel& panel) {
    if (std::any_of(job_.rolls.begin(), job_.rolls.end(),
                    [&](const Roll& roll) { return fits(roll, panel); })) {
      return;
    }
    const Words size = say("%1 × %2", faults_.text_of(panel.across), faults_.text_of(panel.along));
    const Words shrunk = shrunk_size(panel);
    faults_.keep(where,
                 shrunk.empty()
                     ? say("%1 fits the usable cloth of no roll in any way it may lie", size)
                     : say("%1, %2, fits the usable cloth of no roll in any way it may lie", size, shrunk),
                 say("give a smaller panel, a larger roll, or may_turn"));
  }

  // Names the cut size on the first roll that only its shrinkage keeps from
  // holding the panel, if there is one.
  Words shrunk_size(const Panel& panel) const {
    for (const Roll& roll : job_.rolls) {
      Roll stable = roll;
      stable.fabric.shrinkage = {};
      if (!fits(stable, panel)) continue;
      const bool turned = !fits(stable, panel, false);
      SizeOnCloth cut = size_on_cloth(panel, roll.fabric, turned);
      if (lies_sideways(panel, roll.fabric, turned)) std::swap(cut.across, cut.along);
      return say("cut %1 × %2 on roll \"%3\" for its shrinkage", Words::number(write_length(cut.across, job_.unit)),
                 Words::number(write_length(cut.along, job_.unit)), roll.name);
    }
    return {};
  }

  void sums_fit() {
    Area smallest = job_.panels.front().area();
    for (const Panel& panel : job_.panels) smallest = std::min(smallest, panel.area());
    for (std::size_t i = 0; i < job_.rolls.size(); ++i) {
      const Area cloth = job_.rolls[i].fabric.width * job_.rolls[i].length;
      if (cloth.square_units() / smallest.square_units() <= limits::kMostPanelsOnRoll) continue;
      faults_.keep("rolls[" + std::to_string(i) + "].length",
                   say("the roll holds more than 1000000 of the smallest panel"),
                   say("plan a shorter roll or larger panels"));
    }
  }

  const Job& job_;
  FirstFault faults_;
};

std::optional<Problem> check_flaw_order(const Job& job) {
  for (std::size_t i = 0; i < job.rolls.size(); ++i) {
    if (are_in_order(job.rolls[i].flaws)) continue;
    return Problem{"rolls[" + std::to_string(i) + "].flaws",
                   say("the flaws do not stand in the order in which they begin"),
                   say("put them in that order")};
  }
  return {};
}

}  // namespace

std::optional<Problem> check_unordered_job(const Job& job) { return Checker(job).run(); }

std::optional<Problem> check_job(const Job& job) {
  const std::optional<Problem> fault = check_unordered_job(job);
  return fault ? fault : check_flaw_order(job);
}

}  // namespace foldyard
