// The limited search against published optima: tests/data/guillotine, each file
// with its sources. Those that take longer than a test may last are in the
// bench (docs/benchmarks.md).

#include <gtest/gtest.h>

#include <ostream>
#include <set>

#include "core/cutting/limited_replay.h"
#include "cutting/limited_search.h"
#include "support/instance_problems.h"

namespace foldyard {
namespace {

struct Optimum {
  std::string name;
  bool turned = false;
  std::int64_t best = 0;
};

std::ostream& operator<<(std::ostream& out, const Optimum& c) {
  return out << c.name << (c.turned ? " turned" : "") << ", best " << c.best;
}

// A second and more each.
const std::set<std::string> kSlow{"APT31", "APT34", "Hchl8s"};
const std::set<std::string> kSlowTurned{"Hchl8s"};

void add_optima(const std::string& name, std::vector<Optimum>& optima) {
  const test::Instance instance = test::read_instance(name);
  const std::optional<std::int64_t> straight =
      instance.is_limited() ? instance.straight : instance.single;
  if (straight && !kSlow.contains(name)) optima.push_back({name, false, *straight});
  if (instance.is_limited() && instance.turned && !kSlowTurned.contains(name))
    optima.push_back({name, true, *instance.turned});
}

std::vector<Optimum> all_optima() {
  std::vector<Optimum> optima;
  for (const std::string& name : test::instance_names()) add_optima(name, optima);
  return optima;
}

class LimitedOptima : public testing::TestWithParam<Optimum> {};

TEST_P(LimitedOptima, AreReachedAndProved) {
  const LimitedProblem problem =
      test::limited_problem(test::read_instance(GetParam().name), GetParam().turned);
  const LimitedAnswer answer = best_limited(problem);
  EXPECT_EQ(answer.gain, GetParam().best);
  EXPECT_EQ(answer.bound, GetParam().best);
  EXPECT_TRUE(answer.proved);
  const test::Replayed replayed = test::replay(problem, answer.tree);
  EXPECT_EQ(replayed.fault, "");
  EXPECT_EQ(replayed.gain, answer.gain);
}

INSTANTIATE_TEST_SUITE_P(Guillotine, LimitedOptima, testing::ValuesIn(all_optima()),
                         [](const auto& test) {
                           return (test.param.name[0] < 'A' ? "set_" : "") + test.param.name +
                                  (test.param.turned ? "_turned" : "");
                         });

}  // namespace
}  // namespace foldyard
