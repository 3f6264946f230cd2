#include "shelf/roll_edits.h"

#include <gtest/gtest.h>

#include "job/check_job.h"
#include "shelf_sample.h"

namespace foldyard {
namespace {

using Names = std::vector<std::string>;

TEST(RollEdits, ACopyStandsBehindItsRollUnderANameOfItsOwn) {
  const Job job = sample::job();
  const Job once = with_copy(job, 0), twice = with_copy(once, 0);
  EXPECT_EQ(names_of(once.rolls), (Names{"Moss", "Moss 2", "Slate"}));
  EXPECT_EQ(names_of(twice.rolls), (Names{"Moss", "Moss 3", "Moss 2", "Slate"}));
  Roll copy = once.rolls[1];
  copy.name = "Moss";
  EXPECT_EQ(copy, job.rolls[0]);
  EXPECT_FALSE(check_job(twice));
}

TEST(RollEdits, TheOnlyRollIsNotTakenAway) {
  const auto left = without_roll(sample::job(), 0);
  ASSERT_TRUE(left);
  EXPECT_EQ(names_of(left->rolls), Names{"Slate"});
  const auto none = without_roll(*left, 0);
  ASSERT_FALSE(none);
  EXPECT_EQ(none.problem().sentence(),
            "This is the only roll, and a job has at least one; add another roll before you take it away.");
}

// Against the slow way: take it out, put it in.
TEST(RollEdits, MovesAnyRollBeforeAnyOther) {
  const Job job = sample::shelf_job();
  const int count = static_cast<int>(job.rolls.size());
  for (int roll = 0; roll < count; ++roll) {
    for (int before = 0; before <= count; ++before) {
      std::vector<Roll> expected = job.rolls;
      expected.insert(expected.begin() + before, job.rolls[static_cast<std::size_t>(roll)]);
      expected.erase(expected.begin() + (before <= roll ? roll + 1 : roll));
      EXPECT_EQ(with_moved(job, roll, before).rolls, expected) << roll << " before " << before;
      EXPECT_EQ(expected[static_cast<std::size_t>(place_after_move(roll, before))], job.rolls[static_cast<std::size_t>(roll)]);
    }
  }
}

TEST(RollEdits, FollowsARollByItsName) {
  const Job job = sample::shelf_job();
  const Names names = names_of(job.rolls);
  EXPECT_EQ(followed(names, 0, with_moved(job, 0, 5)), 4);
  EXPECT_EQ(followed(names, 3, with_copy(job, 1)), 4);
  EXPECT_EQ(followed(names, 3, *without_roll(job, 1)), 2);
  Job renamed = job;
  renamed.rolls[2].name = "Bracken";
  EXPECT_EQ(followed(names, 2, renamed), 2);
  EXPECT_EQ(followed(names, 4, *without_roll(job, 4)), 3);  // gone: the last there is
  EXPECT_EQ(followed(names, -1, job), -1);
}

}  // namespace
}  // namespace foldyard
