#include "cloth/flaw_order.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

Flaw flaw(int from, int to, int left, int right, const char* kind = "") {
  return {{Length::mm(from), Length::mm(to)}, {Length::mm(left), Length::mm(right)}, kind};
}

TEST(FlawOrder, IsByWhereTheyBeginThenEndThenAcrossThenKind) {
  const std::vector<Flaw> ordered = {flaw(10, 20, 300, 400), flaw(10, 30, 0, 50),
                                     flaw(10, 30, 20, 40),   flaw(10, 30, 20, 50, "hole"),
                                     flaw(10, 30, 20, 50, "stain"), flaw(15, 16, 0, 1)};
  EXPECT_TRUE(are_in_order(ordered));
  std::vector<Flaw> mixed(ordered.rbegin(), ordered.rend());
  EXPECT_FALSE(are_in_order(mixed));
  put_in_order(mixed);
  EXPECT_EQ(mixed, ordered);
}

TEST(FlawOrder, TakesEqualFlaws) { EXPECT_TRUE(are_in_order({flaw(1, 2, 3, 4), flaw(1, 2, 3, 4)})); }

}  // namespace
}  // namespace foldyard
