// Open cloth without selvedge or losses, the table as long as the roll, is the
// unconstrained two-dimensional guillotine problem. Its published optima are
// in tests/data/guillotine with their sources: J. E. Beasley, "Algorithms for
// unconstrained two-dimensional guillotine cutting", J. Oper. Res. Soc. 36
// (1985), optima also in Cintra et al., EJOR 191 (2008).

#include <gtest/gtest.h>

#include "job/plan_roll.h"
#include "support/instance_problems.h"

namespace foldyard {
namespace {

// The largest of them need more steps than a person would wait for at each edit.
constexpr SearchBudget kAmple{20'000'000'000};

class Optima : public testing::TestWithParam<std::string> {};

void expect_optimum(const Job& job, std::int64_t optimum) {
  const auto plan = plan_roll(job, 0, FoldWay{}, Aim::most_worth, kAmple);
  ASSERT_TRUE(plan) << plan.problem().sentence();
  EXPECT_EQ(plan->worth, Worth::parts(optimum));
  EXPECT_TRUE(plan->proof.proved);
  EXPECT_EQ(plan->proof.bound, Worth::parts(optimum));
}

TEST_P(Optima, AreReachedAndProved) {
  const test::Instance published = test::read_instance(GetParam());
  expect_optimum(test::unlimited_job(published, false), *published.straight);
}

TEST_P(Optima, AreReachedAndProvedTurned) {
  const test::Instance published = test::read_instance(GetParam());
  expect_optimum(test::unlimited_job(published, true), *published.turned);
}

// gcut13 takes longer to prove than a test may last: the bound must still hold.
TEST(LargeOptimum, LiesBetweenThePlanAndItsBound) {
  const test::Instance published = test::read_instance("gcut13");
  for (const bool turned : {false, true}) {
    const Job job = test::unlimited_job(published, turned);
    const auto plan = plan_roll(job, 0, FoldWay{}, Aim::most_worth);
    ASSERT_TRUE(plan);
    const Worth optimum = Worth::parts(turned ? *published.turned : *published.straight);
    EXPECT_LE(plan->worth, optimum);
    EXPECT_GE(plan->proof.bound, optimum);
    // A part in a hundred is lost at most by the places left out.
    EXPECT_GE(plan->worth.parts() * 100, optimum.parts() * 99);
  }
}

std::vector<std::string> names() {
  std::vector<std::string> list;
  for (int i = 1; i <= 12; ++i) list.push_back((i < 10 ? "gcut0" : "gcut") + std::to_string(i));
  return list;
}

INSTANTIATE_TEST_SUITE_P(Guillotine, Optima, testing::ValuesIn(names()),
                         [](const auto& test) { return test.param; });

}  // namespace
}  // namespace foldyard
