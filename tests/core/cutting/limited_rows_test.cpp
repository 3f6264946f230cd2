#include "cutting/limited_rows.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <vector>

#include "core/support/dice.h"

namespace foldyard::limited {
namespace {

using Row = std::vector<std::int32_t>;

constexpr std::int32_t kLarge = 1 << 30;

Row thrown_row(test::Dice& dice, int n) {
  Row row;
  for (int i = 0; i < n; ++i)
    row.push_back(dice.from_to(0, 9) == 0 ? -kLarge : dice.from_to(-1000, kLarge - 1));
  return row;
}

// Lengths on both sides of every register's width, place by place.
template <class Check>
void for_thrown_rows(Check check) {
  test::Dice dice(test::first_seed());
  for (int n = 0; n <= 70; ++n) {
    const Row a = thrown_row(dice, n), b = thrown_row(dice, n), to = thrown_row(dice, n);
    check(n, a, b, to);
  }
}

TEST(LimitedRows, AreRaisedToSums) {
  for_thrown_rows([](int n, const Row& a, const Row& b, const Row& to) {
    Row found = to;
    raise_to_sum(found.data(), a.data(), b.data(), n);
    for (std::size_t i = 0; i < found.size(); ++i) EXPECT_EQ(found[i], std::max(to[i], a[i] + b[i]));
  });
}

TEST(LimitedRows, AreRaisedByAnExtra) {
  for_thrown_rows([](int n, const Row& a, const Row&, const Row& to) {
    Row found = to;
    raise_to(found.data(), a.data(), 7, n);
    for (std::size_t i = 0; i < found.size(); ++i) EXPECT_EQ(found[i], std::max(to[i], a[i] + 7));
  });
}

TEST(LimitedRows, GiveTheirGreatest) {
  for_thrown_rows([](int n, const Row& a, const Row& b, const Row&) {
    std::int32_t most = std::numeric_limits<std::int32_t>::min(), sum = most;
    for (std::size_t i = 0; i < a.size(); ++i) {
      most = std::max(most, a[i]);
      sum = std::max(sum, a[i] + b[i]);
    }
    EXPECT_EQ(most_of(a.data(), n), most);
    EXPECT_EQ(most_of_sum(a.data(), b.data(), n), sum);
  });
}

TEST(LimitedRows, HoldTheHeadersExample) {
  const Row a{1, 5}, b{4, 2};
  EXPECT_EQ(most_of_sum(a.data(), b.data(), 2), 7);
}

}  // namespace
}  // namespace foldyard::limited
