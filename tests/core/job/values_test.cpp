// The values of a job and of its plans are told apart by each member.
#include <gtest/gtest.h>

#include "core/support/told_apart.h"
#include "job/batch_money.h"
#include "job/batch_plan.h"
#include "job/batch_schedule.h"
#include "job/goods_made.h"
#include "job/hand.h"
#include "job/mark_cut.h"

namespace foldyard {
namespace {

TEST(ValuesOfAJob, AreToldApartByEachMember) {
  expect_told_apart(Losses(), &Losses::squaring, &Losses::allowance, &Losses::fold_trim, &Losses::keep_across,
                    &Losses::keep_along);
  expect_told_apart(Job(), &Job::name, &Job::unit, &Job::rolls, &Job::panels, &Job::table, &Job::cutter, &Job::losses,
                    &Job::pace, &Job::longest_fan, &Job::products, &Job::webbings, &Job::order, &Job::on_hand,
                    &Job::history, &Job::notions, &Job::sitting, &Job::cloth_price);
}

TEST(ValuesOfAJob, AreToldApartInTheirLists) {
  Job job;
  job.rolls.resize(1);
  Job other = job;
  other.rolls[0].name = "Moss";
  EXPECT_NE(job, other);
}

TEST(ValuesOfAnOrder, AreToldApartByEachMember) {
  expect_told_apart(ClothRule(), &ClothRule::of, &ClothRule::at_least, &ClothRule::at_most);
  expect_told_apart(OrderLine(), &OrderLine::product, &OrderLine::must, &OrderLine::may, &OrderLine::from,
                    &OrderLine::each_at_least, &OrderLine::rules, &OrderLine::roll);
  expect_told_apart(Order(), &Order::lines, &Order::aims, &Order::kept);
}

TEST(ValuesOfWhatIsCut, AreToldApartByEachMember) {
  expect_told_apart(CutPanels(), &CutPanels::panel, &CutPanels::cloth, &CutPanels::marks, &CutPanels::count);
  expect_told_apart(CutFromRoll(), &CutFromRoll::roll, &CutFromRoll::cut, &CutFromRoll::left);
  expect_told_apart(CutRecord(), &CutRecord::when, &CutRecord::lays, &CutRecord::panels, &CutRecord::spoilt,
                    &CutRecord::rolls);
  expect_told_apart(FoundLeft(), &FoundLeft::roll, &FoundLeft::left);
  expect_told_apart(CutReport(), &CutReport::when, &CutReport::lays, &CutReport::spoilt, &CutReport::left);
}

TEST(ValuesOfWhatIsKept, AreToldApartByEachMember) {
  expect_told_apart(KeptStep(), &KeptStep::kind, &KeptStep::direction, &KeptStep::at, &KeptStep::panel,
                    &KeptStep::turned);
  expect_told_apart(KeptLength(), &KeptLength::roll, &KeptLength::count, &KeptLength::length, &KeptLength::way,
                    &KeptLength::lines, &KeptLength::steps);
}

TEST(ValuesOfAPattern, AreToldApartByEachMember) {
  expect_told_apart(PlacedPanel(), &PlacedPanel::panel, &PlacedPanel::turned, &PlacedPanel::on_fold,
                    &PlacedPanel::flat, &PlacedPanel::folded);
  expect_told_apart(Rest(), &Rest::kind, &Rest::flat);
  expect_told_apart(Cut(), &Cut::direction, &Cut::at, &Cut::over);
  expect_told_apart(Pattern(), &Pattern::length, &Pattern::fold, &Pattern::folded_across, &Pattern::folded_along,
                    &Pattern::tree, &Pattern::cuts, &Pattern::panels, &Pattern::rests, &Pattern::worth,
                    &Pattern::travel, &Pattern::plies);
}

TEST(ValuesOfAPlan, AreToldApartByEachMember) {
  expect_told_apart(Lay(), &Lay::pattern, &Lay::lengths);
  expect_told_apart(LengthOnRoll(), &LengthOnRoll::lay, &LengthOnRoll::on_roll);
  expect_told_apart(LostPanel(), &LostPanel::length, &LostPanel::panel, &LostPanel::flaw);
  expect_told_apart(Proof(), &Proof::bound, &Proof::proved, &Proof::note);
  expect_told_apart(Unmatched(), &Unmatched::worth, &Unmatched::used);
  expect_told_apart(Plan(), &Plan::roll, &Plan::way, &Plan::aim, &Plan::patterns, &Plan::lays, &Plan::lengths,
                    &Plan::cut_out, &Plan::lost, &Plan::remnant, &Plan::remnant_kept, &Plan::yield, &Plan::worth,
                    &Plan::net, &Plan::used, &Plan::cloth, &Plan::cuts, &Plan::cross_cuts, &Plan::travel, &Plan::time,
                    &Plan::proof, &Plan::unmatched);
}

TEST(ValuesOfAYieldRange, AreToldApartByEachMember) {
  expect_told_apart(CountRange(), &CountRange::least, &CountRange::likely, &CountRange::most);
  expect_told_apart(LengthStep(), &LengthStep::from, &LengthStep::plan);
  expect_told_apart(LengthSteps(), &LengthSteps::steps, &LengthSteps::is_all);
  expect_told_apart(YieldRange(), &YieldRange::roll, &YieldRange::estimate, &YieldRange::first, &YieldRange::likely,
                    &YieldRange::steps, &YieldRange::further, &YieldRange::yield, &YieldRange::most_lost,
                    &YieldRange::proved);
}

TEST(ValuesOfABatchPlan, AreToldApartByEachMember) {
  expect_told_apart(Made(), &Made::line, &Made::cloth, &Made::pieces);
  expect_told_apart(StackedLength(), &StackedLength::roll, &StackedLength::length);
  expect_told_apart(BatchLay(), &BatchLay::lengths);
  expect_told_apart(Shortfall(), &Shortfall::line, &Shortfall::pieces, &Shortfall::cloth, &Shortfall::needed);
  expect_told_apart(BatchPlan(), &BatchPlan::rolls, &BatchPlan::made, &BatchPlan::lays, &BatchPlan::shortfalls,
                    &BatchPlan::filled, &BatchPlan::filled_bound, &BatchPlan::cost, &BatchPlan::cost_bound,
                    &BatchPlan::proved, &BatchPlan::note, &BatchPlan::time, &BatchPlan::lifts);
}

TEST(ValuesOfABatchsMoneyAndTime, AreToldApartByEachMember) {
  expect_told_apart(BatchMoney(), &BatchMoney::income, &BatchMoney::cloth, &BatchMoney::webbing, &BatchMoney::thread,
                    &BatchMoney::labels, &BatchMoney::reels, &BatchMoney::label_count, &BatchMoney::cutting,
                    &BatchMoney::sewing, &BatchMoney::is_assumed);
  expect_told_apart(SewnPieces(), &SewnPieces::line, &SewnPieces::pieces);
  expect_told_apart(Sitting(), &Sitting::sewn, &Sitting::time);
  expect_told_apart(GoodsMade(), &GoodsMade::name, &GoodsMade::goods, &GoodsMade::panels, &GoodsMade::pieces);
}

TEST(ValuesSetByHand, AreToldApartByEachMember) {
  Hand at_least;
  at_least.at_least["bag"] = 2;
  EXPECT_NE(Hand(), at_least);
  expect_told_apart(Hand(), &Hand::lines, &Hand::length);
  HandSet set;
  set.hands[{"Moss", {}}] = at_least;
  EXPECT_NE(HandSet(), set);
}

}  // namespace
}  // namespace foldyard
