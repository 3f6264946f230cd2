// The values of the lay room are told apart by each member.
#include <gtest/gtest.h>

#include "core/support/told_apart.h"
#include "lay/cutter.h"

namespace foldyard {
namespace {

TEST(ValuesOfATable, AreToldApartByEachMember) {
  expect_told_apart(Cutter(), &Cutter::height, &Cutter::most_plies);
  expect_told_apart(Table(), &Table::length, &Table::depth, &Table::reach, &Table::both_sides);
}

}  // namespace
}  // namespace foldyard
