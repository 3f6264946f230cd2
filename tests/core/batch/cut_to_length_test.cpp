#include "batch/cut_to_length.h"

#include <gtest/gtest.h>

#include "core/support/dice.h"
#include "support/length_instance.h"

namespace foldyard {
namespace {

// Everything that is wanted is cut just once, nothing is longer than its cloth,
// every end is used once at most, and the figures agree. Counts for itself.
void expect_sound(const CutToLength& plan, const std::vector<WantedLength>& wanted, Length roll, Length loss,
                  const std::vector<Length>& ends) {
  std::vector<std::int64_t> got(wanted.size());
  std::vector<int> used(ends.size());
  std::int64_t rolls = 0;
  for (const LengthCuts& cuts : plan.cuts) {
    Length sum;
    ASSERT_EQ(cuts.counts.size(), wanted.size());
    for (std::size_t i = 0; i < wanted.size(); ++i) {
      sum += (wanted[i].length + loss) * cuts.counts[i];
      got[i] += cuts.counts[i] * cuts.rolls;
    }
    EXPECT_LE(sum, cuts.end < 0 ? roll : ends[static_cast<std::size_t>(cuts.end)]);
    if (cuts.end < 0) rolls += cuts.rolls;
    else EXPECT_EQ(++used[static_cast<std::size_t>(cuts.end)], 1);
  }
  for (std::size_t i = 0; i < wanted.size(); ++i) EXPECT_EQ(got[i], wanted[i].count);
  EXPECT_EQ(plan.rolls, rolls);
  EXPECT_LE(plan.bound, plan.rolls);
  EXPECT_EQ(plan.proved, plan.bound == plan.rolls);
}

TEST(CutToLength, UsesTheEndsFirst) {
  const std::vector<WantedLength> wanted = {{Length::mm(1200), 1}, {Length::mm(550), 4}};
  const std::vector<Length> ends = {Length::mm(600)};
  const CutToLength plan = cut_to_length(wanted, Length::mm(2000), {}, ends);
  expect_sound(plan, wanted, Length::mm(2000), {}, ends);
  EXPECT_EQ(plan.rolls, 2);
  EXPECT_TRUE(plan.proved);
  ASSERT_FALSE(plan.cuts.empty());
  EXPECT_EQ(plan.cuts[0].end, 0);
  EXPECT_EQ(plan.cuts[0].counts, (std::vector<std::int64_t>{0, 1}));
}

TEST(CutToLength, BuysNothingWhereTheEndsDo) {
  const std::vector<WantedLength> wanted = {{Length::mm(550), 4}};
  const std::vector<Length> ends = {Length::mm(400), Length::mm(1110), Length::mm(1200)};
  const CutToLength plan = cut_to_length(wanted, Length::mm(50'000), Length::mm(5), ends);
  expect_sound(plan, wanted, Length::mm(50'000), Length::mm(5), ends);
  EXPECT_EQ(plan.rolls, 0);
  EXPECT_TRUE(plan.proved);
}

TEST(CutToLength, CountsTheLossOfEachCut) {
  // 50 m hold 90 handles of 55 cm without loss, 89 with 1 cm each.
  const std::vector<WantedLength> wanted = {{Length::mm(550), 90}};
  EXPECT_EQ(cut_to_length(wanted, Length::mm(50'000), {}, {}).rolls, 1);
  EXPECT_EQ(cut_to_length(wanted, Length::mm(50'000), Length::mm(10), {}).rolls, 2);
}

TEST(CutToLength, WantsNothingOfNothing) {
  const CutToLength plan = cut_to_length({{Length::mm(550), 0}}, Length::mm(50'000), {}, {});
  EXPECT_EQ(plan, (CutToLength{{}, 0, 0, true}));
}

// The fewest rolls by trying every piece in every place, longest first.
int slow_rolls(const std::vector<int>& pieces, std::vector<int>& ends, std::vector<int>& rolls, int roll,
               std::size_t next, int best) {
  if (static_cast<int>(rolls.size()) >= best) return best;
  if (next == pieces.size()) return static_cast<int>(rolls.size());
  for (std::vector<int>* places : {&ends, &rolls}) {
    for (std::size_t i = 0; i < places->size(); ++i) {
      if ((*places)[i] < pieces[next]) continue;
      (*places)[i] -= pieces[next];
      best = slow_rolls(pieces, ends, rolls, roll, next + 1, best);
      (*places)[i] += pieces[next];
    }
  }
  rolls.push_back(roll - pieces[next]);
  best = slow_rolls(pieces, ends, rolls, roll, next + 1, best);
  rolls.pop_back();
  return best;
}

TEST(CutToLength, NeedsNoMoreThanTryingAll) {
  const unsigned seed = test::first_seed();
  for (unsigned i = 0; i < 60; ++i) {
    test::Dice dice(seed + i);
    const int roll = dice.from_to(12, 20);
    std::vector<WantedLength> wanted;
    std::vector<int> pieces, ends;
    std::vector<Length> end_lengths;
    for (int k = dice.from_to(1, 3); k > 0; --k) {
      const int size = dice.from_to(3, roll);
      wanted.push_back({Length::mm(size), dice.from_to(1, 3)});
      pieces.insert(pieces.end(), static_cast<std::size_t>(wanted.back().count), size);
    }
    for (int k = dice.from_to(0, 2); k > 0; --k) {
      ends.push_back(dice.from_to(2, roll));
      end_lengths.push_back(Length::mm(ends.back()));
    }
    const CutToLength plan = cut_to_length(wanted, Length::mm(roll), {}, end_lengths);
    expect_sound(plan, wanted, Length::mm(roll), {}, end_lengths);
    std::vector<int> rolls;
    const int fewest = slow_rolls(pieces, ends, rolls, roll, 0, static_cast<int>(pieces.size()) + 1);
    EXPECT_EQ(plan.rolls, fewest) << "seed " << seed + i;
    EXPECT_LE(plan.bound, fewest) << "seed " << seed + i;
  }
}

// What fills each place best as it comes needs a roll more than there has to be.
TEST(CutToLength, CutsFromEndsAndRollsTogetherBetterThanOneByOne) {
  struct Row {
    int roll;
    std::vector<std::pair<int, int>> wanted;  // length, count
    std::vector<int> ends;
    int fewest;  // by what is wanted beyond the ends, in rolls
  };
  const Row rows[] = {{51, {{15, 7}, {12, 6}, {7, 2}, {24, 5}}, {20, 42}, 5},          // 249 of 51
                      {40, {{11, 2}, {14, 3}, {18, 2}, {7, 7}}, {17, 20}, 3},          // 112 of 40
                      {44, {{15, 6}, {21, 4}, {9, 7}, {13, 6}}, {38, 32}, 6},          // 245 of 44
                      {52, {{18, 7}, {8, 6}, {9, 3}}, {17, 49, 50}, 2}};               // 85 of 52
  for (const Row& row : rows) {
    std::vector<WantedLength> wanted;
    std::vector<Length> ends;
    for (const auto& [length, count] : row.wanted) wanted.push_back({Length::mm(length), count});
    for (const int end : row.ends) ends.push_back(Length::mm(end));
    const CutToLength at_once = cut_to_length(wanted, Length::mm(row.roll), {}, ends, 0);
    expect_sound(at_once, wanted, Length::mm(row.roll), {}, ends);
    EXPECT_EQ(at_once.rolls, row.fewest + 1);
    EXPECT_FALSE(at_once.proved);
    const CutToLength plan = cut_to_length(wanted, Length::mm(row.roll), {}, ends);
    expect_sound(plan, wanted, Length::mm(row.roll), {}, ends);
    EXPECT_EQ(plan.rolls, row.fewest);
    EXPECT_TRUE(plan.proved);
  }
}

// Published instances (tests/data/cutting-1d, each with its source at its head).
void expect_fewest(const char* name, bool proved, int rounds) {
  const test::LengthInstance instance = test::read_length_instance(name);
  std::vector<WantedLength> wanted;
  for (const auto& [length, count] : instance.wanted) wanted.push_back({Length::mm(length), count});
  const CutToLength plan = cut_to_length(wanted, Length::mm(instance.roll), {}, {}, rounds);
  expect_sound(plan, wanted, Length::mm(instance.roll), {}, {});
  EXPECT_EQ(plan.rolls, instance.fewest) << name;
  EXPECT_EQ(plan.proved, proved) << name;
}

// 5600 mm, 13 widths, 73 rolls.
TEST(CutToLength, CutsThePaperMachinesExample) { expect_fewest("papermill", true, 40); }

TEST(CutToLength, ReachesPublishedOptimaAndProvesThem) {
  for (const char* name : {"TEST0005", "N1C1W1_A", "t60_00", "t60_01", "u250_00", "u250_01", "hard28_BPP047"})
    expect_fewest(name, true, 40);
}

// Its optimum is one of the few known that lie one above the linear model's bound.
TEST(CutToLength, DoesNotCallProvedWhatItsBoundDoesNotReach) { expect_fewest("hard28_BPP014", false, 3); }

}  // namespace
}  // namespace foldyard
