#include "job/check_job.h"

#include <algorithm>
#include <set>

#include "job/decimal.h"
#include "job/limits.h"

namespace foldyard {
namespace {

std::size_t characters_in(const std::string& utf8) {
  return static_cast<std::size_t>(
      std::count_if(utf8.begin(), utf8.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

bool has_control_character(const std::string& text) {
  return std::any_of(text.begin(), text.end(), [](char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7F;
  });
}

bool is_blank(const std::string& text) { return text.find_first_not_of(' ') == std::string::npos; }

bool is_colour(const std::string& text) {
  return text.size() == 7 && text[0] == '#' &&
         text.find_first_not_of("0123456789abcdefABCDEF", 1) == std::string::npos;
}

// Keeps the first fault; each check after it is without effect.
class Checker {
 public:
  explicit Checker(const Job& job) : job_(job) {}

  std::optional<Problem> run() {
    name("name", job_.name, false);
    rolls();
    panels();
    table_and_cutter();
    losses();
    pace();
    number("longest_fan", job_.longest_fan, limits::kLongestFan, 0);
    contradictions();
    return first_;
  }

 private:
  void fault(std::string where, std::string what, std::string next) {
    if (!first_) first_ = Problem{std::move(where), std::move(what), std::move(next)};
  }

  std::string text_of(Length length) const {
    const std::string exact = write_exact(length, job_.unit);
    return exact.empty() ? write_length(length, job_.unit) : exact;
  }

  void name(const std::string& where, const std::string& text, bool needed) {
    if (needed && is_blank(text)) fault(where, "the name is empty", "give it one");
    if (characters_in(text) > limits::kLongestName) {
      fault(where, "the name has " + std::to_string(characters_in(text)) + " characters",
            "use at most " + std::to_string(limits::kLongestName));
    }
    if (has_control_character(text)) {
      fault(where, "the name holds a line break or another control character", "leave it out");
    }
  }

  void length(const std::string& where, Length value, const LengthLimit& limit) {
    if (limit.least <= value && value <= limit.most) return;
    fault(where, text_of(value) + (value < limit.least ? " is too small" : " is too large"),
          "give " + std::string(limit.in_words));
  }

  void number(const std::string& where, std::int64_t value, NumberLimit limit, int places) {
    if (limit.least <= value && value <= limit.most) return;
    const std::string text = value < 0 ? "a negative number" : write_decimal(value, places);
    fault(where, text + (value < limit.least ? " is too small" : " is too large"),
          "give " + write_decimal(limit.least, places) + " to " +
              write_decimal(limit.most, places));
  }

  void step(const std::string& where, Duration value) {
    number(where, value.ticks() / Duration::kTicksPerMs, limits::kStepMs, 3);
  }

  void count(const std::string& where, std::size_t value, std::size_t most) {
    if (value == 0) fault(where, "the list is empty", "give at least one");
    if (value > most) {
      fault(where, "the list has " + std::to_string(value) + " entries",
            "use at most " + std::to_string(most));
    }
  }

  template <class List>
  void names_differ(const std::string& where, const List& list) {
    std::set<std::string> seen;
    for (std::size_t i = 0; i < list.size(); ++i) {
      if (seen.insert(list[i].name).second) continue;
      fault(where + "[" + std::to_string(i) + "].name",
            "the name \"" + list[i].name + "\" stands twice", "give each its own");
    }
  }

  void rolls() {
    count("rolls", job_.rolls.size(), limits::kMostRolls);
    for (std::size_t i = 0; i < job_.rolls.size(); ++i) {
      roll("rolls[" + std::to_string(i) + "].", job_.rolls[i]);
    }
    names_differ("rolls", job_.rolls);
  }

  void roll(const std::string& where, const Roll& roll) {
    const Fabric& fabric = roll.fabric;
    name(where + "name", roll.name, true);
    length(where + "width", fabric.width, limits::kRollWidth);
    length(where + "selvedge", fabric.selvedge, limits::kSelvedge);
    length(where + "thickness", fabric.thickness, limits::kThickness);
    length(where + "length", roll.length, limits::kRollLength);
    if (!is_colour(fabric.colour)) {
      fault(where + "colour", "\"" + fabric.colour + "\" is not a colour",
            "write it like \"#3a6ea5\"");
    }
  }

  void panels() {
    count("panels", job_.panels.size(), limits::kMostPanels);
    for (std::size_t i = 0; i < job_.panels.size(); ++i) {
      panel("panels[" + std::to_string(i) + "].", job_.panels[i]);
    }
    names_differ("panels", job_.panels);
  }

  void panel(const std::string& where, const Panel& panel) {
    name(where + "name", panel.name, true);
    length(where + "across", panel.across, limits::kPanelAcross);
    length(where + "along", panel.along, limits::kPanelAlong);
    number(where + "worth", panel.worth.parts(), limits::kPanelWorth, 4);
  }

  void table_and_cutter() {
    length("table.length", job_.table.length, limits::kTableLength);
    length("table.depth", job_.table.depth, limits::kTableDepth);
    length("table.reach", job_.table.reach, limits::kReach);
    length("cutter.height", job_.cutter.height, limits::kCutterHeight);
    number("cutter.most_plies", job_.cutter.most_plies, limits::kMostPlies, 0);
  }

  void losses() {
    length("losses.squaring", job_.losses.squaring, limits::kSquaring);
    length("losses.allowance", job_.losses.allowance, limits::kAllowance);
    length("losses.fold_trim", job_.losses.fold_trim, limits::kFoldTrim);
    length("losses.keep_across", job_.losses.keep_across, limits::kKeep);
    length("losses.keep_along", job_.losses.keep_along, limits::kKeep);
  }

  void pace() {
    const Pace& pace = job_.pace;
    step("pace.unroll", pace.unroll);
    step("pace.cross_cut", pace.cross_cut);
    step("pace.fold", pace.fold);
    step("pace.lift", pace.lift);
    step("pace.mark", pace.mark);
    number("pace.seconds_per_metre", pace.ms_per_metre, limits::kMsPerMetre, 3);
    step("pace.handle", pace.handle);
    number("pace.allowance_percent", pace.allowance_percent, limits::kAllowancePercent, 0);
    number("pace.rate", pace.rate.parts(), limits::kRate, 4);
  }

  void contradictions() {
    if (first_) return;
    for (std::size_t i = 0; i < job_.rolls.size(); ++i) {
      roll_holds("rolls[" + std::to_string(i) + "].", job_.rolls[i]);
    }
    if (first_) return;
    for (std::size_t i = 0; i < job_.panels.size(); ++i) {
      panel_fits("panels[" + std::to_string(i) + "]", job_.panels[i]);
    }
    if (!first_) sums_fit();
  }

  // The cloth of a roll that a length can have along the roll.
  Length longest_length(const Roll& roll) const {
    return roll.length - job_.losses.squaring * 2 - job_.losses.allowance;
  }

  void roll_holds(const std::string& where, const Roll& roll) {
    const Fabric& fabric = roll.fabric;
    if (fabric.usable_width() <= Length()) {
      fault(where + "selvedge",
            "two selvedges of " + text_of(fabric.selvedge) + " take the whole width of " +
                text_of(fabric.width),
            "give a smaller selvedge or a larger width");
    }
    if (fabric.thickness > job_.cutter.height) {
      fault(where + "thickness",
            "one ply of " + text_of(fabric.thickness) + " is over the cutter's height of " +
                text_of(job_.cutter.height),
            "correct it or cutter.height");
    }
    if (longest_length(roll) <= Length()) {
      fault(where + "length",
            "squaring both ends and the allowance of a length take the whole " +
                text_of(roll.length),
            "leave the roll out or give a smaller losses.squaring or losses.allowance");
    }
  }

  bool lies_on(const Roll& roll, Length across, Length along) const {
    return across <= roll.fabric.usable_width() && along <= longest_length(roll);
  }

  bool fits(const Roll& roll, const Panel& panel) const {
    const bool may_turn = panel.may_turn && roll.fabric.nap == Nap::none;
    return lies_on(roll, panel.across, panel.along) ||
           (may_turn && lies_on(roll, panel.along, panel.across));
  }

  void panel_fits(const std::string& where, const Panel& panel) {
    if (std::any_of(job_.rolls.begin(), job_.rolls.end(),
                    [&](const Roll& roll) { return fits(roll, panel); })) {
      return;
    }
    fault(where,
          text_of(panel.across) + " × " + text_of(panel.along) +
              " fits the usable cloth of no roll in any way it may lie",
          "give a smaller panel, a larger roll, or may_turn");
  }

  void sums_fit() {
    Area smallest = job_.panels.front().area();
    for (const Panel& panel : job_.panels) smallest = std::min(smallest, panel.area());
    for (std::size_t i = 0; i < job_.rolls.size(); ++i) {
      const Area cloth = job_.rolls[i].fabric.width * job_.rolls[i].length;
      if (cloth.square_units() / smallest.square_units() <= limits::kMostPanelsOnRoll) continue;
      fault("rolls[" + std::to_string(i) + "].length",
            "the roll holds more than 1000000 of the smallest panel",
            "plan a shorter roll or larger panels");
    }
  }

  const Job& job_;
  std::optional<Problem> first_;
};

}  // namespace

std::optional<Problem> check_job(const Job& job) { return Checker(job).run(); }

}  // namespace foldyard
