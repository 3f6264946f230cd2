#include "job/kept_length.h"

#include <gtest/gtest.h>

#include "core/inspect/sound_plans.h"
#include "core/support/fold_ways.h"
#include "core/support/order_job.h"
#include "job/check_job.h"
#include "job/plan_roll.h"

namespace foldyard {
namespace {

using test::kFlaps;
using test::kHalf;
using test::kOpen;
using test::kOpenEndToEnd;

// The first length of the best plan of the order's first roll, folded this way.
struct OnFirstRoll {
  Job job = test::order_job();
  Plan plan;
  explicit OnFirstRoll(const FoldWay& way = {}) {
    const Result<Plan> found = plan_roll(job, 0, way, Aim::most_worth);
    EXPECT_TRUE(found);
    plan = *found;
  }
  const Pattern& pattern() const { return plan.patterns[static_cast<std::size_t>(plan.lays[0].pattern)]; }
};

TEST(KeptLength, ComesBackAsTheSamePattern) {
  for (const FoldWay& way : {kOpen, kHalf, kFlaps, kOpenEndToEnd}) {
    const OnFirstRoll of(way);
    const KeptLength kept = kept_length(of.job, of.plan, 0, 2);
    EXPECT_EQ(kept.roll, "moss 1");
    EXPECT_EQ(kept.count, 2);
    EXPECT_TRUE(is_cut_as(kept, of.pattern())) << way_name(way);
    const Result<Pattern> back = kept_pattern(of.job, kept);
    ASSERT_TRUE(back) << way_name(way) << ": " << back.problem().sentence();
    EXPECT_EQ(back->cuts, of.pattern().cuts) << way_name(way);
    EXPECT_EQ(back->panels, of.pattern().panels) << way_name(way);
    EXPECT_EQ(back->fold, of.pattern().fold) << way_name(way);
    EXPECT_TRUE(is_cut_as(kept, *back)) << way_name(way);
  }
}

TEST(KeptLength, TellsAnotherLengthFromIt) {
  const OnFirstRoll of;
  KeptLength kept = kept_length(of.job, of.plan, 0);
  kept.steps.back().kind = NodeKind::take;
  kept.steps.back().panel = 0;
  EXPECT_FALSE(is_cut_as(kept, of.pattern()));
}

struct KeptFault {
  const char* name;
  void (*damage)(Job&, KeptLength&);
  const char* why;
};

const KeptFault kKeptFaults[] = {
    {"a panel grew", [](Job& j, KeptLength&) { for (Panel& p : j.panels) p.along += Length::mm(1); }, "a panel has another size now"},
    {"a shorter roll", [](Job& j, KeptLength&) { j.rolls[0].length = Length::mm(700); }, "the roll is too short for it"},
    {"a cut outside", [](Job&, KeptLength& k) { k.steps[0].at = Length::mm(9'000); }, "a cut lies outside its cloth"},
    {"a cut at the edge", [](Job&, KeptLength& k) { k.steps[0].at = Length(); }, "a cut lies outside its cloth"},
    {"a cut outside what the first one leaves",
     [](Job&, KeptLength& k) { k.steps = {k.steps[0], k.steps[0], {}, {}, {}}; }, "a cut lies outside its cloth"},
    {"steps that end too soon", [](Job&, KeptLength& k) { k.steps.pop_back(); }, "a cut lies outside its cloth"},
    {"steps beyond the last", [](Job&, KeptLength& k) { k.steps.push_back({}); }, "a cut lies outside its cloth"},
    {"another panel", [](Job& j, KeptLength& k) { for (KeptStep& s : k.steps) if (s.kind == NodeKind::take) s.panel = 2;
                                                  j.panels[2].along += Length::mm(1); },
     "a panel has another size now"},
    {"ends that do not meet", [](Job&, KeptLength& k) { k.way.end_to_end = true; k.length += Length::units(1); },
     "its ends cannot meet"},
    {"no such fold", [](Job&, KeptLength& k) { k.way = kHalf; },
     "1 fold line is needed, and 0 given"},
    {"a short table", [](Job& j, KeptLength&) { j.table.length = Length::mm(100); }, "table"},
};

TEST(KeptLength, RefusesWhatCanNoLongerBeCutSo) {
  for (const KeptFault& row : kKeptFaults) {
    OnFirstRoll of;
    KeptLength kept = kept_length(of.job, of.plan, 0);
    row.damage(of.job, kept);
    const Result<Pattern> pattern = kept_pattern(of.job, kept);
    ASSERT_FALSE(pattern) << row.name;
    EXPECT_NE(pattern.problem().sentence().find(row.why), std::string::npos) << row.name << ": " << pattern.problem().sentence();
  }
}

TEST(KeptLength, IsCutAsAPatternOnlyWhereAllIsEqual) {
  const OnFirstRoll of(kHalf);
  const KeptLength kept = kept_length(of.job, of.plan, 0);
  const std::vector<void (*)(KeptLength&)> changes{
      [](KeptLength& k) { k.length += Length::units(1); }, [](KeptLength& k) { k.way.end_to_end = true; },
      [](KeptLength& k) { k.lines[0] += Length::units(1); }, [](KeptLength& k) { k.steps[0].at += Length::units(1); }};
  for (std::size_t i = 0; i < changes.size(); ++i) {
    KeptLength other = kept;
    changes[i](other);
    EXPECT_FALSE(is_cut_as(other, of.pattern())) << i;
  }
  KeptLength elsewhere = kept;
  elsewhere.roll = "moss 2";
  elsewhere.count = 7;
  EXPECT_TRUE(is_cut_as(elsewhere, of.pattern()));
}

TEST(KeptLength, IsRenamedAndForgottenWithItsRoll) {
  OnFirstRoll of;
  of.job.order.kept = {kept_length(of.job, of.plan, 0)};
  of.job.order.kept.push_back(of.job.order.kept[0]);
  of.job.order.kept[1].roll = "moss 2";
  of.job.order.lines[0].roll = "moss 1";
  EXPECT_EQ(roll_named(of.job, "moss 1"), 0);
  EXPECT_EQ(roll_named(of.job, "moss"), -1);
  of.job.rolls[0].name = "moss A";
  rename_in_order(of.job, "moss 1", "moss A");
  EXPECT_EQ(check_job(of.job), std::nullopt);
  EXPECT_EQ(of.job.order.kept[0].roll, "moss A");
  EXPECT_EQ(of.job.order.kept[1].roll, "moss 2");
  forget_in_order(of.job, "moss A");
  ASSERT_EQ(of.job.order.kept.size(), 1u);
  EXPECT_EQ(of.job.order.kept[0].roll, "moss 2");
  EXPECT_EQ(of.job.order.lines[0].roll, "");
}

}  // namespace
}  // namespace foldyard
