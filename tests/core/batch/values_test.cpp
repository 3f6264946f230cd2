// The values of the batch room are told apart by each member.
#include <gtest/gtest.h>

#include "batch/cut_to_length.h"
#include "batch/order_case.h"
#include "batch/order_state.h"
#include "core/support/told_apart.h"

namespace foldyard {
namespace {

TEST(ValuesOfLengthsCut, AreToldApartByEachMember) {
  expect_told_apart(WantedLength(), &WantedLength::length, &WantedLength::count);
  expect_told_apart(LengthCuts(), &LengthCuts::end, &LengthCuts::rolls, &LengthCuts::counts);
  expect_told_apart(CutToLength(), &CutToLength::cuts, &CutToLength::rolls, &CutToLength::bound, &CutToLength::proved);
}

TEST(ValuesOfAnOrderCase, AreToldApartByEachMember) {
  expect_told_apart(ClothPrice(), &ClothPrice::parts, &ClothPrice::units);
  expect_told_apart(StateLength(), &StateLength::length, &StateLength::stretch);
  expect_told_apart(RollState(), &RollState::lengths);
}

}  // namespace
}  // namespace foldyard
