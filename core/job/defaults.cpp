#include "job/defaults.h"

#include <algorithm>

#include "job/decimal.h"
#include "measure/read_length.h"
#include "measure/words.h"

namespace foldyard {
namespace {

constexpr std::int64_t kSquareUnitsPerSquareMetre = 320'000LL * 320'000LL;

// "from memory" says that the figure is commonly held and that no text for it
// was seen.
const std::vector<Default> kDefaults = {
    {"rolls[].width", "140 cm",
     to_say("furnishing prints are 135 to 145 cm wide (designandmake.net, glossary, width)"), false},
    {"rolls[].selvedge", "1.5 cm",
     to_say("between the 13 mm a side that cutters deduct (fashion-incubator.com, What is cuttable "
            "width) and the 20 mm a selvedge may have (textileglossary.com, selvedge)"),
     false},
    {"rolls[].thickness", "1 mm",
     to_say("assumption: flat-weave upholstery cloth has 0.7 to 1.1 mm, from memory, no source; measure "
            "ten plies and take a tenth"),
     true},
    {"rolls[].nap", "none", to_say("assumption: look at the cloth turned end for end"), true},
    {"rolls[].colour", "#c9b79c", to_say("assumption: for pictures only"), true},
    {"rolls[].railroaded", "false",
     to_say("assumption: most cloth is woven with its pattern along the roll"), true},
    {"rolls[].repeat.along", "0 cm", to_say("assumption: plain cloth; measure from motif to motif"), true},
    {"rolls[].repeat.across", "0 cm", to_say("assumption: plain cloth; measure from motif to motif"), true},
    {"rolls[].repeat.start_along", "0 cm", to_say("assumption: the roll was cut at a repeat"), true},
    {"rolls[].repeat.start_across", "0 cm", to_say("assumption: the cloth begins with a repeat"), true},
    {"rolls[].repeat.symmetric", "false", to_say("assumption: look at the motif in a mirror"), true},
    {"rolls[].shrinkage.along_percent", "0", to_say("assumption: wash a piece and measure it"), true},
    {"rolls[].shrinkage.across_percent", "0", to_say("assumption: wash a piece and measure it"), true},
    {"panels[].grain", "pattern", to_say("assumption: the pattern is to stand upright in use"), true},
    {"panels[].match", "none", to_say("assumption: plain cloth, or a pattern that may fall as it falls"),
     true},
    {"panels[].may_turn", "false", to_say("assumption: panels keep the direction of the cloth"), true},
    {"panels[].on_fold", "true", to_say("assumption: a crease presses out"), true},
    {"panels[].worth_per_square_metre", "20", to_say("assumption: put in what your cloth costs"), true},
    {"rolls[].squared", "none", to_say("assumption: a roll as bought is cut askew"), true},
    {"cloth_price_per_square_metre", "10", to_say("assumption: put in what your cloth costs"), true},
    {"notions.thread_factor", "2.8",
     to_say("assumption: a lockstitched seam takes 2.5 to 3 times its length in thread, from memory, no source"), true},
    {"notions.reel", "500 m", to_say("assumption: look at your reels"), true},
    {"notions.reel_price", "4", to_say("assumption: put in what you pay"), true},
    {"notions.label_price", "0.2", to_say("assumption: put in what you pay"), true},
    {"sitting", "10800", to_say("assumption: three hours at the machine in one go"), true},
    {"table.length", "250 cm", to_say("assumption: a table of one room, no source"), true},
    {"table.depth", "160 cm",
     to_say("a table should be at least 20 cm wider than the cloth (I. Vilumsone-Nemes, Industrial "
            "Cutting of Textile Materials, p. 56): 140 cm and 20 cm"),
     false},
    {"table.reach", "80 cm", to_say("assumption: half of the table's depth; measure your own"), true},
    {"table.both_sides", "true", to_say("assumption: one can walk around the table"), true},
    {"cutter.height", "25 mm",
     to_say("no more than about a quarter of the blade of a round knife, of which 100 mm is among the "
            "most used (I. Vilumsone-Nemes, Industrial Cutting of Textile Materials, p. 106 and 107)"),
     false},
    {"cutter.most_plies", "12",
     to_say("1 to 12 plies are usual for a round knife (fashion2apparel.blogspot.com, January 2018)"),
     false},
    {"losses.squaring", "10 cm", to_say("assumption: first and last trim of a roll, from memory, no source"),
     true},
    {"losses.allowance", "4 cm",
     to_say("up to 2 cm at each end or 4 cm a ply (mytextilenotes.blogspot.com, October 2012)"), false},
    {"losses.fold_trim", "5 mm",
     to_say("assumption: room for the bend, 2 to 5 mm, from memory, no source"), true},
    {"losses.keep_across", "30 cm", to_say("assumption: as large as a small panel"), true},
    {"losses.keep_along", "30 cm", to_say("assumption: as large as a small panel"), true},
    {"pace.unroll", "120", to_say("assumption: time your own"), true},
    {"pace.cross_cut", "60", to_say("assumption: time your own"), true},
    {"pace.fold", "30", to_say("assumption: time your own"), true},
    {"pace.lift", "60", to_say("assumption: time your own"), true},
    {"pace.mark", "15", to_say("assumption: time your own"), true},
    {"pace.seconds_per_metre", "20",
     to_say("3 m a minute: a round knife cuts 1250 to 1500 m in 7 h with handling, which is 3.0 to 3.6 m "
            "a minute (encyclopaedia text copied at m.weldtec.com.vn/cutting-machine.html)"),
     false},
    {"pace.handle", "4", to_say("assumption: time your own"), true},
    {"pace.allowance_percent", "15",
     to_say("assumption: for one person standing, from memory, no source; put on basic time"), true},
    {"pace.rate", "20", to_say("assumption: put in what your hour is worth"), true},
    {"longest_fan", "6", to_say("assumption: more folds are hard to keep square by hand"), true},
};

std::string_view value_of(std::string_view key) { return default_of(key).value; }
Length length_of(std::string_view key) { return read_length(value_of(key)).value(); }
bool flag_of(std::string_view key) { return value_of(key) == "true"; }
std::int64_t number_of(std::string_view key, int places) {
  return read_decimal(value_of(key), places).value();
}
int whole_of(std::string_view key) { return static_cast<int>(number_of(key, 0)); }
Worth worth_of(std::string_view key) { return Worth::parts(number_of(key, 4)); }
Duration duration_of(std::string_view key) { return Duration::ms(number_of(key, 3)); }

Repeat default_repeat() {
  return {length_of("rolls[].repeat.along"), length_of("rolls[].repeat.across"),
          length_of("rolls[].repeat.start_along"), length_of("rolls[].repeat.start_across"),
          flag_of("rolls[].repeat.symmetric")};
}

Shrinkage default_shrinkage() {
  return {number_of("rolls[].shrinkage.along_percent", 2),
          number_of("rolls[].shrinkage.across_percent", 2)};
}

Losses default_losses() {
  return {length_of("losses.squaring"), length_of("losses.allowance"),
          length_of("losses.fold_trim"), length_of("losses.keep_across"),
          length_of("losses.keep_along")};
}

Pace default_pace() {
  Pace pace;
  pace.unroll = duration_of("pace.unroll");
  pace.cross_cut = duration_of("pace.cross_cut");
  pace.fold = duration_of("pace.fold");
  pace.lift = duration_of("pace.lift");
  pace.mark = duration_of("pace.mark");
  pace.ms_per_metre = number_of("pace.seconds_per_metre", 3);
  pace.handle = duration_of("pace.handle");
  pace.allowance_percent = whole_of("pace.allowance_percent");
  pace.rate = worth_of("pace.rate");
  return pace;
}

}  // namespace

const std::vector<Default>& defaults() { return kDefaults; }

const Default& default_of(std::string_view key) {
  return *std::find_if(kDefaults.begin(), kDefaults.end(),
                       [&](const Default& entry) { return entry.key == key; });
}

Fabric default_fabric() {
  const Nap nap = value_of("rolls[].nap") == "one-way" ? Nap::one_way : Nap::none;
  return {length_of("rolls[].width"),
          length_of("rolls[].selvedge"),
          length_of("rolls[].thickness"),
          nap,
          std::string(value_of("rolls[].colour")),
          default_repeat(),
          flag_of("rolls[].railroaded"),
          default_shrinkage()};
}

Job default_job() {
  Job job;
  job.table = {length_of("table.length"), length_of("table.depth"), length_of("table.reach"),
               flag_of("table.both_sides")};
  job.cutter = {length_of("cutter.height"), whole_of("cutter.most_plies")};
  job.losses = default_losses();
  job.pace = default_pace();
  job.longest_fan = whole_of("longest_fan");
  job.notions = {number_of("notions.thread_factor", 1), length_of("notions.reel"), worth_of("notions.reel_price"),
                 worth_of("notions.label_price")};
  job.sitting = duration_of("sitting");
  job.cloth_price = worth_of("cloth_price_per_square_metre");
  return job;
}

Worth default_worth(Area area) {
  const std::int64_t per_square_metre = number_of("panels[].worth_per_square_metre", 4);
  const std::int64_t whole = area.square_units() / kSquareUnitsPerSquareMetre;
  const std::int64_t rest = area.square_units() % kSquareUnitsPerSquareMetre;
  const std::int64_t parts =
      whole * per_square_metre + rest * per_square_metre / kSquareUnitsPerSquareMetre;
  return Worth::parts(std::max<std::int64_t>(parts, 1));
}

}  // namespace foldyard
