#include "job/check_roll.h"

#include <gtest/gtest.h>

#include <functional>

#include "cloth/length_estimate.h"
#include "core/support/lengths.h"
#include "core/support/measured.h"
#include "core/support/roomy_job.h"
#include "job/check_job.h"

namespace foldyard {
namespace {

using test::BothSides;
using test::JobEdit;
using test::kUnit;
using test::mm;
using test::roomy_job;
using test::some_diameters;
using test::some_turns;
using test::some_weight;
using test::where;

std::string what(const Job& job) {
  const auto problem = check_job(job);
  return problem ? problem->what : "";
}

void set_measure(Job& job, const RollMeasure& measure) {
  Roll& roll = job.rolls[0];
  roll.measured = measure;
  const auto length = estimate(measure, roll.fabric.width);
  if (length) roll.length = length->least;
}

class RollLimits : public testing::TestWithParam<BothSides> {};

TEST_P(RollLimits, HoldOnBothSides) {
  Job good = roomy_job();
  GetParam().good(good);
  EXPECT_EQ(where(good), "") << check_job(good)->sentence();
  Job bad = roomy_job();
  GetParam().bad(bad);
  ASSERT_EQ(where(bad), GetParam().where);
  EXPECT_FALSE(check_job(bad)->what.empty());
  EXPECT_FALSE(check_job(bad)->next.empty());
}

template <class Measure, class Change>
JobEdit measured(Measure measure, Change change) {
  return [=](Job& job) {
    Measure changed = measure;
    change(changed);
    set_measure(job, changed);
  };
}

JobEdit diameters(std::function<void(ByDiameters&)> change) {
  return measured(some_diameters(), change);
}
JobEdit turns(std::function<void(ByTurns&)> change) { return measured(some_turns(), change); }
JobEdit weight(std::function<void(ByWeight&)> change) { return measured(some_weight(), change); }

JobEdit flaw(Span along, Span across) {
  return [=](Job& job) { job.rolls[0].flaws = {{along, across, "stain"}}; };
}

JobEdit repeat(Repeat repeat, Match match = Match::start) {
  return [=](Job& job) {
    job.rolls[0].fabric.repeat = repeat;
    job.panels[0].match = match;
  };
}

JobEdit shrinkage(std::int64_t along, std::int64_t across) {
  return [=](Job& job) { job.rolls[0].fabric.shrinkage = {along, across}; };
}

const Length kNone;
const Span kWide = mm(0, 1400);

const BothSides kRollLimits[] = {
    {"outer_wider_than_the_tube", diameters([](auto& by) { by.outer.value = Length::mm(60); }),
     diameters([](auto& by) { by.outer.value = Length::mm(40); }), "rolls[0].measured.tube"},
    {"outer_least", turns([](auto& by) {
       by.outer = {Length::mm(10), kNone};
       by.tube = {kNone, kNone};
     }),
     turns([](auto& by) { by.outer.value = Length::mm(10) - kUnit; }),
     "rolls[0].measured.outer"},
    {"outer_most", turns([](auto& by) { by.outer.value = Length::mm(5000); }),
     turns([](auto& by) { by.outer.value = Length::mm(5000) + kUnit; }),
     "rolls[0].measured.outer"},
    {"tube_least", diameters([](auto& by) { by.tube.value = kNone; }),
     diameters([](auto& by) { by.tube.value = kNone - kUnit; }), "rolls[0].measured.tube"},
    {"tube_give_least", diameters([](auto& by) { by.tube.give = kNone; }),
     diameters([](auto& by) { by.tube.give = kNone - kUnit; }), "rolls[0].measured.tube_give"},
    {"outer_give_most", diameters([](auto& by) { by.outer.give = Length::mm(100); }),
     diameters([](auto& by) { by.outer.give = Length::mm(1000) + kUnit; }),
     "rolls[0].measured.outer_give"},
    {"ply_least", diameters([](auto& by) { by.thickness = {Length::units(16), kNone}; }),
     diameters([](auto& by) { by.thickness = {Length::units(15), kNone}; }),
     "rolls[0].measured.thickness"},
    {"ply_zero", diameters([](auto&) {}),
     diameters([](auto& by) { by.thickness = {kNone, kNone}; }), "rolls[0].measured.thickness"},
    {"ply_may_be_zero",
     diameters([](auto& by) { by.thickness.give = Length::mm(1) - Length::units(16); }),
     diameters([](auto& by) { by.thickness.give = Length::mm(1); }),
     "rolls[0].measured.thickness"},
    {"turns_least", turns([](auto& by) { by.turns = {1, 0}; }),
     turns([](auto& by) { by.turns = {0, 0}; }), "rolls[0].measured.turns"},
    {"turns_most", turns([](auto& by) {
       by.turns = {50'000, 0};  // of a mean girth of 15.7 mm: 785 m
       by.outer = {Length::mm(10), kNone};
       by.tube = {kNone, kNone};
     }),
     turns([](auto& by) { by.turns = {50'001, 0}; }), "rolls[0].measured.turns"},
    {"turns_give", turns([](auto& by) { by.turns.give = 0; }),
     turns([](auto& by) { by.turns.give = -1; }), "rolls[0].measured.turns_give"},
    {"roll_weight_least", weight([](auto& by) { by = {{1, 0}, {0, 0}, {10, 0}}; }),
     weight([](auto& by) { by.roll.value = 0; }), "rolls[0].measured.roll"},
    {"roll_weight_most", weight([](auto& by) { by.per_square_metre.value = 3'500; }),
     weight([](auto& by) { by.roll.value = 100'000'001; }), "rolls[0].measured.roll"},
    {"tube_weight_least", weight([](auto& by) { by.tube = {0, 0}; }),
     weight([](auto& by) { by.tube = {-1, 0}; }), "rolls[0].measured.tube"},
    {"square_metre_least", weight([](auto& by) { by = {{2, 0}, {1, 0}, {1, 0}}; }),
     weight([](auto& by) { by.per_square_metre = {0, 0}; }),
     "rolls[0].measured.per_square_metre"},
    {"square_metre_most", weight([](auto& by) { by.per_square_metre = {100'000, 0}; }),
     weight([](auto& by) { by.per_square_metre = {100'001, 0}; }),
     "rolls[0].measured.per_square_metre"},
    // 1 km × 1.4 m × 350 g are 490 kg.
    {"a_kilometre_by_weight", weight([](auto& by) { by = {{490'000, 0}, {0, 0}, {3'500, 0}}; }),
     weight([](auto& by) { by = {{490'001, 0}, {0, 0}, {3'500, 0}}; }), "rolls[0].measured"},
    // 1 cm × 1.4 m × 500 g are 7 g.
    {"a_centimetre_by_weight",
     [](Job& job) {
       job.losses.squaring = job.losses.allowance = kNone;
       job.panels[0].along = Length::mm(5);
       set_measure(job, ByWeight{{7, 0}, {0, 0}, {5'000, 0}});
     },
     [](Job& job) { set_measure(job, ByWeight{{7, 1}, {0, 0}, {5'000, 0}}); },
     "rolls[0].measured"},
    {"length_is_the_low_end", diameters([](auto&) {}),
     [](Job& job) {
       set_measure(job, some_diameters());
       job.rolls[0].length += kUnit;
     },
     "rolls[0].length"},
    {"cut_since_the_roll_was_measured",
     [](Job& job) {
       set_measure(job, some_diameters());
       job.rolls[0].cut_since = Length::mm(1'000);
       job.rolls[0].length = job.rolls[0].length - Length::mm(1'000);
     },
     [](Job& job) { job.rolls[0].cut_since = Length::mm(1'000); }, "rolls[0].cut_since"},
    {"no_more_cut_than_there_was",
     diameters([](auto&) {}),
     [](Job& job) {
       set_measure(job, some_diameters());
       job.rolls[0].cut_since = kLongest;
     },
     "rolls[0].measured"},
    {"another_length_is_found",
     [](Job& job) {
       set_measure(job, some_diameters());
       job.rolls[0].length = Length::mm(50'000);
       job.rolls[0].is_found = true;
     },
     [](Job& job) { job.rolls[0].is_found = true; }, "rolls[0].measured"},

    {"flaw_from_the_free_end", flaw(mm(0, 10), kWide),
     flaw({kNone - kUnit, Length::mm(10)}, kWide), "rolls[0].flaws[0].from"},
    {"flaw_to_the_end", flaw(mm(39'990, 40'000), kWide),
     flaw({Length::mm(39'990), Length::mm(40'000) + kUnit}, kWide), "rolls[0].flaws[0].to"},
    {"flaw_not_empty", flaw({Length::mm(10), Length::mm(10) + kUnit}, kWide),
     flaw(mm(10, 10), kWide), "rolls[0].flaws[0].to"},
    {"flaw_turned_round", flaw(mm(10, 20), kWide), flaw(mm(20, 10), kWide),
     "rolls[0].flaws[0].to"},
    {"flaw_from_the_left_edge", flaw(mm(1, 2), mm(0, 10)),
     flaw(mm(1, 2), {kNone - kUnit, Length::mm(10)}), "rolls[0].flaws[0].left"},
    {"flaw_to_the_right_edge", flaw(mm(1, 2), mm(1390, 1400)),
     flaw(mm(1, 2), {Length::mm(1390), Length::mm(1400) + kUnit}), "rolls[0].flaws[0].right"},
    {"flaw_not_without_width", flaw(mm(1, 2), {Length::mm(10), Length::mm(10) + kUnit}),
     flaw(mm(1, 2), mm(10, 10)), "rolls[0].flaws[0].right"},
    {"flaws_most", [](Job& job) { job.rolls[0].flaws.assign(200, {mm(1, 2), kWide, ""}); },
     [](Job& job) { job.rolls[0].flaws.assign(201, {mm(1, 2), kWide, ""}); }, "rolls[0].flaws"},
    {"flaw_kind", [](Job& job) { job.rolls[0].flaws = {{mm(1, 2), kWide, std::string(80, 'x')}}; },
     [](Job& job) { job.rolls[0].flaws = {{mm(1, 2), kWide, std::string(81, 'x')}}; },
     "rolls[0].flaws[0].kind"},
    {"flaws_in_order",
     [](Job& job) { job.rolls[0].flaws = {{mm(1, 2), kWide, ""}, {mm(1, 3), kWide, ""}}; },
     [](Job& job) { job.rolls[0].flaws = {{mm(1, 3), kWide, ""}, {mm(1, 2), kWide, ""}}; },
     "rolls[0].flaws"},

    {"repeat_least", repeat({Length::mm(1), kNone, kNone, kNone}),
     repeat({Length::mm(1) - kUnit, kNone, kNone, kNone}), "rolls[0].repeat.along"},
    {"repeat_across_most", repeat({kNone, Length::mm(1400), kNone, kNone}),
     repeat({kNone, Length::mm(10'000) + kUnit, kNone, kNone}), "rolls[0].repeat.across"},
    {"repeat_start", repeat({Length::mm(640), kNone, Length::mm(640) - kUnit, kNone}),
     repeat({Length::mm(640), kNone, Length::mm(640), kNone}), "rolls[0].repeat.start_along"},
    {"repeat_start_across", repeat({kNone, Length::mm(70), kNone, Length::mm(70) - kUnit}),
     repeat({kNone, Length::mm(70), kNone, Length::mm(70)}), "rolls[0].repeat.start_across"},
    {"repeat_start_below_zero", repeat({Length::mm(640), kNone, kNone, kNone}),
     repeat({Length::mm(640), kNone, kNone - kUnit, kNone}), "rolls[0].repeat.start_along"},
    {"start_of_no_repeat", repeat({kNone, Length::mm(70), kNone, Length::mm(10)}),
     repeat({kNone, Length::mm(70), Length::mm(10), kNone}), "rolls[0].repeat.start_along"},
    // The table is 250 cm long, the cloth 140 cm wide.
    {"repeat_on_the_table", repeat({Length::mm(2500), kNone, kNone, kNone}),
     repeat({Length::mm(2500) + kUnit, kNone, kNone, kNone}), "rolls[0].repeat.along"},
    {"repeat_within_the_cloth", repeat({kNone, Length::mm(1400), kNone, kNone}, Match::centred),
     repeat({kNone, Length::mm(1400) + kUnit, kNone, kNone}, Match::centred),
     "rolls[0].repeat.across"},
    {"large_repeat_without_a_match",
     repeat({Length::mm(3000), Length::mm(2000), kNone, kNone}, Match::none),
     repeat({Length::mm(3000), Length::mm(2000), kNone, kNone}, Match::start),
     "rolls[0].repeat.along"},

    {"shrinkage_along_most", shrinkage(5000, 0), shrinkage(5001, 0),
     "rolls[0].shrinkage.along_percent"},
    {"shrinkage_across_most", shrinkage(0, 5000), shrinkage(0, 10'000),
     "rolls[0].shrinkage.across_percent"},
    {"shrinkage_least", shrinkage(0, 0), shrinkage(0, -1), "rolls[0].shrinkage.across_percent"},
};

INSTANTIATE_TEST_SUITE_P(Rows, RollLimits, testing::ValuesIn(kRollLimits),
                         [](const auto& row) { return std::string(row.param.name); });

TEST(CheckRoll, ReadsFlawsInAnyOrderWhereAsked) {
  Job job = roomy_job();
  job.rolls[0].flaws = {{mm(5, 6), kWide, ""}, {mm(1, 2), kWide, ""}};
  EXPECT_FALSE(check_unordered_job(job));
  EXPECT_EQ(where(job), "rolls[0].flaws");
}

TEST(CheckRoll, SaysWhatIsWrongInOneSentence) {
  Job job = roomy_job();
  flaw(mm(39'000, 41'000), kWide)(job);
  EXPECT_EQ(check_job(job)->sentence(),
            "rolls[0].flaws[0].to: the flaw goes to 4100 cm and the cloth ends at 4000 cm; correct "
            "the flaw or the length of the roll.");
  job = roomy_job();
  repeat({Length::mm(3000), kNone, kNone, kNone})(job);
  EXPECT_EQ(check_job(job)->sentence(),
            "rolls[0].repeat.along: a repeat of 300 cm is longer than the table of 250 cm, and "
            "panels are to match it; correct it, or let no panel match.");
  job = roomy_job();
  repeat({kNone, Length::mm(1500), kNone, kNone})(job);
  EXPECT_EQ(what(job), "a repeat of 150 cm is wider than the cloth of 140 cm, and panels are to "
                       "match it");
}

// What was measured ends the cloth where no other length is found.
TEST(CheckRoll, NamesTheMeasureWhereItEndsTheClothBeforeAFlaw) {
  Job job = roomy_job();
  set_measure(job, ByWeight{{4'900, 0}, {0, 0}, {3'500, 0}});  // 10 m
  flaw(mm(9'000, 10'100), kWide)(job);
  EXPECT_EQ(check_job(job)->sentence(),
            "rolls[0].flaws[0].to: the flaw goes to 1010 cm and the cloth ends at 1000 cm; correct the flaw or what was "
            "measured of the roll (its low end counts).");
}

TEST(CheckRoll, SaysWhichWayNoPatternRepeats) {
  Job job = roomy_job();
  repeat({kNone, Length::mm(70), Length::mm(10), kNone})(job);
  EXPECT_EQ(check_job(job)->sentence(),
            "rolls[0].repeat.start_along: no pattern repeats along there, so none begins; give repeat.along, or leave the "
            "start out.");
  repeat({Length::mm(70), kNone, kNone, Length::mm(10)})(job);
  EXPECT_EQ(check_job(job)->sentence(),
            "rolls[0].repeat.start_across: no pattern repeats across there, so none begins; give repeat.across, or leave "
            "the start out.");
}

// Squaring both ends and one allowance leave 1 cm less than 24 cm of a roll.
TEST(CheckRoll, NamesTheMeasureOfARollThatIsTooShort) {
  Job job = roomy_job();
  // 100 g at 500 g and 1.4 m are 14.3 cm.
  set_measure(job, ByWeight{{100, 0}, {0, 0}, {5'000, 0}});
  EXPECT_EQ(where(job), "rolls[0].measured");
}

}  // namespace
}  // namespace foldyard
