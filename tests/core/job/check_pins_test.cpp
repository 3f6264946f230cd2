#include "job/check_pins.h"

#include <gtest/gtest.h>

#include "core/support/damages.h"
#include "core/support/fold_ways.h"
#include "core/support/order_job.h"

namespace foldyard {
namespace {

using test::kOffCentre;

// A length of 96 cm kept on the first roll: a body on the left, the rest left.
Job with_kept() {
  Job job = test::order_job();
  job.order.kept = {{"moss 1", 2, Length::mm(960), {}, {},
                     {{NodeKind::cut, Direction::along, Length::mm(460)}, {NodeKind::take, Direction::along, {}, 0}, {}}}};
  return job;
}

const test::Damage kPinFaults[] = {
    {"as it is", [](Job&) {}, ""},
    {"a line kept on a roll", [](Job& j) { j.order.lines[0].roll = "moss 2"; }, ""},
    {"no such roll", [](Job& j) { j.order.lines[0].roll = "moss 9"; },
     "order.lines[0].roll: no roll is called \"moss 9\"; name a roll of the job."},
    {"a roll left out", [](Job& j) { j.order.lines[0].roll = "moss 2", j.rolls[1].in_batch = InBatch::never; },
     "order.lines[0].roll: \"moss 2\" is left out of batches; let it be cut, or name another roll."},
    {"cloth that may not serve", [](Job& j) { j.order.lines[1].roll = "moss 2"; },
     "order.lines[1].roll: \"moss 2\" is of a cloth that may not serve this line; name its cloth in \"from\" too, or another roll."},
    {"kept on no roll", [](Job& j) { j.order.kept[0].roll = "x"; },
     "order.kept[0].roll: no roll is called \"x\"; name a roll of the job."},
    {"kept never", [](Job& j) { j.order.kept[0].count = 0; }, "order.kept[0].count: 0 is too small; give 1 to 1000."},
    {"no cuts", [](Job& j) { j.order.kept[0].steps.clear(); }, "order.kept[0].cuts: the list is empty; give at least one."},
    {"cuts that end early", [](Job& j) { j.order.kept[0].steps.pop_back(); },
     "order.kept[0].cuts: they end before all of the length is told of; say what becomes of each part."},
    {"cuts that go on", [](Job& j) { j.order.kept[0].steps.push_back({}); },
     "order.kept[0].cuts[3]: all of the length is told of before; leave it out."},
    {"no such panel", [](Job& j) { j.order.kept[0].steps[1].panel = 3; },
     "order.kept[0].cuts[1].take: it names no panel of the job; choose a panel."},
    {"a panel before the first", [](Job& j) { j.order.kept[0].steps[1].panel = -1; },
     "order.kept[0].cuts[1].take: it names no panel of the job; choose a panel."},
    {"folds of cloth that lies open", [](Job& j) { j.order.kept[0].lines = {Length::mm(700)}; },
     "order.kept[0].lines: the way has another number of folds; give each its place."},
    {"a cut at the edge", [](Job& j) { j.order.kept[0].steps[0].at = Length(); },
     "order.kept[0].cuts[0].at: the cut lies outside its cloth; say where."},
    {"folds without lines", [](Job& j) { j.order.kept[0].way = kOffCentre; },
     "order.kept[0].lines: the way has another number of folds; give each its place."},
};

TEST(CheckPins, SaysWhatCannotStand) { test::expect_sentences(with_kept(), kPinFaults); }

}  // namespace
}  // namespace foldyard
