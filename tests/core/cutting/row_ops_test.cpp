#include "cutting/row_ops.h"

#include <gtest/gtest.h>

#include "core/support/dice.h"

namespace foldyard::rows {
namespace {

using Row = std::vector<std::int64_t>;

Row throw_row(test::Dice& dice, int n) {
  Row row;
  for (int i = 0; i < n; ++i) row.push_back((std::int64_t{dice.from_to(-999, 999)} << 32) + dice.from_to(0, 9));
  return row;
}

// Of every length, so that whole registers and what is left over are met.
template <class Compare>
void for_each_length(Compare compare) {
  test::Dice dice(test::first_seed());
  for (int n = 0; n <= 40; ++n) compare(dice, n);
}

TEST(RowOps, RaiseToAnotherRowWithANumberOnTop) {
  for_each_length([](test::Dice& dice, int n) {
    const Row a = throw_row(dice, n), before = throw_row(dice, n);
    Row to = before;
    raise_to(to.data(), a.data(), 77, n);
    for (int i = 0; i < n; ++i) EXPECT_EQ(to[i], std::max(before[i], a[i] + 77)) << n;
  });
}

TEST(RowOps, RaiseToTheSumOfThreeRows) {
  for_each_length([](test::Dice& dice, int n) {
    const Row a = throw_row(dice, n), b = throw_row(dice, n), c = throw_row(dice, n);
    const Row before = throw_row(dice, n);
    Row to = before;
    raise_to_sum(to.data(), a.data(), b.data(), c.data(), n);
    for (int i = 0; i < n; ++i) EXPECT_EQ(to[i], std::max(before[i], a[i] + b[i] + c[i])) << n;
  });
}

// Any number of sums, in 64 and in 128 bits alike.
TEST(RowOps, RaiseToTheBestOfManySums) {
  for_each_length([](test::Dice& dice, int n) {
    const int count = dice.from_to(0, 11);
    std::vector<Row> rows;
    std::vector<std::vector<Wide>> wide_rows;
    for (int i = 0; i < 2 * count + 1; ++i) {
      rows.push_back(throw_row(dice, n));
      wide_rows.emplace_back(rows.back().begin(), rows.back().end());
    }
    std::vector<Sum<std::int64_t>> sums;
    std::vector<Sum<Wide>> wide_sums;
    for (int s = 0; s < count; ++s) {
      const int more = dice.from_to(-50, 50);
      sums.push_back({rows[2 * s].data(), rows[2 * s + 1].data(), more});
      wide_sums.push_back({wide_rows[2 * s].data(), wide_rows[2 * s + 1].data(), more});
    }
    Row to = rows.back(), expected = rows.back();
    std::vector<Wide> wide_to = wide_rows.back();
    raise_to_sums(to.data(), sums.data(), count, n);
    raise_to_sums(wide_to.data(), wide_sums.data(), count, n);
    for (int i = 0; i < n; ++i) {
      for (const auto& s : sums) expected[i] = std::max(expected[i], s.a[i] + s.b[i] + s.more);
      EXPECT_EQ(to[i], expected[i]) << n << " with " << count;
      EXPECT_TRUE(wide_to[i] == expected[i]) << n << " with " << count;
    }
  });
}

}  // namespace
}  // namespace foldyard::rows
