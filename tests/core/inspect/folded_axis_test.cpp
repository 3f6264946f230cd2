#include "inspect/folded_axis.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

#include "core/support/lengths.h"

namespace foldyard::inspection {
namespace {

using test::u;

TEST(FoldedAxis, FoldsSelvedgeToSelvedge) {
  const FoldedAxis axis = fold_axis(u(1500), {u(750)}, {1, 0});
  EXPECT_EQ(axis.size, u(750));
  EXPECT_EQ(axis.legs[0].folded, (Span{u(0), u(750)}));
  EXPECT_TRUE(axis.legs[0].reversed);
  EXPECT_FALSE(axis.legs[1].reversed);
  EXPECT_EQ(axis.creases[0].at, u(0));
  EXPECT_TRUE(axis.creases[0].cloth_after);
  // 225 to each side of the fold line lies on the same 225.
  const std::vector<Span> pieces = fold_span(axis, {u(525), u(975)});
  EXPECT_EQ(pieces, (std::vector<Span>{{u(0), u(225)}, {u(0), u(225)}}));
}

TEST(FoldedAxis, LeavesOpenClothAsItIs) {
  const FoldedAxis axis = fold_axis(u(900), {}, {0});
  EXPECT_EQ(axis.size, u(900));
  EXPECT_EQ(fold_place(axis, u(900)), u(900));
  EXPECT_EQ(most_plies(axis), 1);
  EXPECT_TRUE(fold_span(axis, {u(5), u(5)}).empty());
  EXPECT_TRUE(fold_span(axis, {u(901), u(905)}).empty());
}

TEST(FoldedAxis, KnowsCreasesWithinAndOnTheRim) {
  const FoldedAxis axis = fold_axis(u(30), {u(10), u(20)}, {0, 1, 2});
  EXPECT_TRUE(is_creased(axis, {u(5), u(11)}));
  EXPECT_FALSE(is_creased(axis, {u(10), u(20)}));
  EXPECT_TRUE(ends_on_crease(axis, {u(10), u(15)}));
  EXPECT_TRUE(ends_on_crease(axis, {u(15), u(20)}));
  EXPECT_FALSE(ends_on_crease(axis, {u(11), u(19)}));
}

// A cloth of whole units as a chain of points, walked from the table leg to
// both ends: at each fold line the walk turns about.
std::vector<std::int64_t> walked(std::int64_t whole, const std::set<std::int64_t>& lines,
                                 std::int64_t start) {
  std::vector<std::int64_t> place(static_cast<std::size_t>(whole) + 1);
  for (const int way : {1, -1}) {
    std::int64_t step = way;
    place[static_cast<std::size_t>(start)] = start;
    for (std::int64_t x = start; x != (way > 0 ? whole : 0); x += way) {
      if (x != start && lines.count(x) > 0) step = -step;
      place[static_cast<std::size_t>(x + way)] = place[static_cast<std::size_t>(x)] + step;
    }
  }
  const std::int64_t lowest = *std::min_element(place.begin(), place.end());
  for (std::int64_t& p : place) p -= lowest;
  return place;
}

struct Random {
  std::mt19937 engine;
  std::int64_t below(std::int64_t n) {
    return static_cast<std::int64_t>(engine() % static_cast<std::uint64_t>(n));
  }
};

struct Chain {
  FoldedAxis axis;
  std::vector<std::int64_t> place;
  std::set<std::int64_t> lines;
};

// Points lie on even units, so that the table leg has a point within.
Chain random_chain(Random& random) {
  const std::int64_t whole = 2 * (3 + random.below(40));
  Chain chain;
  for (std::int64_t i = random.below(6); i > 0; --i) {
    chain.lines.insert(2 * (1 + random.below(whole / 2 - 1)));
  }
  std::vector<Length> lines;
  std::vector<int> levels{0};
  for (const std::int64_t line : chain.lines) {
    lines.push_back(u(line));
    levels.push_back(static_cast<int>(levels.size()));
  }
  std::shuffle(levels.begin(), levels.end(), random.engine);
  const auto table =
      static_cast<std::size_t>(std::find(levels.begin(), levels.end(), 0) - levels.begin());
  chain.axis = fold_axis(u(whole), lines, levels);
  chain.place = walked(whole, chain.lines, (table == 0 ? 0 : lines[table - 1].units()) + 1);
  return chain;
}

int most_over_one_place(const std::vector<std::int64_t>& place) {
  std::vector<int> plies(place.size(), 0);
  int most = 0;
  for (std::size_t x = 1; x < place.size(); ++x) {
    most = std::max(most, ++plies[static_cast<std::size_t>(std::min(place[x - 1], place[x]))]);
  }
  return most;
}

// Each unit cell of the span, folded by the walk, lies in a piece, and the
// pieces hold no more cells than the span.
void expect_same_span(const Chain& chain, std::int64_t from, std::int64_t to) {
  Length held;
  std::vector<Span> pieces = fold_span(chain.axis, {u(from), u(to)});
  for (const Span& piece : pieces) held += piece.size();
  EXPECT_EQ(held, u(to - from));
  for (std::int64_t x = from; x < to; ++x) {
    const std::int64_t a = chain.place[static_cast<std::size_t>(x)];
    const std::int64_t b = chain.place[static_cast<std::size_t>(x) + 1];
    const Span cell{u(std::min(a, b)), u(std::max(a, b))};
    EXPECT_TRUE(std::any_of(pieces.begin(), pieces.end(),
                            [&](const Span& piece) { return piece.covers(cell); }));
  }
}

TEST(FoldedAxis, AgreesWithAClothWalkedPointByPoint) {
  const unsigned seed = std::random_device{}();
  SCOPED_TRACE("seed " + std::to_string(seed));
  Random random{std::mt19937(seed)};
  for (int round = 0; round < 400; ++round) {
    const Chain chain = random_chain(random);
    const auto whole = static_cast<std::int64_t>(chain.place.size()) - 1;
    for (std::int64_t x = 0; x <= whole; ++x) {
      EXPECT_EQ(fold_place(chain.axis, u(x)), u(chain.place[static_cast<std::size_t>(x)]));
    }
    EXPECT_EQ(chain.axis.size, u(*std::max_element(chain.place.begin(), chain.place.end())));
    EXPECT_EQ(most_plies(chain.axis), most_over_one_place(chain.place));
    const std::int64_t from = random.below(whole);
    expect_same_span(chain, from, from + 1 + random.below(whole - from));
  }
}

TEST(FoldedAxis, TurnsTheClothAtEachCrease) {
  const unsigned seed = std::random_device{}();
  SCOPED_TRACE("seed " + std::to_string(seed));
  Random random{std::mt19937(seed)};
  for (int round = 0; round < 400; ++round) {
    const Chain chain = random_chain(random);
    EXPECT_EQ(chain.axis.creases.size(), chain.lines.size());
    for (const Crease& crease : chain.axis.creases) {
      const auto x = static_cast<std::size_t>(crease.line.units());
      EXPECT_EQ(crease.at, u(chain.place[x]));
      EXPECT_EQ(crease.cloth_after, chain.place[x] < chain.place[x - 1]);
      EXPECT_EQ(chain.place[x - 1], chain.place[x + 1]);
    }
  }
}

}  // namespace

}  // namespace foldyard::inspection
