#include "job/mark_cut.h"

#include <gtest/gtest.h>

#include "cloth/roll_estimate.h"
#include "core/inspect/sound_batch.h"
#include "core/support/lengths.h"
#include "job/check_job.h"
#include "job/kept_length.h"
#include "job/limits.h"
#include "job/yield_range.h"
#include "measure/index.h"

namespace foldyard {
namespace {

// Two lengths of 900 from each of "blue" and "green", all in one lay; squaring 20,
// allowance 10, three carriers a length. Here each length is a lay of its own: blue,
// blue, green, green; and both rolls hold 5 m.
SoundBatch four_lays() {
  SoundBatch batch = sound_batch();
  batch.plan.lays = {{{{0, 0}}}, {{{0, 1}}}, {{{1, 0}}}, {{{1, 1}}}};
  for (Roll& roll : batch.job.rolls) roll.length = Length::mm(5'000);
  for (Plan& plan : batch.plan.rolls) {
    plan.remnant.to = Length::mm(4'980);
    plan.remnant_kept = true;
  }
  return batch;
}

const Job& marked(const Result<Job>& job) {
  EXPECT_TRUE(job) << job.problem().sentence();
  return *job;
}

TEST(MarkCut, ShortensTheRollsThatWereCut) {
  const SoundBatch batch = four_lays();
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0, 1}});
  const Job& job = marked(next);
  EXPECT_EQ(job.rolls[0].length, Length::mm(5'000 - 20 - 2 * 910));
  EXPECT_EQ(job.rolls[0].squared, Squared::free_end);
  EXPECT_EQ(job.rolls[1], batch.job.rolls[1]);
}

TEST(MarkCut, LetsGoOfWhatIsDone) {
  SoundBatch batch = four_lays();
  batch.job.order.kept = {kept_length(batch.job, batch.plan.rolls[0], 0, 2)};
  batch.job.rolls[0].in_batch = InBatch::must;
  batch.job.order.lines[0].roll = "blue";
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0}});
  ASSERT_EQ(marked(next).order.kept.size(), 1u);
  EXPECT_EQ(marked(next).order.kept[0].count, 1);
  EXPECT_EQ(marked(next).rolls[0].in_batch, InBatch::may);
  EXPECT_EQ(marked(next).order.lines[0].roll, "blue");
  const Result<Job> rest = mark_cut(marked(next), batch.plan, {"Tuesday", {1}, {}, {{0, Length()}}});
  EXPECT_TRUE(marked(rest).order.kept.empty());
  EXPECT_EQ(marked(rest).order.lines[0].roll, "");  // the roll has left the shelf
}

