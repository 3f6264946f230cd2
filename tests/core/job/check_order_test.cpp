#include "job/check_order.h"

#include <gtest/gtest.h>

#include "core/support/damages.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

Roll roll(const char* name, const char* cloth, const std::vector<std::string>& marks) {
  Roll roll{name, default_fabric(), Length::mm(20'000)};
  roll.cloth = cloth;
  roll.marks = marks;
  return roll;
}

// 40 carriers, at least 6 of each cloth, no more than 12 printed.
Job carrier_order() {
  Job job = default_job();
  job.rolls = {roll("Moss 1", "moss", {"plain"}), roll("Moss 2", "moss", {"plain"}), roll("Fern", "", {"printed"})};
  job.panels = {{"body", Length::mm(450), Length::mm(900), false, true, Worth::whole(5)},
                {"pocket", Length::mm(200), Length::mm(200), false, true, Worth::whole(1)}};
  job.webbings = {{"cotton 30", Length::mm(50'000), Worth::whole(18), {Length::mm(3'200)}, Length::mm(5)}};
  job.products = {{"carrier", {{0, 1}, {1, 2, {"plain"}}}, {{0, Length::mm(550), 2}}, Worth::whole(24)}};
  job.order.lines = {{0, 40, 0, {}, 6, {{"printed", 0, 12}}}};
  return job;
}

// Three rolls of just 800 000 panels each, that many hours with the allowance of 100 %.
void cut_small(Job& job, std::int64_t hours) {
  job.pace = {};
  job.pace.allowance_percent = 100;
  job.panels[1].across = Length::mm(5), job.panels[1].along = Length::mm(7);
  for (Roll& roll : job.rolls) roll.fabric.width = Length::mm(1'400);
  job.pace.mark = job.pace.handle = Duration::ms(hours * 3'600'000 / 2 / 3 / 800'000 / 5);
}

// 200 rolls and 50 panels of products, the panels 2 cm wide.
void crowd(Job& job, Length usable) {
  const Roll roll = job.rolls[0];
  const Panel panel{"", Length::mm(20), Length::mm(30), false, true, Worth::whole(1)};
  job.order.lines[0].each_at_least = 0;
  job.order.lines[0].rules.clear();
  job.products[0].panels.clear();
  job.rolls.clear(), job.panels.clear();
  for (int i = 0; i < 200; ++i) {
    job.rolls.push_back(roll);
    job.rolls.back().name += " " + std::to_string(i);
    job.rolls.back().length = Length::mm(5'000);
    job.rolls.back().fabric.width = usable + roll.fabric.selvedge * 2;
  }
  for (int i = 0; i < 50; ++i) {
    job.panels.push_back(panel);
    job.panels.back().name = std::to_string(i);
    job.products[0].panels.push_back({i, 1, {}});
  }
}

const test::Damage kOrderFaults[] = {
    {"as it is", [](Job&) {}, ""},
    {"other marks on one cloth", [](Job& j) { j.rolls[1].marks = {"printed"}; },
     "rolls[1].marks: the roll is of the cloth \"moss\" as \"Moss 1\" is, but has other marks; give rolls of one "
     "cloth the same marks."},
    {"an empty mark", [](Job& j) { j.rolls[2].marks.push_back(""); },
     "rolls[2].marks[1]: the name is empty; give it one."},
    {"a dear cloth", [](Job& j) { j.rolls[0].price = Worth::whole(100'001); },
     "rolls[0].price_per_metre: 100001 is too large; give 0 to 100000."},
    {"two webbings of a name", [](Job& j) { j.webbings.push_back(j.webbings[0]); },
     "webbing[1].name: the name \"cotton 30\" stands twice; give each its own."},
    {"a short roll of webbing", [](Job& j) { j.webbings[0].roll = Length::mm(554); },
     "products[0].webbing[0].length: 55 cm is longer than a full roll of \"cotton 30\"; give a longer roll or cut "
     "it shorter."},
    {"a roll of webbing that just does", [](Job& j) { j.webbings[0].roll = Length::mm(555); }, ""},
    {"products of a name", [](Job& j) { j.products.push_back(j.products[0]); },
     "products[1].name: the name \"carrier\" stands twice; give each its own."},
    {"ways to sew of a name", [](Job& j) { j.products[0].sewing = {{"edges first", {}}, {"edges first", {}}}; },
     "products[0].sewing[1].name: the name \"edges first\" stands twice; give each its own."},
    {"a webbing that is not there", [](Job& j) { j.products[0].webbing[0].webbing = 1; },
     "products[0].webbing[0].webbing: it names no webbing of the job; choose a webbing."},
    {"a webbing that is not chosen", [](Job& j) { j.products[0].webbing[0].webbing = -1; },
     "products[0].webbing[0].webbing: it names no webbing of the job; choose a webbing."},
    {"a panel that is not chosen", [](Job& j) { j.products[0].panels[1].panel = -1; },
     "products[0].panels[1].panel: it names no panel of the job; choose a panel."},
    {"a product that is not chosen", [](Job& j) { j.order.lines[0].product = -1; },
     "order.lines[0].product: it names no product of the job; choose a product."},
    {"panels on hand that are none of the job", [](Job& j) { j.on_hand = {{2, "moss", {"plain"}, 3}}; },
     "on_hand[0].panel: it names no panel of the job; choose a panel."},
    {"an end too short", [](Job& j) { j.webbings[0].ends = {Length::mm(4)}; },
     "webbing[0].ends[0]: 0.4 cm is too small; give 5 mm to 1 km (1000 m)."},
    {"no panels", [](Job& j) { j.products[0].panels.clear(); },
     "products[0].panels: the list is empty; give at least one."},
    {"a panel twice", [](Job& j) { j.products[0].panels[1].panel = 0; },
     "products[0].panels[1].panel: the panel stands twice; count both together."},
    {"a panel that is not there", [](Job& j) { j.products[0].panels[1].panel = 2; },
     "products[0].panels[1].panel: it names no panel of the job; choose a panel."},
    {"none of a panel", [](Job& j) { j.products[0].panels[0].count = 0; },
     "products[0].panels[0].count: 0 is too small; give 1 to 1000."},
    {"a lining of no cloth", [](Job& j) { j.products[0].panels[1].from = {"velvet"}; },
     "products[0].panels[1].from[0]: no roll is of the cloth \"velvet\" or has it as a mark; write the cloth or a "
     "mark of a roll."},
    {"a roll's name where it has a cloth", [](Job& j) { j.order.lines[0].from = {"Moss 1"}; },
     "order.lines[0].from[0]: no roll is of the cloth \"Moss 1\" or has it as a mark; write the cloth or a mark of "
     "a roll."},
    {"a roll's name where it has none", [](Job& j) {
       j.order.lines[0].from = {"Fern"};
       j.order.lines[0].rules.clear();
     }, ""},
    {"a product that is not there", [](Job& j) { j.order.lines[0].product = 1; },
     "order.lines[0].product: it names no product of the job; choose a product."},
    {"no piece", [](Job& j) {
       j.order.lines[0] = {0, 0, 0};
     }, "order.lines[0].must: the line asks for no piece; say how many."},
    {"only pieces that may be made", [](Job& j) {
       j.order.lines[0] = {0, 0, 1};
     }, ""},
    {"just enough for each cloth", [](Job& j) {
       j.order.lines[0].must = 12;
     }, ""},
    {"too many of each cloth", [](Job& j) { j.order.lines[0].must = 11; },
     "order.lines[0].each_at_least: 6 of each of 2 cloths is more than the 11 pieces of the line; ask for fewer of "
     "each, or for more pieces."},
    {"a rule that contradicts itself", [](Job& j) { j.order.lines[0].rules[0].at_least = 13; },
     "order.lines[0].rules[0].at_least: 13 is more than the 12 that may be made of it; ask for fewer, or take more."},
    {"sold for nothing", [](Job& j) { j.products[0].price = Worth(); }, ""},
    {"a price of no cloth", [](Job& j) { j.products[0].prices = {{"velvet", Worth::whole(1)}}; },
     "products[0].prices[0].of: no roll is of the cloth \"velvet\" or has it as a mark; write the cloth or a mark of "
     "a roll."},
    {"a step of two days", [](Job& j) { j.products[0].sewing = {{"edges first", {{"edges", Duration::seconds(172'800)}}}}; },
     "products[0].sewing[0].steps[0].seconds: 172800 is too large; give 0 to 86400."},
    {"a step twice", [](Job& j) {
       j.products[0].sewing = {{"edges first", {{"edges", Duration::seconds(9)}, {"edges", Duration::seconds(9)}}}};
     }, "products[0].sewing[0].steps[1].name: the name \"edges\" stands twice; give each its own."},
    {"a thrifty seam", [](Job& j) { j.notions.thread_tenths = 9; },
     "notions.thread_factor: 0.9 is too small; give 1 to 100."},
    {"no time to sew", [](Job& j) { j.sitting = Duration(); }, "sitting: 0 is too small; give 60 to 86400."},
    // 30 s with an allowance of 100 % fill a sitting of 60 s: 100 000 pieces, as many sittings.
    {"as much sewing as there may be", [](Job& j) {
       j.pace.allowance_percent = 100;
       j.sitting = Duration::seconds(60);
       j.order.lines[0].must = 0, j.order.lines[0].may = 100'000, j.order.lines[0].each_at_least = 0;
       j.products[0].sewing = {{"edges first", {{"edges", Duration::seconds(30)}}}};
     }, ""},
    {"too much sewing", [](Job& j) {
       j.pace.allowance_percent = 100;
       j.sitting = Duration::seconds(60);
       j.order.lines[0].must = 2, j.order.lines[0].may = 99'999, j.order.lines[0].each_at_least = 0;
       j.products[0].sewing = {{"edges first", {{"edges", Duration::seconds(30)}}}};
     }, "order.lines: sewing all pieces takes more than 100000 sittings; ask for fewer pieces, or correct the seconds "
        "of their steps."},
    {"as much cutting as there may be", [](Job& j) { cut_small(j, 3'999'000); }, ""},
    {"too much cutting", [](Job& j) { cut_small(j, 4'001'000); },
     "rolls: cutting all rolls may take more than 4000000 hours; plan fewer rolls or larger panels, or correct the "
     "seconds of the steps."},
    {"as many panels abreast as there may be", [](Job& j) { crowd(j, Length::mm(519)); }, ""},
    {"too many panels abreast", [](Job& j) { crowd(j, Length::mm(520)); },
     "rolls: side by side across all rolls lie more than 250000 panels of all kinds; plan fewer rolls or fewer kinds of "
     "panels at once."},
    {"panels on hand of other marks", [](Job& j) { j.on_hand = {{0, "moss", {"printed"}, 3}}; },
     "on_hand[0].marks: the panels are of the cloth \"moss\" and have other marks than its rolls; give them the same "
     "marks."},
    {"an aim twice", [](Job& j) { j.order.aims = {BatchAim::cloth, BatchAim::lifts, BatchAim::cloth}; },
     "order.aims[2]: the aim stands twice; name each once."},
    {"no aims", [](Job& j) { j.order.aims.clear(); }, ""},
  };

TEST(CheckOrder, SaysWhatCannotStandWhereAndWhatToDo) { test::expect_sentences(carrier_order(), kOrderFaults); }

}  // namespace
}  // namespace foldyard
