// The values of the costing room are told apart by each member.
#include "costing/pace.h"

#include <gtest/gtest.h>

#include "core/support/told_apart.h"

namespace foldyard {
namespace {

TEST(ValuesOfAPace, AreToldApartByEachMember) {
  expect_told_apart(Pace(), &Pace::unroll, &Pace::cross_cut, &Pace::fold, &Pace::lift, &Pace::mark,
                    &Pace::ms_per_metre, &Pace::handle, &Pace::allowance_percent, &Pace::rate);
}

}  // namespace
}  // namespace foldyard
