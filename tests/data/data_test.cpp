// The reader of the instances, and that every one of them can be read.

#include <gtest/gtest.h>

#include <stdexcept>

#include "support/instance_problems.h"

namespace foldyard::test {
namespace {

constexpr const char* kSmall = "# small\ncloth 10 6\nstraight 5\nturned 7\npanel 4 6 5 1\n";

TEST(Instances, AreReadAsTheyAreWritten) {
  const Instance small = read_instance_text("small", kSmall);
  EXPECT_EQ(small.width, 10);
  EXPECT_EQ(small.length, 6);
  EXPECT_EQ(small.straight, 5);
  EXPECT_EQ(small.turned, 7);
  EXPECT_FALSE(small.single);
  ASSERT_EQ(small.panels.size(), 1u);
  EXPECT_EQ(small.panels[0].along, 6);
  EXPECT_EQ(small.panels[0].most, 1);
  EXPECT_TRUE(small.is_limited());
}

TEST(Instances, AnyNumberMayBeCutWhereNoneIsGiven) {
  EXPECT_FALSE(read_instance_text("any", "cloth 10 6\nstraight 5\npanel 4 6 5\n").is_limited());
}

TEST(Instances, AreRefusedWhereTheyAreNotUnderstood) {
  for (const char* text : {"", "cloth 10 6\n", "cloth 10\npanel 1 1 1\n", "cloth 10 6\nroll 3\n",
                           "cloth 10 6\npanel 4 6\n", "cloth 10 6\npanel 4 0 5\n",
                           "cloth 10 6\npanel 4 6 5 x\n", "cloth 10 6\npanel 4 6 5 1 1\n",
                           "cloth 10 6\npanel 4 6 5 1\npanel 4 6 5\n"})
    EXPECT_THROW(read_instance_text("odd", text), std::runtime_error) << text;
  EXPECT_THROW(read_instance("no such"), std::runtime_error);
}

TEST(Instances, CanAllBeReadAndHaveAnOptimum) {
  const std::vector<std::string> names = instance_names();
  EXPECT_EQ(names.size(), 77u);  // 64 with limits, 13 of gcut
  for (const std::string& name : names) {
    const Instance instance = read_instance(name);
    EXPECT_TRUE(instance.straight) << name;
    // Turning never loses, and fewer copies never gain.
    EXPECT_GE(instance.turned.value_or(*instance.straight), *instance.straight) << name;
    EXPECT_LE(instance.single.value_or(*instance.straight), *instance.straight) << name;
  }
}

TEST(Instances, BecomeProblemsWithEachPanelInBothPositions) {
  const LimitedProblem problem = limited_problem(read_instance_text("small", kSmall), true);
  ASSERT_EQ(problem.shapes.size(), 2u);
  EXPECT_EQ(problem.shapes[1].across, Length::units(6));
  EXPECT_EQ(problem.shapes[1].along, Length::units(4));
  EXPECT_TRUE(problem.shapes[1].turned);
  EXPECT_EQ(problem.limits, std::vector<std::int64_t>{1});
}

TEST(Instances, BecomeJobsWithoutLosses) {
  const Job job =
      unlimited_job(read_instance_text("any", "cloth 10 6\nstraight 5\npanel 4 6 5\n"), true);
  EXPECT_EQ(job.rolls[0].fabric.usable_width(), Length::mm(10));
  EXPECT_EQ(job.rolls[0].length, Length::mm(6));
  EXPECT_EQ(job.losses.squaring + job.losses.allowance, Length());
  EXPECT_TRUE(job.panels[0].may_turn);
}

}  // namespace
}  // namespace foldyard::test
