#include "job/sum_up.h"

#include <gtest/gtest.h>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::mm;

// Two lays, one of two lengths of 900 with two seats each, one of a single
// length of 300 with a pouch.
class TwoLays : public testing::Test {
 protected:
  TwoLays() {
    job_ = default_job();
    job_.rolls = {{"cloth", {mm(1500), Length(), mm(1), Nap::none, ""}, mm(3000)}};
    job_.panels = {{"seat", mm(450), mm(900), false, true, Worth::whole(3)},
                   {"pouch", mm(200), mm(300), false, true, Worth::whole(1)}};
    job_.losses = {mm(100), mm(40), mm(5), mm(300), mm(300)};
    job_.pace = {};
    plan_.patterns = {pattern(900, {0, 0}, 3, 2700), pattern(300, {1}, 1, 300)};
    plan_.lays = {{0, 2}, {1, 1}};
  }

  Pattern pattern(int length, const std::vector<int>& panels, int cuts, int travel) const {
    Pattern pattern;
    pattern.length = mm(length);
    for (const int p : panels) {
      const Panel& goods = job_.panels[static_cast<std::size_t>(p)];
      const Rect flat{{Length(), goods.across}, {Length(), goods.along}};
      pattern.panels.push_back({p, false, false, flat, {}});
      pattern.worth += goods.worth;
    }
    pattern.cuts.resize(static_cast<std::size_t>(cuts));
    pattern.travel = mm(travel);
    return pattern;
  }

  Job job_;
  Plan plan_;
};

TEST_F(TwoLays, LieOneAfterAnotherFromTheSquaredEnd) {
  lay_along(job_, plan_);
  // 100 squared, then 940, 940 and 340; 100 squared at the far end.
  ASSERT_EQ(plan_.lengths.size(), 3u);
  EXPECT_EQ(plan_.lengths[0], (LengthOnRoll{0, {mm(100), mm(1040)}}));
  EXPECT_EQ(plan_.lengths[1], (LengthOnRoll{0, {mm(1040), mm(1980)}}));
  EXPECT_EQ(plan_.lengths[2], (LengthOnRoll{1, {mm(1980), mm(2320)}}));
  EXPECT_EQ(plan_.remnant, (Span{mm(2320), mm(2900)}));
  EXPECT_TRUE(plan_.remnant_kept);  // 580 is more than 300
}

TEST_F(TwoLays, KeepNoRemnantThatIsTooSmall) {
  job_.losses.keep_along = mm(581);
  lay_along(job_, plan_);
  EXPECT_FALSE(plan_.remnant_kept);
  plan_.lengths.clear();
  job_.losses.keep_along = mm(580);
  job_.losses.keep_across = mm(1501);
  lay_along(job_, plan_);
  EXPECT_FALSE(plan_.remnant_kept);
}

TEST_F(TwoLays, AddUpPanelsByLengthsAndCutsByLays) {
  lay_along(job_, plan_);
  sum_up(job_, plan_);
  EXPECT_EQ(plan_.yield, (std::vector<std::int64_t>{4, 1}));
  EXPECT_EQ(plan_.worth, Worth::whole(4 * 3 + 1));
  EXPECT_EQ(plan_.used, mm(450) * mm(900) * 4 + mm(200) * mm(300));
  EXPECT_EQ(plan_.cloth, mm(1500) * mm(3000));
  EXPECT_EQ(plan_.cuts, 3 + 1);
  EXPECT_EQ(plan_.cross_cuts, 3);
  EXPECT_EQ(plan_.travel, mm(2700 + 300));
}

// One seat of the second length is lost: it counts in the time alone.
TEST_F(TwoLays, CountLostPanelsInTheTimeAndInNothingElse) {
  job_.pace.handle = Duration::seconds(1);
  plan_.patterns[0].panels[1].flat = {{mm(500), mm(950)}, {mm(0), mm(900)}};
  lay_along(job_, plan_);
  job_.rolls[0].flaws = {{{mm(1100), mm(1110)}, {mm(600), mm(610)}, "stain"}};
  sum_up(job_, plan_);
  EXPECT_EQ(plan_.lost, (std::vector<LostPanel>{{1, 1, 0}}));
  EXPECT_EQ(plan_.yield, (std::vector<std::int64_t>{3, 1}));
  EXPECT_EQ(plan_.worth, Worth::whole(3 * 3 + 1));
  EXPECT_EQ(plan_.used, mm(450) * mm(900) * 3 + mm(200) * mm(300));
  EXPECT_EQ(plan_.time, Duration::seconds(5));
}

TEST_F(TwoLays, TakeTheTimeOfEveryStep) {
  const auto s = [](std::int64_t n) { return Duration::seconds(n); };
  // Each step a power of ten of seconds, so each count is a digit.
  job_.pace = {s(1), s(10), s(100), s(1000), s(10000), 0, s(100000), 0, Worth::whole(36)};
  plan_.way = kHalf;
  for (Pattern& each : plan_.patterns) each.fold.way = plan_.way;
  lay_along(job_, plan_);
  sum_up(job_, plan_);
  // 1 unrolled, 3 cross-cut, 3 folded, 2 lifts, 4 cuts, 5 panels.
  EXPECT_EQ(plan_.time, s(542'331));
  // 36 an hour is a hundredth a second.
  EXPECT_EQ(plan_.net, Worth::whole(13) - Worth::parts(54'233'100));
}

}  // namespace
}  // namespace foldyard
