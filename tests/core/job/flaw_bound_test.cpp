#include "job/flaw_bound.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::mm;

// A roll usable from 0 to 10 m, 1000 wide; lengths of 960 with 40 of allowance,
// each worth 5.
class Bound : public testing::Test {
 protected:
  Bound() {
    job_.losses.allowance = Length::mm(40);
    roll_.fabric.width = Length::mm(1000);
    FlawedCandidate candidate;
    candidate.pattern.length = Length::mm(960);
    candidate.pattern.worth = Worth::whole(5);
    candidates_ = {candidate};
  }

  Worth bound(std::vector<Rect> flaws) const {
    return flaw_bound(job_, roll_, {mm(0, 10'000), Length::mm(20), std::move(flaws)}, shapes_,
                      candidates_);
  }

  Job job_ = default_job();
  Roll roll_;
  std::vector<Shape> shapes_{{Length::mm(300), Length::mm(960), 0, false, false, 5}};
  std::vector<FlawedCandidate> candidates_;
};

TEST_F(Bound, IsThatOfTheRollWhereNoFlawPartsIt) {
  EXPECT_EQ(bound({}), Worth::whole(10 * 5));
  // Beside it 300 are left, room for a panel.
  EXPECT_EQ(bound({{mm(300, 1000), mm(3000, 3500)}}), Worth::whole(10 * 5));
}

TEST_F(Bound, AddsUpTheStretchesBetweenFlawsThatPartTheRoll) {
  // 3000 + 40 hold three lengths, 6500 + 40 six.
  EXPECT_EQ(bound({{mm(0, 1000), mm(3000, 3500)}}), Worth::whole(9 * 5));
  EXPECT_EQ(bound({{mm(299, 701), mm(3000, 3500)}}), Worth::whole(9 * 5));
  // 2960 + 40 still hold three, as the last ends in the flaw; 2959 do not.
  EXPECT_EQ(bound({{mm(0, 1000), mm(2960, 3500)}}), Worth::whole(9 * 5));
  EXPECT_EQ(bound({{mm(0, 1000), mm(2959, 3500)}}), Worth::whole(8 * 5));
}

TEST_F(Bound, TakesFlawsThatOverlapAsOne) {
  EXPECT_EQ(bound({{mm(0, 1000), mm(3000, 3500)}, {mm(0, 1000), mm(3100, 3200)}}),
            Worth::whole(9 * 5));
  EXPECT_EQ(bound({{mm(0, 1000), mm(0, 10'000)}}), Worth());
}

}  // namespace
}  // namespace foldyard