// Some metres more at the most than at the least.
void guess_length(Job& job) {
  for (Roll& each : job.rolls) each.fabric.colour = "#3a6ea5";
  Roll& roll = job.rolls[0];
  roll.measured = ByDiameters{{Length::mm(100), Length::mm(2)}, {Length::mm(50), Length::mm(1)},
                              {Length::mm(1), Length::units(32)}};
  roll.length = estimate_of(roll)->least;
  ASSERT_GT(roll.length, Length::mm(4'000));
}

TEST(MarkCut, TakesWhatIsCutOffAnEstimate) {
  SoundBatch batch = four_lays();
  guess_length(batch.job);
  const LengthEstimate before = *estimate_of(batch.job.rolls[0]);
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0, 1}});
  const Roll& roll = marked(next).rolls[0];
  const Length gone = Length::mm(20 + 2 * 910);
  EXPECT_EQ(roll.measured, batch.job.rolls[0].measured);
  EXPECT_EQ(roll.cut_since, gone);
  EXPECT_EQ(roll.length, before.least - gone);
  EXPECT_EQ(estimate_of(roll)->most, before.most - gone);
  EXPECT_FALSE(check_job(*next)) << check_job(*next)->sentence();
  const Result<Job> found = mark_cut(batch.job, batch.plan, {"Monday", {0, 1}, {}, {{0, Length::mm(3'333)}}});
  EXPECT_EQ(marked(found).rolls[0].length, Length::mm(3'333));
  EXPECT_FALSE(marked(found).rolls[0].measured);
  EXPECT_FALSE(check_job(*found)) << check_job(*found)->sentence();
}

// The low end was planned with; the roll may turn out to hold more than that.
TEST(MarkCut, TakesWhatAnEstimatedRollIsFoundToHold) {
  SoundBatch batch = four_lays();
  guess_length(batch.job);
  const LengthEstimate before = *estimate_of(batch.job.rolls[0]);
  const auto found = [&](Length left) { return mark_cut(batch.job, batch.plan, {"Monday", {0}, {}, {{0, left}}}); };
  ASSERT_GT(before.most, before.least);
  EXPECT_EQ(marked(found(before.most)).rolls[0].length, before.most);
  EXPECT_FALSE(found(before.most + Length::units(1)));
}

TEST(MarkCut, KeepsAnEstimatedRollThatMayHoldMore) {
  SoundBatch batch = four_lays();
  guess_length(batch.job);
  batch.plan.rolls[0].remnant_kept = false;  // by its low end all is cut
  const Length all = batch.job.rolls[0].length;
  batch.plan.rolls[0].lengths[1].on_roll.to = all;
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0, 1}});
  ASSERT_EQ(marked(next).rolls.size(), 2u);
  EXPECT_EQ(marked(next).rolls[0].length, kLeastLeft);
  EXPECT_FALSE(check_job(*next)) << check_job(*next)->sentence();
  // Nothing is sure to be left: nothing is planned on it until it is measured.
  EXPECT_TRUE(is_estimated(marked(next).rolls[0]));
}

// Nothing can be left by its figures: a roll of which no more is known than that it stays.
TEST(MarkCut, ForgetsTheFiguresOfARollThatIsCutToItsEnd) {
  SoundBatch batch = four_lays();
  guess_length(batch.job);
  Roll& blue = batch.job.rolls[0];
  blue.measured = ByDiameters{{Length::mm(100), {}}, {Length::mm(50), {}}, {Length::mm(1), {}}};
  blue.length = estimate_of(blue)->least;
  for (Plan& plan : batch.plan.rolls) {
    plan.remnant_kept = false;
    plan.lengths[1].on_roll.to = batch.job.rolls[ix(plan.roll)].length;
  }
  const Result<Job> next = mark_cut(batch.job, batch.plan, all_cut(batch.plan, "Monday"));
  ASSERT_EQ(marked(next).rolls.size(), 1u);
  EXPECT_EQ(marked(next).rolls[0].name, "blue");
  EXPECT_EQ(marked(next).rolls[0].length, kLeastLeft);
  EXPECT_FALSE(marked(next).rolls[0].measured);
  EXPECT_FALSE(check_job(*next)) << check_job(*next)->sentence();
}

TEST(MarkCut, SquaresTheFreeEndOnce) {
  const SoundBatch batch = four_lays();
  const Result<Job> first = mark_cut(batch.job, batch.plan, {"Monday", {0}});
  EXPECT_EQ(marked(first).rolls[0].length, Length::mm(5'000 - 20 - 910));
  const Result<Job> second = mark_cut(marked(first), batch.plan, {"Tuesday", {1}});
  EXPECT_EQ(marked(second).rolls[0].length, Length::mm(5'000 - 20 - 2 * 910));
}

TEST(MarkCut, PutsThePanelsOnHandClothByCloth) {
  const SoundBatch batch = four_lays();
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0, 2, 3}});
  EXPECT_EQ(marked(next).on_hand,
            (std::vector<CutPanels>{{0, "blue", {}, 3}, {0, "green", {"leafy"}, 6}}));
  // Squaring 20 and 910 for each length.
  EXPECT_EQ(marked(next).history,
            (std::vector<CutRecord>{{"Monday", 3, {{0, "blue", {}, 3}, {0, "green", {"leafy"}, 6}}, {},
                                     {{"blue", Length::mm(930), Length::mm(4'070)},
                                      {"green", Length::mm(1'840), Length::mm(3'160)}}}}));
  const Result<Job> more = mark_cut(marked(next), batch.plan, {"Tuesday", {1}});
  EXPECT_EQ(marked(more).on_hand[0].count, 6);
  EXPECT_EQ(marked(more).history.size(), 2u);
}

TEST(MarkCut, TakesWhatReallyHappened) {
  const SoundBatch batch = four_lays();
  CutReport report{"Monday", {0, 1}};
  report.spoilt = {{0, "blue", {}, 2}};
  report.left = {{0, Length::mm(3'000)}};
  const Result<Job> next = mark_cut(batch.job, batch.plan, report);
  EXPECT_EQ(marked(next).on_hand[0].count, 4);
  EXPECT_EQ(marked(next).rolls[0].length, Length::mm(3'000));
  const CutRecord& record = marked(next).history[0];
  EXPECT_EQ(record.panels[0].count, 4);
  EXPECT_EQ(record.spoilt, report.spoilt);
  EXPECT_EQ(record.rolls, (std::vector<CutFromRoll>{{"blue", Length::mm(1'840), Length::mm(3'000)}}));
}

TEST(MarkCut, TakesRollsOffTheShelfThatAreUsedUp) {
  SoundBatch batch = four_lays();
  batch.plan.rolls[0].remnant_kept = false;
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0, 1}});
  ASSERT_EQ(marked(next).rolls.size(), 1u);
  EXPECT_EQ(marked(next).rolls[0].name, "green");
  EXPECT_EQ(marked(next).history[0].rolls[0].left, Length());
  // Not while a length of it is still to be cut.
  EXPECT_EQ(marked(mark_cut(batch.job, batch.plan, {"Monday", {0}})).rolls.size(), 2u);
  // And not the last one.
  batch.plan.rolls[1].remnant_kept = false;
  EXPECT_EQ(marked(mark_cut(batch.job, batch.plan, all_cut(batch.plan, ""))).rolls.size(), 1u);
}

TEST(MarkCut, PutsRemnantsOfLengthsOnTheShelf) {
  SoundBatch batch = four_lays();
  batch.plan.rolls[0].patterns[0].rests = {{RestKind::remnant, {{Length::mm(700), Length::mm(1'490)},
                                                                {Length::mm(100), Length::mm(900)}}},
                                           {RestKind::offcut, {{Length(), Length::mm(10)}, {Length(), Length::mm(900)}}}};
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0, 1}});
  ASSERT_EQ(marked(next).rolls.size(), 4u);
  const Roll& rest = marked(next).rolls[2];
  EXPECT_EQ(rest.name, "blue, rest 1");
  EXPECT_EQ(marked(next).rolls[3].name, "blue, rest 2");
  EXPECT_EQ(rest.cloth, "blue");
  EXPECT_EQ(rest.fabric.width, Length::mm(790));
  EXPECT_EQ(rest.fabric.selvedge, Length());
  EXPECT_EQ(rest.length, Length::mm(800));
  EXPECT_EQ(rest.squared, Squared::both);
}

TEST(MarkCut, KeepsFlawsInTheirPlacesAndWantsLengthsInTheirOrder) {
  SoundBatch batch = four_lays();
  batch.job.rolls[0].flaws = {{{Length::mm(100), Length::mm(120)}, {Length(), Length::mm(50)}, "stain"},
                              {{Length::mm(2'000), Length::mm(2'100)}, {Length(), Length::mm(50)}, "knot"}};
  EXPECT_EQ(mark_cut(batch.job, batch.plan, {"Monday", {1}}).problem().sentence(),
            "on \"blue\" a length is marked as cut that lies behind one that is not; mark the lays of the lengths "
            "before it too, since this cloth has flaws or a repeat.");
  // The first length ends at 20 + 910.
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0}});
  ASSERT_EQ(marked(next).rolls[0].flaws.size(), 1u);
  EXPECT_EQ(marked(next).rolls[0].flaws[0].along, (Span{Length::mm(1'070), Length::mm(1'170)}));
  EXPECT_EQ(marked(next).rolls[0].length, Length::mm(5'000 - 930));
}

TEST(MarkCut, MovesTheRepeatWithTheFreeEnd) {
  SoundBatch batch = four_lays();
  batch.job.rolls[0].fabric.repeat.along = Length::mm(320);
  batch.job.rolls[0].fabric.repeat.start_along = Length::mm(30);
  // 30 − 930 is 900 before the new end: three repeats of 320 later it is at 60.
  EXPECT_EQ(marked(mark_cut(batch.job, batch.plan, {"Monday", {0}})).rolls[0].fabric.repeat.start_along, Length::mm(60));
  // With a longer repeat the start lies behind the new end, by what is left of it.
  batch.job.rolls[0].fabric.repeat.along = Length::mm(1'000);
  batch.job.rolls[0].fabric.repeat.start_along = Length::mm(950);
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0}});
  EXPECT_EQ(marked(next).rolls[0].fabric.repeat.start_along, Length::mm(20));
}

TEST(MarkCut, RefusesWhatCannotBe) {
  const SoundBatch batch = four_lays();
  const auto says = [&](const CutReport& report) {
    const Result<Job> next = mark_cut(batch.job, batch.plan, report);
    return next ? std::string() : next.problem().sentence();
  };
  EXPECT_EQ(says({"", {}}), "no lay is marked as cut; name at least one.");
  EXPECT_EQ(says({"", {4}}), "the plan has no lay 5; it has 1 to 4.");
  EXPECT_EQ(says({"", {1, 1}}), "lay 2 is marked twice; name it once.");
  EXPECT_EQ(says({"", {0}, {{0, "blue", {}, 4}}}),
            "4 panels are said to be spoilt of the 3 that were cut from blue; count them again.");
  EXPECT_EQ(says({"", {0}, {}, {{0, Length::mm(5'001)}}}),
            "\"blue\" is said to hold more than before it was cut; measure it again.");
}

TEST(MarkCut, RefusesALayBeforeTheFirstAndFewerThanNoneSpoilt) {
  const SoundBatch batch = four_lays();
  EXPECT_EQ(mark_cut(batch.job, batch.plan, {"", {-1}}).problem().sentence(), "the plan has no lay 0; it has 1 to 4.");
  const Result<Job> fewer = mark_cut(batch.job, batch.plan, {"", {0}, {{0, "blue", {}, -1}}});
  ASSERT_FALSE(fewer);
  EXPECT_EQ(fewer.problem().next, say("count them again"));
}

TEST(MarkCut, HasNothingOnHandOfWhatWasSpoiltToTheLast) {
  const SoundBatch batch = four_lays();
  const CutReport report{"Monday", {0, 2}, {{0, "blue", {}, 3}, {0, "green", {}, 0}}};
  const Result<Job> next = mark_cut(batch.job, batch.plan, report);
  EXPECT_EQ(marked(next).on_hand, (std::vector<CutPanels>{{0, "green", {"leafy"}, 3}}));
  const CutRecord& record = marked(next).history[0];
  EXPECT_EQ(record.panels, marked(next).on_hand);
  EXPECT_EQ(record.spoilt, (std::vector<CutPanels>{{0, "blue", {}, 3}}));
}

// The first panel of the second length touches a flaw.
TEST(MarkCut, CountsNoPanelThatAFlawSpoils) {
  SoundBatch batch = four_lays();
  batch.job.rolls[0].flaws = {{test::mm(2'000, 2'010), test::mm(0, 50), "knot"}};
  batch.plan.rolls[0].lost = {{1, 0, 0}};
  EXPECT_EQ(marked(mark_cut(batch.job, batch.plan, {"", {0}})).on_hand[0].count, 3);
  EXPECT_EQ(marked(mark_cut(batch.job, batch.plan, {"", {0, 1}})).on_hand[0].count, 5);
}

TEST(MarkCut, AddsOnlyToTheSamePanelOfTheSameCloth) {
  SoundBatch batch = four_lays();
  batch.job.on_hand = {{1, "blue", {}, 7}, {0, "green", {"leafy"}, 8}, {0, "blue", {}, 9}};
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"", {0}});
  EXPECT_EQ(marked(next).on_hand,
            (std::vector<CutPanels>{{1, "blue", {}, 7}, {0, "green", {"leafy"}, 8}, {0, "blue", {}, 12}}));
}

TEST(MarkCut, ForgetsTheOldestOfTooManyRecords) {
  SoundBatch batch = four_lays();
  for (std::size_t i = 0; i < limits::kMostRecords; ++i) batch.job.history.push_back({std::to_string(i), 1, {}});
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0}});
  ASSERT_EQ(marked(next).history.size(), limits::kMostRecords);
  EXPECT_EQ(marked(next).history.front().when, "1");
  EXPECT_EQ(marked(next).history.back().when, "Monday");
  EXPECT_EQ(marked(next).history.back().rolls.size(), 1u);
}

// One of two equal lengths is kept; what is kept on the other roll, or cut otherwise, stays.
TEST(MarkCut, LetsGoOnlyOfWhatIsCut) {
  SoundBatch batch = four_lays();
  KeptLength other = kept_length(batch.job, batch.plan.rolls[0], 0);
  other.steps[0].at += Length::mm(1);
  const KeptLength green = kept_length(batch.job, batch.plan.rolls[1], 0);
  batch.job.order.kept = {green, other, kept_length(batch.job, batch.plan.rolls[0], 0)};
  const Result<Job> next = mark_cut(batch.job, batch.plan, {"Monday", {0, 1}});
  EXPECT_EQ(marked(next).order.kept, (std::vector<KeptLength>{green, other}));
}

TEST(MarkCut, PutsNoRemnantOnTheShelfThatIsFlawedOrNarrowerThanTheRepeat) {
  SoundBatch batch = four_lays();
  batch.plan.rolls[0].patterns[0].rests = {{RestKind::remnant, {test::mm(700, 1'490), test::mm(100, 900)}}};
  // The length begins at 20, its pattern 5 behind that; so the rest lies from 125 on.
  batch.job.rolls[0].flaws = {{test::mm(115, 125), test::mm(700, 800), "stain"}};
  const auto shelf = [&] { return marked(mark_cut(batch.job, batch.plan, {"", {0}})).rolls.size(); };
  EXPECT_EQ(shelf(), 3u);
  batch.job.rolls[0].flaws[0].along.to = Length::mm(126);
  EXPECT_EQ(shelf(), 2u);
  batch.job.rolls[0].flaws.clear();
  batch.job.rolls[0].fabric.repeat.across = Length::mm(790);
  EXPECT_EQ(shelf(), 3u);
  batch.job.rolls[0].fabric.repeat.across = Length::mm(791);
  EXPECT_EQ(shelf(), 2u);
}

TEST(MarkCut, LeavesAJobThatStands) {
  SoundBatch batch = four_lays();
  batch.plan.rolls[0].remnant_kept = batch.plan.rolls[1].remnant_kept = false;
  for (Roll& roll : batch.job.rolls) roll.fabric.colour = "#6f7d4e";
  const Result<Job> next = mark_cut(batch.job, batch.plan, all_cut(batch.plan, "Monday"));
  const auto problem = check_job(marked(next));
  EXPECT_FALSE(problem) << problem->sentence();
}

TEST(MarkCut, RefusesMoreRollsThanAShelfHolds) {
  SoundBatch batch = four_lays();
  batch.job.losses.keep_across = batch.job.losses.keep_along = Length::mm(5);
  for (int i = 0; std::ssize(batch.job.rolls) < 200; ++i) {
    batch.job.rolls.push_back(batch.job.rolls[1]);
    batch.job.rolls.back().name = "spare " + std::to_string(i);
  }
  for (Plan& plan : batch.plan.rolls)
    for (Pattern& pattern : plan.patterns)
      pattern.rests.push_back({RestKind::remnant, {{Length(), Length::mm(300)}, {Length(), Length::mm(300)}}});
  EXPECT_EQ(mark_cut(batch.job, batch.plan, {"Monday", {0, 1}}).problem().sentence(),
            "rolls: the shelf would hold more than 200 rolls; take away remnants you do not need, then mark again.");
}

}  // namespace
}  // namespace foldyard
