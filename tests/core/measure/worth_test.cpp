#include "measure/worth.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace foldyard {
namespace {

static_assert(!std::is_convertible_v<int, Worth>);
static_assert(!std::is_convertible_v<Worth, double>);

TEST(Worth, CountsTenThousandthsOfAWhole) {
  EXPECT_EQ(Worth::whole(3), Worth::parts(30000));
  EXPECT_DOUBLE_EQ(Worth::parts(12345).in_whole(), 1.2345);
}

TEST(Worth, AddsTakesAwayAndMultipliesExactly) {
  Worth sum = Worth::parts(1);
  sum += Worth::whole(2);
  EXPECT_EQ(sum, Worth::parts(20001));
  EXPECT_EQ(Worth::whole(1) - Worth::parts(20000), Worth::whole(-1));
  EXPECT_EQ(Worth::parts(2500) * 4, Worth::whole(1));
  EXPECT_LT(Worth::parts(9999), Worth::whole(1));
}

}  // namespace
}  // namespace foldyard
