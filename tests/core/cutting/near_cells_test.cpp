#include "cutting/near_cells.h"

#include <gtest/gtest.h>

#include <set>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::mm;

// Cloth 100 × 40: panels 40 × 40 of gain 4 (limit 2) and 20 × 40 of gain 1, not
// limited. Neither lies on the fold.
struct SampleCells {
  explicit SampleCells(std::int64_t most = 2)
      : limits{most}, counting(limits),
        tables({{mm(40), mm(40), 0, false, false, 4}, {mm(20), mm(40), 1, false, false, 1}}, {}, {mm(100), mm(40), mm(5)}),
        near(tables, counting, limit_of, limits, {}) {}

  std::set<std::pair<std::int64_t, std::int64_t>> found(const TableKind& kind, int x, std::int64_t loss) {
    near.need(kind, x, 0, loss);
    EXPECT_TRUE(near.fill());
    std::set<std::pair<std::int64_t, std::int64_t>> counts;
    for (const NearCells::Entry& e : near.at(kind, x, 0)) counts.insert({counting.of(e.copies, 0), e.value});
    return counts;
  }

  std::vector<int> limit_of{0, -1};
  std::vector<std::int64_t> limits;
  limited::Counting counting;
  TableSet tables;
  NearCells near;
};

using Counts = std::set<std::pair<std::int64_t, std::int64_t>>;
constexpr TableKind kOpenTable{false, false, 1};

// The places across are 20 40 60 80 100. Two large and one small: 9; one large and
// three small: 7; five small: 5.
TEST(NearCells, FindsWhatLosesNoMoreThanAllowed) {
  EXPECT_EQ(SampleCells().found(kOpenTable, 4, 0), (Counts{{2, 9}}));
  EXPECT_EQ(SampleCells().found(kOpenTable, 4, 1), (Counts{{2, 9}}));
  EXPECT_EQ(SampleCells().found(kOpenTable, 4, 2), (Counts{{2, 9}, {1, 7}}));
  EXPECT_EQ(SampleCells().found(kOpenTable, 4, 9), (Counts{{2, 9}, {1, 7}, {0, 5}}));
}

TEST(NearCells, KeepsWithinTheLimit) { EXPECT_EQ(SampleCells(1).found(kOpenTable, 4, 9), (Counts{{1, 7}, {0, 5}})); }

// Through three plies a take is three copies, or none.
TEST(NearCells, CountsEveryPly) {
  EXPECT_EQ(SampleCells(5).found({false, false, 3}, 4, 30), (Counts{{3, 21}, {0, 15}}));
}

// Beside a fold edge 5 are cut off first, then each take is through both plies.
TEST(NearCells, CountsBothPliesBeyondAFoldEdge) {
  SampleCells sample(4);
  const int half = sample.tables.across(true).index_of(mm(45));
  ASSERT_GE(half, 0);
  EXPECT_EQ(sample.found({true, false, 1}, half, 99), (Counts{{2, 8}, {0, 4}}));
}

// Every entry's tree takes what the entry counts, and the panels lie in it.
TEST(NearCells, WritesWhatItCounts) {
  SampleCells sample;
  sample.found(kOpenTable, 4, 9);
  const auto& entries = sample.near.at(kOpenTable, 4, 0);
  for (int e = 0; e < std::ssize(entries); ++e) {
    TreeBuilder builder;
    const int root = builder.add({{Length(), mm(100)}, {Length(), mm(40)}});
    sample.near.write(builder, root, kOpenTable, 4, 0, e, false);
    std::int64_t large = 0, value = 0, cuts = 0;
    for (const CutNode& n : builder.take_tree().nodes) {
      if (n.kind == NodeKind::take) {
        large += n.panel == 0;
        value += n.panel == 0 ? 4 : 1;
        EXPECT_EQ(n.rect.across.size(), n.panel == 0 ? mm(40) : mm(20));
      }
      cuts += n.kind == NodeKind::cut;
    }
    EXPECT_EQ(large, sample.counting.of(entries[static_cast<std::size_t>(e)].copies, 0));
    EXPECT_EQ(value, entries[static_cast<std::size_t>(e)].value);
    EXPECT_EQ(cuts, entries[static_cast<std::size_t>(e)].cost >> 40);
  }
}

TEST(NearCells, SaysWhereItsStepsRanOut) {
  SampleCells sample;
  NearCells few(sample.tables, sample.counting, sample.limit_of, sample.limits, {3});
  few.need(kOpenTable, 4, 0, 9);
  EXPECT_FALSE(few.fill());
}

}  // namespace
}  // namespace foldyard
