#include "job/check_job.h"

#include <gtest/gtest.h>

#include <functional>

#include "core/support/lengths.h"
#include "core/support/roomy_job.h"
#include "job/limits.h"

namespace foldyard {
namespace {

using test::BothSides;
using test::kUnit;
using test::roomy_job;
using test::umlauts;
using test::where;

TEST(CheckJob, LetsASoundJobPass) { EXPECT_EQ(where(roomy_job()), ""); }

class Limits : public testing::TestWithParam<BothSides> {};

TEST_P(Limits, HoldOnBothSides) {
  Job good = roomy_job();
  GetParam().good(good);
  EXPECT_EQ(where(good), "");
  Job bad = roomy_job();
  GetParam().bad(bad);
  EXPECT_EQ(where(bad), GetParam().where);
}

template <class Access>
BothSides least(const char* name, Access access, Length limit, const char* field) {
  return {name, [=](Job& job) { access(job) = limit; },
          [=](Job& job) { access(job) = limit - kUnit; }, field};
}
template <class Access>
BothSides most(const char* name, Access access, Length limit, const char* field) {
  return {name, [=](Job& job) { access(job) = limit; },
          [=](Job& job) { access(job) = limit + kUnit; }, field};
}
template <class Access, class Value>
BothSides pair(const char* name, Access access, Value good, Value bad, const char* field) {
  return {name, [=](Job& job) { access(job) = good; }, [=](Job& job) { access(job) = bad; },
          field};
}

Length& width(Job& job) { return job.rolls[0].fabric.width; }
Length& selvedge(Job& job) { return job.rolls[0].fabric.selvedge; }
Length& thickness(Job& job) { return job.rolls[0].fabric.thickness; }
Length& roll_length(Job& job) { return job.rolls[0].length; }
std::string& roll_name(Job& job) { return job.rolls[0].name; }
std::string& colour(Job& job) { return job.rolls[0].fabric.colour; }
Length& across(Job& job) { return job.panels[0].across; }
Length& along(Job& job) { return job.panels[0].along; }
Worth& worth(Job& job) { return job.panels[0].worth; }
Length& table_length(Job& job) { return job.table.length; }
Length& table_depth(Job& job) { return job.table.depth; }
Length& reach(Job& job) { return job.table.reach; }
Length& height(Job& job) { return job.cutter.height; }
int& most_plies(Job& job) { return job.cutter.most_plies; }
Length& squaring(Job& job) { return job.losses.squaring; }
Length& allowance(Job& job) { return job.losses.allowance; }
Length& fold_trim(Job& job) { return job.losses.fold_trim; }
Length& keep_across(Job& job) { return job.losses.keep_across; }
Length& keep_along(Job& job) { return job.losses.keep_along; }
Duration& unroll(Job& job) { return job.pace.unroll; }
std::int64_t& ms_per_metre(Job& job) { return job.pace.ms_per_metre; }
int& percent(Job& job) { return job.pace.allowance_percent; }
Worth& rate(Job& job) { return job.pace.rate; }
int& fan(Job& job) { return job.longest_fan; }
std::string& job_name(Job& job) { return job.name; }

// Of 80 characters, each of two bytes.

void set_rolls(Job& job, std::size_t count) {
  job.rolls.assign(count, job.rolls[0]);
  for (std::size_t i = 0; i < count; ++i) job.rolls[i].name = std::to_string(i);
}
void set_panels(Job& job, std::size_t count) {
  job.panels.assign(count, job.panels[0]);
  for (std::size_t i = 0; i < count; ++i) job.panels[i].name = std::to_string(i);
}

const BothSides kJobLimits[] = {
    // The panel of 5 cm needs 8 cm of width with its two selvedges of 1.5 cm.
    pair("selvedge_takes_all", selvedge, Length::mm(675), Length::mm(700), "rolls[0].selvedge"),
    pair("width_least", width, Length::mm(80), Length::units(3199), "rolls[0].width"),
    most("width_most", width, Length::mm(10'000), "rolls[0].width"),
    least("selvedge_least", selvedge, Length::mm(0), "rolls[0].selvedge"),
    least("thickness_least", thickness, Length::units(16), "rolls[0].thickness"),
    most("thickness_under_the_cutter", thickness, Length::mm(25), "rolls[0].thickness"),
    most("roll_length_most", roll_length, Length::mm(1'000'000), "rolls[0].length"),
    // Squaring 2 × 10 cm and an allowance of 4 cm leave 5 cm of 29 cm.
    pair("roll_length_least", roll_length, Length::mm(290), Length::mm(240), "rolls[0].length"),
    pair("roll_length_zero", roll_length, Length::mm(290), Length::mm(0), "rolls[0].length"),
    pair("roll_name", roll_name, umlauts(80), umlauts(81), "rolls[0].name"),
    pair("roll_name_empty", roll_name, std::string("O"), std::string(), "rolls[0].name"),
    pair("colour", colour, std::string("#00fFaA"), std::string("#00fFa"), "rolls[0].colour"),
    pair("colour_sign", colour, std::string("#00ffaa"), std::string("000ffaa"), "rolls[0].colour"),
    pair("colour_letters", colour, std::string("#00ffaa"), std::string("#00ffag"),
         "rolls[0].colour"),
    pair("job_name", job_name, umlauts(80), umlauts(81), "name"),
    least("across_least", across, Length::mm(5), "panels[0].across"),
    // 140 cm less two selvedges of 1.5 cm.
    most("across_fits", across, Length::mm(1370), "panels[0]"),
    pair("across_most", across, Length::mm(1370), Length::mm(10'000) + kUnit,
         "panels[0].across"),
    least("along_least", along, Length::mm(5), "panels[0].along"),
    // 40 m less 2 × 10 cm and 4 cm.
    most("along_fits", along, Length::mm(39'760), "panels[0]"),
    pair("worth_least", worth, Worth::parts(1), Worth::parts(0), "panels[0].worth"),
    pair("worth_most", worth, Worth::whole(100'000), Worth::parts(1'000'000'001),
         "panels[0].worth"),
    least("table_length_least", table_length, Length::mm(100), "table.length"),
    most("table_length_most", table_length, Length::mm(1'000'000), "table.length"),
    least("table_depth_least", table_depth, Length::mm(100), "table.depth"),
    most("table_depth_most", table_depth, Length::mm(10'000), "table.depth"),
    least("reach_least", reach, Length::mm(100), "table.reach"),
    most("reach_most", reach, Length::mm(10'000), "table.reach"),
    least("height_least", height, Length::mm(1), "cutter.height"),
    most("height_most", height, Length::mm(500), "cutter.height"),
    pair("plies_least", most_plies, 1, 0, "cutter.most_plies"),
    pair("plies_negative", most_plies, 1, -1, "cutter.most_plies"),
    pair("plies_most", most_plies, 200, 201, "cutter.most_plies"),
    least("squaring_least", squaring, Length::mm(0), "losses.squaring"),
    most("squaring_most", squaring, Length::mm(10'000), "losses.squaring"),
    least("allowance_least", allowance, Length::mm(0), "losses.allowance"),
    most("allowance_most", allowance, Length::mm(1000), "losses.allowance"),
    least("fold_trim_least", fold_trim, Length::units(32), "losses.fold_trim"),
    most("fold_trim_most", fold_trim, Length::mm(100), "losses.fold_trim"),
    least("keep_across_least", keep_across, Length::mm(5), "losses.keep_across"),
    most("keep_across_most", keep_across, kLongest, "losses.keep_across"),
    least("keep_along_least", keep_along, Length::mm(5), "losses.keep_along"),
    most("keep_along_most", keep_along, kLongest, "losses.keep_along"),
    pair("step_most", unroll, Duration::seconds(900), Duration::ms(900'001), "pace.unroll"),
    pair("step_least", unroll, Duration::ms(0), Duration::ms(-1), "pace.unroll"),
    pair("pace_most", ms_per_metre, std::int64_t{600'000}, std::int64_t{600'001},
         "pace.seconds_per_metre"),
    pair("percent_most", percent, 100, 101, "pace.allowance_percent"),
    pair("rate_most", rate, Worth::whole(10'000), Worth::parts(100'000'001), "pace.rate"),
    pair("fan_least", fan, 3, 2, "longest_fan"),
    pair("fan_most", fan, 12, 13, "longest_fan"),
    {"rolls_least", [](Job&) {}, [](Job& job) { job.rolls.clear(); }, "rolls"},
    {"rolls_most", [](Job& job) { set_rolls(job, 200); }, [](Job& job) { set_rolls(job, 201); },
     "rolls"},
    {"panels_least", [](Job&) {}, [](Job& job) { job.panels.clear(); }, "panels"},
    {"panels_most", [](Job& job) { set_panels(job, 50); }, [](Job& job) { set_panels(job, 51); },
     "panels"},
    {"names_twice", [](Job& job) { set_rolls(job, 3); },
     [](Job& job) { set_rolls(job, 3), job.rolls[2].name = "0"; }, "rolls[2].name"},
};

INSTANTIATE_TEST_SUITE_P(Rows, Limits, testing::ValuesIn(kJobLimits),
                         [](const auto& row) { return std::string(row.param.name); });

// 1 m × 100 m = 100 m² hold 1 000 000 panels of 1 cm × 1 cm.
TEST(CheckJob, HoldsTheNumberOfPanelsOnARoll) {
  Job job = roomy_job();
  job.rolls[0].fabric.width = Length::mm(1000);
  job.rolls[0].length = Length::mm(100'000);
  job.panels[0].across = Length::mm(10);
  job.panels[0].along = Length::mm(10);
  EXPECT_EQ(where(job), "");
  job.rolls[0].length = Length::mm(101'000);
  EXPECT_EQ(where(job), "rolls[0].length");
}

TEST(CheckJob, LetsAPanelTurnOnlyOnClothWithoutNap) {
  Job job = roomy_job();
  job.panels[0].across = Length::mm(1500);
  EXPECT_EQ(where(job), "panels[0]");
  job.panels[0].may_turn = true;
  EXPECT_EQ(where(job), "");
  job.rolls[0].fabric.nap = Nap::one_way;
  EXPECT_EQ(where(job), "panels[0]");
}

TEST(CheckJob, AsksForOneRollThatHoldsAPanelOnly) {
  Job job = roomy_job();
  job.rolls.push_back(job.rolls[0]);
  job.rolls[1].name = "Narrow";
  job.rolls[1].fabric.width = Length::mm(60);
  EXPECT_EQ(where(job), "");
}

TEST(CheckJob, SaysAWholeSentence) {
  Job job = roomy_job();
  job.rolls[0].fabric.width = Length();
  EXPECT_EQ(check_job(job)->sentence(), "rolls[0].width: 0 cm is too small; give 1 cm to 10 m.");
}

TEST(CheckJob, NamesTheSizeThatShrinkageKeepsFromFitting) {
  Job job = roomy_job();
  job.rolls[0].fabric.shrinkage.across = 1'000;  // 10 %
  job.panels[0].across = Length::mm(1'350);
  EXPECT_NE(check_job(job)->sentence().find("cut 150 cm × 5 cm on roll \"Oak\" for its shrinkage"), std::string::npos)
      << check_job(job)->sentence();
}

// Turned it would lie on the cloth; of 135 cm across it then needs 150 cm.
TEST(CheckJob, NamesTheShrunkSizeTheWayRoundThatThePanelIsGiven) {
  Job job = roomy_job();
  job.rolls[0].fabric.shrinkage.across = 1'000;  // 10 %
  job.panels[0].across = Length::mm(2'000);
  job.panels[0].along = Length::mm(1'350);
  job.panels[0].may_turn = true;
  EXPECT_EQ(check_job(job)->what,
            "200 cm × 135 cm, cut 200 cm × 150 cm on roll \"Oak\" for its shrinkage, fits the usable cloth of no roll in "
            "any way it may lie");
}

}  // namespace
}  // namespace foldyard
