#include "cutting/near_strips.h"

#include <gtest/gtest.h>

#include <map>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::kHalf;
using test::kOffCentre;
using test::kOpen;
using test::mm;

// Cloth 100 wide without selvedges, a panel 40 × 30 of gain 5 that may be cut on
// the fold, at most 3; table sums along: 30.
struct SampleStrips {
  explicit SampleStrips(const FoldWay& fold)
      : way(fold), layouts(layouts_of(fold, fabric(), {mm(5), mm(20), mm(1000)})) {}

  static Fabric fabric() {
    Fabric f;
    f.width = mm(100);
    return f;
  }
  // By copies: the value.
  std::map<std::int64_t, std::int64_t> found(std::int64_t best, std::int64_t loss) {
    near.allow(0, 1, mm(30), best, loss, 0);
    EXPECT_TRUE(near.find());
    std::map<std::int64_t, std::int64_t> by_copies;
    for (const auto& c : near.columns()) by_copies[counting.of(c.copies, 0)] = c.value;
    return by_copies;
  }

  FoldWay way;
  Layouts layouts;
  std::vector<int> limit_of{0};
  std::vector<std::int64_t> limits{3};
  limited::Counting counting{limits};
  TableSet tables{{{mm(40), mm(30), 0, false, true, 5}}, {}, {mm(100), mm(30), mm(5)}};
  NearStrips near{tables, layouts, false, counting, limit_of, limits, {}};
};

using ByCopies = std::map<std::int64_t, std::int64_t>;

TEST(NearStrips, OpenClothGivesAnyNumberThatFits) {
  EXPECT_EQ(SampleStrips(kOpen).found(10, 0), (ByCopies{{2, 10}}));
  EXPECT_EQ(SampleStrips(kOpen).found(10, 10), (ByCopies{{2, 10}, {1, 5}, {0, 0}}));
}

// Half of 100 is 50: 20 for one on the fold, or 5 of trim and 40 through both plies.
TEST(NearStrips, HalvedClothGivesOneOrTwo) {
  EXPECT_EQ(SampleStrips(kHalf).found(10, 10), (ByCopies{{2, 10}, {1, 5}, {0, 0}}));
}

TEST(NearStrips, WritesTheCutsOfAColumn) {
  SampleStrips sample(kOffCentre);
  sample.found(10, 10);
  ASSERT_FALSE(sample.near.columns().empty());
  for (const NearStrips::Column& c : sample.near.columns()) {
    std::int64_t gain = 0;
    for (const CutNode& n : sample.near.tree_of(c).nodes)
      if (n.kind == NodeKind::take) gain += n.rect.across.size() == mm(20) || n.rect.across.from >= c.left_size ? 5 : 10;
    EXPECT_EQ(gain, c.value);
  }
}

}  // namespace
}  // namespace foldyard
