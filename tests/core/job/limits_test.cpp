// Every limit of core/job/limits.h on both sides: at its ends no fault is found at the
// field, one step beyond there is one. Faults between fields do not count here; they stand in
// check_job_test.cpp and its neighbours.

#include "job/limits.h"

#include <gtest/gtest.h>

#include <fstream>
#include <functional>
#include <iostream>
#include <iterator>
#include <limits>
#include <regex>
#include <set>

#include "core/support/measured.h"
#include "core/support/roomy_job.h"
#include "job/check_job.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::about;
using test::umlauts;
using test::where;

constexpr std::int64_t kNoEnd = std::numeric_limits<std::int64_t>::min();  // there is none to try

// set puts a figure, in the unit of the limit, into a job.
struct LimitRow {
  const char* limit;
  const char* where;
  std::int64_t least;
  std::int64_t most;
  std::function<void(Job&, std::int64_t)> set;
};

// A wide, thin roll and a small panel; one product of it, one webbing, one line.
Job wide_job() {
  Job job = default_job();
  job.rolls = {{"Oak", default_fabric(), Length::mm(40'000)}};
  job.rolls[0].fabric.width = Length::mm(9'000);
  job.cutter.height = Length::mm(500);
  job.panels = {{"Square", Length::mm(50), Length::mm(50), false, true, Worth::whole(1)}};
  job.webbings = {{"cotton", Length::mm(1'000'000)}};
  job.products = {{"bag", {{0, 1}}, {{0, Length::mm(10), 1}}, Worth::whole(1)}};
  job.products[0].sewing = {{"first", {{"hem", Duration::seconds(9)}}}};
  job.order.lines = {{0, 1, 0}};
  return job;
}

#define LENGTH_ROW(limit, where, ...) \
  LimitRow { #limit, where, limits::limit.least.units(), limits::limit.most.units(), [](Job& j, std::int64_t n) { const Length v = Length::units(n); __VA_ARGS__; } }
#define NUMBER_ROW(limit, where, ...) \
  LimitRow { #limit, where, limits::limit.least, limits::limit.most, [](Job& j, std::int64_t v) { __VA_ARGS__; } }
// Up to so many.
#define LIST_ROW(limit, where, ...) \
  LimitRow { #limit, where, kNoEnd, static_cast<std::int64_t>(limits::limit), [](Job& j, std::int64_t n) { const auto v = static_cast<std::size_t>(n); __VA_ARGS__; } }

template <class Named>
void fill(std::vector<Named>& list, std::size_t count) {
  list.resize(count, list.front());
  for (std::size_t i = 0; i < count; ++i) list[i].name = std::to_string(i);
}

ByDiameters diameters() { return {about(220), about(50), about(1)}; }
ByTurns turns() { return {{85, 0}, about(220), about(50)}; }
ByWeight weight() { return {{19'000, 0}, {1'000, 0}, {3'500, 0}}; }

Goods& sewn(Job& job) {
  job.panels[0].sewn = Sewn{};
  return job.panels[0].sewn->goods;
}

KeptLength& kept(Job& job) {
  job.order.kept = {{"Oak", 1, Length::mm(500), {}, {}, {KeptStep{}}}};
  return job.order.kept[0];
}

const LimitRow kLimitRows[] = {
    LIST_ROW(kMostRolls, "rolls", fill(j.rolls, v)),
    LIST_ROW(kMostPanels, "panels", fill(j.panels, v)),
    LIST_ROW(kLongestName, "rolls[0].name", j.rolls[0].name = umlauts(v)),
    LIST_ROW(kMostFlaws, "rolls[0].flaws", j.rolls[0].flaws.assign(v, {{Length(), Length::mm(1)}, {Length(), Length::mm(1)}, ""})),
    LENGTH_ROW(kRollWidth, "rolls[0].width", j.rolls[0].fabric.width = v),
    LENGTH_ROW(kSelvedge, "rolls[0].selvedge", j.rolls[0].fabric.selvedge = v),
    LENGTH_ROW(kThickness, "rolls[0].thickness", j.rolls[0].fabric.thickness = v),
    LENGTH_ROW(kRollLength, "rolls[0].length", j.panels[0].across = j.panels[0].along = Length::mm(500); j.losses.squaring = j.losses.allowance = Length(); j.rolls[0].length = v),
    LENGTH_ROW(kOuter, "rolls[0].measured.outer", auto by = diameters(); by.outer.value = v; j.rolls[0].measured = by),
    // The widest tube is no tube of any roll, which is wider and has the same limit.
    LENGTH_ROW(kTube, "rolls[0].measured.tube", auto by = diameters(); by.outer.value = Length::mm(5'000); by.thickness.value = Length::mm(50);
               by.tube.value = v == limits::kTube.most ? v - Length::units(1) : v; j.rolls[0].measured = by),
    LENGTH_ROW(kGive, "rolls[0].measured.outer_give", auto by = diameters(); by.outer = {Length::mm(4'000), v}; by.thickness.value = Length::mm(50);
               j.rolls[0].measured = by),
    LENGTH_ROW(kRepeat, "rolls[0].repeat.along", j.rolls[0].fabric.repeat.along = v),
    LENGTH_ROW(kPanelAcross, "panels[0].across", j.panels[0].across = v),
    LENGTH_ROW(kPanelAlong, "panels[0].along", j.panels[0].along = v),
    LENGTH_ROW(kTableLength, "table.length", j.table.length = v),
    LENGTH_ROW(kTableDepth, "table.depth", j.table.depth = v),
    LENGTH_ROW(kReach, "table.reach", j.table.reach = v),
    LENGTH_ROW(kCutterHeight, "cutter.height", j.cutter.height = v),
    LENGTH_ROW(kSquaring, "losses.squaring", j.losses.squaring = v),
    LENGTH_ROW(kAllowance, "losses.allowance", j.losses.allowance = v),
    LENGTH_ROW(kFoldTrim, "losses.fold_trim", j.losses.fold_trim = v),
    LENGTH_ROW(kKeep, "losses.keep_across", j.losses.keep_across = v),
    NUMBER_ROW(kMostPlies, "cutter.most_plies", j.cutter.most_plies = static_cast<int>(v)),
    NUMBER_ROW(kLongestFan, "longest_fan", j.longest_fan = static_cast<int>(v)),
    NUMBER_ROW(kAllowancePercent, "pace.allowance_percent", j.pace.allowance_percent = static_cast<int>(v)),
    NUMBER_ROW(kStepMs, "pace.handle", j.pace.handle = Duration::ms(v)),
    NUMBER_ROW(kMsPerMetre, "pace.seconds_per_metre", j.pace.ms_per_metre = v),
    NUMBER_ROW(kPanelWorth, "panels[0].worth", j.panels[0].worth = Worth::parts(v)),
    NUMBER_ROW(kRate, "pace.rate", j.pace.rate = Worth::parts(v)),
    NUMBER_ROW(kAtMost, "panels[0].at_most", j.panels[0].at_most = v),
    NUMBER_ROW(kShrinkage, "rolls[0].shrinkage.along_percent", j.rolls[0].fabric.shrinkage.along = v),
    NUMBER_ROW(kTurns, "rolls[0].measured.turns", auto by = turns(); by.turns.value = v; j.rolls[0].measured = by),
    NUMBER_ROW(kTurnsGive, "rolls[0].measured.turns_give", auto by = turns(); by.turns = {50'000, v}; j.rolls[0].measured = by),
    NUMBER_ROW(kGrams, "rolls[0].measured.roll", auto by = weight(); by.roll.value = v; by.tube.value = 0; j.rolls[0].measured = by),
    NUMBER_ROW(kGramsOrNone, "rolls[0].measured.tube_give", auto by = weight(); by.tube.give = v; j.rolls[0].measured = by),
    NUMBER_ROW(kSquareMetreGrams, "rolls[0].measured.per_square_metre", auto by = weight(); by.per_square_metre.value = v; j.rolls[0].measured = by),
    NUMBER_ROW(kSquareMetreGive, "rolls[0].measured.per_square_metre_give", auto by = weight(); by.per_square_metre.give = v; j.rolls[0].measured = by),
    LimitRow{"kMostFinished", "panels[0].sewn.height", kNoEnd, limits::kMostFinished.units(), [](Job& j, std::int64_t n) { sewn(j).height = Length::units(n); }},
    LimitRow{"kMostTurning", "panels[0].sewn.hem", kNoEnd, limits::kMostTurning.units(), [](Job& j, std::int64_t n) { sewn(j).hem = Length::units(n); }},
    LimitRow{"kMostHandles", "panels[0].sewn.handles", kNoEnd, limits::kMostHandles, [](Job& j, std::int64_t n) { sewn(j).handles = static_cast<int>(n); }},
    LIST_ROW(kMostProducts, "products", fill(j.products, v)),
    LIST_ROW(kMostWebbings, "webbing", fill(j.webbings, v)),
    LIST_ROW(kMostEnds, "webbing[0].ends", j.webbings[0].ends.assign(v, Length::mm(5))),
    LIST_ROW(kMostOrderLines, "order.lines", j.order.lines.assign(v, j.order.lines[0])),
    LIST_ROW(kMostWords, "order.lines[0].from", j.order.lines[0].from.assign(v, "Oak")),
    LIST_ROW(kMostRules, "order.lines[0].rules", j.order.lines[0].rules.assign(v, {"Oak"})),
    LIST_ROW(kMostOnHand, "on_hand", j.on_hand.assign(v, {0, "Oak"})),
    LIST_ROW(kMostRecords, "history", j.history.resize(v)),
    LIST_ROW(kMostSewingOrders, "products[0].sewing", fill(j.products[0].sewing, v)),
    LIST_ROW(kMostSteps, "products[0].sewing[0].steps", fill(j.products[0].sewing[0].steps, v)),
    LIST_ROW(kMostTimes, "products[0].sewing[0].steps[0].timed", j.products[0].sewing[0].steps[0].timed.assign(v, Duration::seconds(1))),
    LIST_ROW(kMostKept, "order.kept", kept(j); j.order.kept.assign(v, j.order.kept[0])),
    // Cuts and what they leave are an odd number.
    LIST_ROW(kMostKeptSteps, "order.kept[0].cuts", kept(j).steps.assign((v - 1) / 2, {NodeKind::cut, Direction::along, Length::mm(9)});
             j.order.kept[0].steps.resize((v - 1) / 2 * 2 + 1)),
    LENGTH_ROW(kCutOff, "history[0].rolls[0].cut", (j.history = {CutRecord{"Monday", 1, {}, {}, {{"Roll", v, Length()}}}})),
    NUMBER_ROW(kKeptCount, "order.kept[0].count", kept(j).count = v),
    LENGTH_ROW(kSeam, "products[0].seam", j.products[0].seam = v),
    LENGTH_ROW(kReel, "notions.reel", j.notions.reel = v),
    NUMBER_ROW(kThreadTenths, "notions.thread_factor", j.notions.thread_tenths = v),
    NUMBER_ROW(kSewingMs, "products[0].sewing[0].steps[0].seconds", j.products[0].sewing[0].steps[0].usual = Duration::ms(v)),
    NUMBER_ROW(kSittingMs, "sitting", j.sitting = Duration::ms(v)),
    NUMBER_ROW(kLabels, "products[0].labels", j.products[0].labels = v),
    NUMBER_ROW(kInAPiece, "products[0].panels[0].count", j.products[0].panels[0].count = v),
    NUMBER_ROW(kPieces, "order.lines[0].may", j.order.lines[0].may = v),
    NUMBER_ROW(kClothPrice, "cloth_price_per_square_metre", j.cloth_price = Worth::parts(v)),
    LENGTH_ROW(kWebbingRoll, "webbing[0].roll", j.webbings[0].roll = v),
    LENGTH_ROW(kWebbingCut, "webbing[0].ends[0]", j.webbings[0].ends = {v}),
    LENGTH_ROW(kWebbingLoss, "webbing[0].loss", j.webbings[0].loss = v),
};
#undef LENGTH_ROW
#undef NUMBER_ROW
#undef LIST_ROW

std::string where_after(const LimitRow& row, std::int64_t value) {
  Job job = wide_job();
  row.set(job, value);
  return where(job);
}

TEST(EveryLimit, HoldAtTheirEndsAndNotBeyond) {
  for (const LimitRow& row : kLimitRows) {
    EXPECT_NE(where_after(row, row.most), row.where) << row.limit << " at its most";
    EXPECT_EQ(where_after(row, row.most + 1), row.where) << row.limit << " beyond its most";
    if (row.least == kNoEnd) continue;
    EXPECT_NE(where_after(row, row.least), row.where) << row.limit << " at its least";
    EXPECT_EQ(where_after(row, row.least - 1), row.where) << row.limit << " below its least";
  }
  std::cout << std::size(kLimitRows) << " limits, both sides\n";
}

// Three are of sums of several fields: check_job_test.cpp, check_order_test.cpp.
TEST(EveryLimit, AreAllTriedHere) {
  std::ifstream file(FOLDYARD_SOURCE_DIR "/core/job/limits.h");
  const std::string header{std::istreambuf_iterator<char>(file), {}};
  std::set<std::string> tried{"kMostCuttingHours", "kMostPanelsOnRoll", "kMostSittings"};
  for (const LimitRow& row : kLimitRows) tried.insert(row.limit);
  static const std::regex kName(R"(constexpr (?:\w|:)+ (k\w+))");
  std::size_t count = 0;
  for (std::sregex_iterator it(header.begin(), header.end(), kName), end; it != end; ++it, ++count)
    EXPECT_TRUE(tried.contains((*it)[1])) << (*it)[1];
  EXPECT_EQ(count, tried.size());
}

}  // namespace
}  // namespace foldyard
