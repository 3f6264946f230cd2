#include "job/check_roll.h"

#include <algorithm>

#include "cloth/roll_estimate.h"
#include "job/cloth_to_cut.h"

namespace foldyard {
namespace {

bool is_colour(const std::string& text) {
  return text.size() == 7 && text[0] == '#' &&
         text.find_first_not_of("0123456789abcdefABCDEF", 1) == std::string::npos;
}

// Holds each figure of a measure to its limits.
struct MeasureLimits {
  FirstFault& faults;
  std::string where;  // "rolls[1].measured."

  void length(const char* key, const MeasuredLength& figure, const LengthLimit& limit) const {
    faults.length(where + key, figure.value, limit);
    faults.length(where + key + "_give", figure.give, limits::kGive);
  }
  void count(const char* key, const MeasuredCount& figure, NumberLimit limit, NumberLimit give,
             int places = 0) const {
    faults.number(where + key, figure.value, limit, places);
    faults.number(where + key + "_give", figure.give, give, places);
  }

  void operator()(const ByDiameters& by) const {
    length("outer", by.outer, limits::kOuter);
    length("tube", by.tube, limits::kTube);
    length("thickness", by.thickness, limits::kThickness);
  }
  void operator()(const ByTurns& by) const {
    count("turns", by.turns, limits::kTurns, limits::kTurnsGive);
    length("outer", by.outer, limits::kOuter);
    length("tube", by.tube, limits::kTube);
  }
  void operator()(const ByWeight& by) const {
    count("roll", by.roll, limits::kGrams, limits::kGramsOrNone);
    count("tube", by.tube, limits::kGramsOrNone, limits::kGramsOrNone);
    count("per_square_metre", by.per_square_metre, limits::kSquareMetreGrams,
          limits::kSquareMetreGive, 1);
  }
};

void estimate_sense(FirstFault& faults, const std::string& where, const Roll& roll) {
  const Result<LengthEstimate> length = estimate_of(roll);
  if (!length) {
    const Problem& problem = length.problem();
    faults.keep(where + "measured" + (problem.where.empty() ? "" : "." + problem.where),
                problem.what, problem.next);
  } else if (roll.is_found) {
    return;
  } else if (length->least < limits::kRollLength.least) {
    faults.keep(where + "measured",
                say("the cloth may be as short as %1", faults.text_of(length->least)),
                say("measure more closely, or give the length that is found; a roll has %1",
                    say(limits::kRollLength.in_words.data())));
  } else if (roll.length != length->least) {
    faults.keep(where + "length", say("it is not the low end of what was measured"),
                say("give the length that was found, or what was measured alone"));
  }
}

void length_limits(FirstFault& faults, const std::string& where, const Roll& roll) {
  if (!is_estimated(roll)) faults.length(where + "length", roll.length, limits::kRollLength);
  if (!roll.measured && roll.is_found) {
    faults.keep(where + "measured", say("the length counts as found and nothing was measured before"),
                say("give what was measured"));
  }
  if (roll.cut_since != Length()) faults.length(where + "cut_since", roll.cut_since, limits::kCutOff);
  if (!roll.measured && roll.cut_since != Length())
    faults.keep(where + "cut_since", say("cloth is cut off since the roll was measured, and nothing was measured"),
                say("give what was measured, or leave it out"));
  if (!roll.measured) return;
  std::visit(MeasureLimits{faults, where + "measured."}, *roll.measured);
  if (!faults.fault()) estimate_sense(faults, where, roll);
}

void repeat_limits(FirstFault& faults, const std::string& where, const Repeat& repeat) {
  const auto one = [&](const char* key, Length value) {
    if (value != Length()) faults.length(where + key, value, limits::kRepeat);
  };
  const auto start = [&](const char* key, Length value) {
    faults.length(where + key, value, {Length(), limits::kRepeat.most, to_say("less than one repeat")});
  };
  one("along", repeat.along);
  one("across", repeat.across);
  start("start_along", repeat.start_along);
  start("start_across", repeat.start_across);
}

std::string flaw_at(const std::string& where, std::size_t i) {
  return where + "flaws[" + std::to_string(i) + "].";
}

void flaw_limits(FirstFault& faults, const std::string& where, const std::vector<Flaw>& flaws) {
  faults.no_more(where + "flaws", flaws.size(), limits::kMostFlaws);
  for (std::size_t i = 0; i < flaws.size(); ++i) {
    faults.name(flaw_at(where, i) + "kind", flaws[i].kind, false);
  }
}

// One side of a flaw, along or across; end: of the cloth that way.
void flaw_side(FirstFault& faults, const std::string& where, const char* from, const char* to,
               Span side, Length end, const Words& end_words) {
  if (side.from < Length()) {
    faults.keep(where + from, say("the flaw begins before the cloth"), say("give 0 cm or more"));
  }
  if (side.is_empty()) {
    faults.keep(where + to,
                say("the flaw is empty: it goes from %1 to %2", faults.text_of(side.from), faults.text_of(side.to)),
                say("give more than its \"%1\"", from));
  }
  if (side.to > end) {
    faults.keep(where + to,
                say("the flaw goes to %1 and the cloth ends at %2", faults.text_of(side.to), faults.text_of(end)),
                say("correct the flaw or %1", end_words));
  }
}

void flaw_sense(FirstFault& faults, const std::string& where, const Roll& roll) {
  for (std::size_t i = 0; i < roll.flaws.size(); ++i) {
    const Flaw& flaw = roll.flaws[i];
    const std::string at = flaw_at(where, i);
    flaw_side(faults, at, "from", "to", flaw.along, roll.length,
              is_estimated(roll) ? say("what was measured of the roll (its low end counts)")
                                 : say("the length of the roll"));
    flaw_side(faults, at, "left", "right", flaw.across, roll.fabric.width,
              say("the width of the roll"));
  }
}

void repeat_start(FirstFault& faults, const std::string& where, const std::string& way,
                  Length repeat, Length start) {
  if (start == Length() || start < repeat) return;
  if (repeat == Length()) {
    faults.keep(where + "start_" + way,
                way == "along" ? say("no pattern repeats along there, so none begins")
                               : say("no pattern repeats across there, so none begins"),
                say("give repeat.%1, or leave the start out", way));
  }
  faults.keep(where + "start_" + way,
              say("a repeat of %1 begins before %2", faults.text_of(repeat), faults.text_of(start)),
              say("give where the first one begins, less than one repeat"));
}

// For panels that are to match a repeat; pattern: of what is wrong.
void repeat_room(FirstFault& faults, const std::string& where, Length repeat, Length room,
                 const char* pattern) {
  if (repeat <= room) return;
  faults.keep(where, say(pattern, faults.text_of(repeat), faults.text_of(room)),
              say("correct it, or let no panel match"));
}

void repeat_sense(FirstFault& faults, const std::string& where, const Fabric& fabric,
                  const Job& job) {
  const Repeat& repeat = fabric.repeat;
  repeat_start(faults, where, "along", repeat.along, repeat.start_along);
  repeat_start(faults, where, "across", repeat.across, repeat.start_across);
  if (std::all_of(job.panels.begin(), job.panels.end(),
                  [](const Panel& panel) { return panel.match == Match::none; })) {
    return;
  }
  repeat_room(faults, where + "along", repeat.along, job.table.length,
              to_say("a repeat of %1 is longer than the table of %2, and panels are to match it"));
  repeat_room(faults, where + "across", repeat.across, fabric.width,
              to_say("a repeat of %1 is wider than the cloth of %2, and panels are to match it"));
}

}  // namespace

Length longest_length(const Roll& roll, const Losses& losses) {
  return cloth_to_cut(roll, losses).size() - losses.allowance;
}

void check_roll_limits(FirstFault& faults, const std::string& where, const Roll& roll) {
  const Fabric& fabric = roll.fabric;
  faults.name(where + "name", roll.name, true);
  faults.length(where + "width", fabric.width, limits::kRollWidth);
  faults.length(where + "selvedge", fabric.selvedge, limits::kSelvedge);
  faults.length(where + "thickness", fabric.thickness, limits::kThickness);
  length_limits(faults, where, roll);
  if (!is_colour(fabric.colour)) {
    faults.keep(where + "colour", say("\"%1\" is not a colour", fabric.colour),
                say("write it like \"#3a6ea5\""));
  }
  repeat_limits(faults, where + "repeat.", fabric.repeat);
  faults.number(where + "shrinkage.along_percent", fabric.shrinkage.along, limits::kShrinkage, 2);
  faults.number(where + "shrinkage.across_percent", fabric.shrinkage.across, limits::kShrinkage,
                2);
  flaw_limits(faults, where, roll.flaws);
}

void check_roll_sense(FirstFault& faults, const std::string& where, const Roll& roll,
                      const Job& job) {
  const Fabric& fabric = roll.fabric;
  if (fabric.usable_width() <= Length()) {
    faults.keep(where + "selvedge",
                say("two selvedges of %1 take the whole width of %2", faults.text_of(fabric.selvedge),
                    faults.text_of(fabric.width)),
                say("give a smaller selvedge or a larger width"));
  }
  if (fabric.thickness > job.cutter.height) {
    faults.keep(where + "thickness",
                say("one ply of %1 is over the cutter's height of %2", faults.text_of(fabric.thickness),
                    faults.text_of(job.cutter.height)),
                say("correct it or cutter.height"));
  }
  const bool is_rest = !job.history.empty();  // the last of the cloth may be too short
  if (!is_rest && longest_length(roll, job.losses) <= Length()) {
    faults.keep(where + (is_estimated(roll) ? "measured" : "length"),
                say("squaring both ends and the allowance of a length take the whole %1",
                    faults.text_of(roll.length)),
                say("leave the roll out or give a smaller losses.squaring or losses.allowance"));
  }
  repeat_sense(faults, where + "repeat.", fabric, job);
  flaw_sense(faults, where, roll);
}

}  // namespace foldyard
