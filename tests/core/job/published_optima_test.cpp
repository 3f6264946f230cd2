// Open cloth without selvedge or losses, the table as long as the roll, is the
// unconstrained two-dimensional guillotine problem. Its published optima are
// in tests/data/guillotine with their sources: J. E. Beasley, "Algorithms for
// unconstrained two-dimensional guillotine cutting", J. Oper. Res. Soc. 36
// (1985), optima also in Cintra et al., EJOR 191 (2008).

#include <gtest/gtest.h>

#include <fstream>
#include <regex>
#include <sstream>

#include "job/defaults.h"
#include "job/plan_roll.h"

namespace foldyard {
namespace {

struct Published {
  Job job;
  std::int64_t straight = 0;  // no panel turned
  std::int64_t turned = 0;
};

void read_optima(const std::string& line, Published& published) {
  static const std::regex kOptima(R"(no rotation: (\d+); with 90-degree rotation: (\d+))");
  std::smatch match;
  if (!std::regex_search(line, match, kOptima)) return;
  published.straight = std::stoll(match[1]);
  published.turned = std::stoll(match[2]);
}

Job bare_job() {
  Job job = default_job();
  job.losses.squaring = job.losses.allowance = Length();
  job.table = {kLongest, kLongest, kLongest, true};
  return job;
}

void set_cloth(Job& job, std::int64_t width, std::int64_t length) {
  job.rolls = {{"cloth", {Length::mm(width), Length(), Length::mm(1), Nap::none, ""},
                Length::mm(length)}};
}

Published read(const std::string& name) {
  std::ifstream file(std::string(FOLDYARD_SOURCE_DIR) + "/tests/data/guillotine/" + name + ".txt");
  Published published{bare_job()};
  for (std::string line; std::getline(file, line);) {
    read_optima(line, published);
    if (line.empty() || line[0] == '#') continue;
    std::istringstream numbers(line);
    std::int64_t across = 0, along = 0, value = 0;
    numbers >> across >> along >> value;
    if (published.job.rolls.empty())
      set_cloth(published.job, across, along);
    else
      published.job.panels.push_back({std::to_string(published.job.panels.size()),
                                      Length::mm(across), Length::mm(along), false, true,
                                      Worth::parts(value)});
  }
  return published;
}

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
  const Published published = read(GetParam());
  ASSERT_GT(published.straight, 0);
  expect_optimum(published.job, published.straight);
}

TEST_P(Optima, AreReachedAndProvedTurned) {
  Published published = read(GetParam());
  for (Panel& panel : published.job.panels) panel.may_turn = true;
  ASSERT_GT(published.turned, 0);
  expect_optimum(published.job, published.turned);
}

// gcut13 takes longer to prove than a test may last: the bound must still hold.
TEST(LargeOptimum, LiesBetweenThePlanAndItsBound) {
  Published published = read("gcut13");
  for (const bool turned : {false, true}) {
    for (Panel& panel : published.job.panels) panel.may_turn = turned;
    const auto plan = plan_roll(published.job, 0, FoldWay{}, Aim::most_worth);
    ASSERT_TRUE(plan);
    const Worth optimum = Worth::parts(turned ? published.turned : published.straight);
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
