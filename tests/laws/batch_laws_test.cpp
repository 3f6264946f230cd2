// Laws of an order over many rolls. A search by repairs may miss a plan, so laws speak of
// bounds, or of jobs that differ in what cannot lead a search astray.

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "core/support/few_rounds.h"
#include "inspect/inspect_batch.h"
#include "job/plan_batch.h"
#include "laws/any_job.h"

namespace foldyard::test {
namespace {

// Two rolls of one cloth and one of another, a product of each panel.
rc::Gen<Job> any_order() {
  return rc::gen::exec([] {
    Job job = *any_job();
    Roll first = job.rolls[0];
    first.name = "a";
    first.cloth = "red";
    first.price = Worth::whole(*rc::gen::inRange(1, 20));
    job.rolls = {first};
    for (const char* name : {"b", "c"}) {
      job.rolls.push_back(first);
      job.rolls.back().name = name;
      job.rolls.back().length = *any_size(80, 400);
    }
    job.rolls[2].cloth = "blue";
    for (int p = 0; p < std::ssize(job.panels); ++p) {
      job.panels[static_cast<std::size_t>(p)].name = std::string(1, static_cast<char>('p' + p));
      job.products.push_back({job.panels[static_cast<std::size_t>(p)].name, {{p, *rc::gen::inRange(1, 3)}}, {},
                              Worth::whole(*rc::gen::inRange(1, 30))});
      job.order.lines.push_back({p, *rc::gen::inRange(1, 6), *rc::gen::inRange(0, 2), {}, 0, {}});
    }
    return job;
  });
}

constexpr int kSeeds = 40;  // a plan of an order takes far longer than one of a roll
constexpr int kSize = 30;
constexpr int kRounds = 6;

// The same orders every time.
Job order_of(int seed) { return any_order()(rc::Random(static_cast<std::uint64_t>(seed)), kSize).value(); }

TEST(BatchLaws, PlansPassInspectionAndAreTheSameTwice) {
  for (int seed = 1; seed <= kSeeds; ++seed) {
    const Job job = order_of(seed);
    const Result<BatchPlan> one = plan_batch(job, few_rounds(kRounds)), two = plan_batch(job, few_rounds(kRounds));
    ASSERT_EQ(static_cast<bool>(one), static_cast<bool>(two)) << "seed " << seed;
    if (!one) continue;
    EXPECT_EQ(*one, *two) << "seed " << seed;
    EXPECT_EQ(inspect_batch(job, *one), std::vector<std::string>()) << "seed " << seed;
  }
}

// No plan fills more than the bound of the other job, nor costs less than its bound where
// it fills as much.
void expect_within(const BatchPlan& plan, const BatchPlan& other, int seed) {
  EXPECT_LE(plan.filled, other.filled_bound) << "seed " << seed;
  if (plan.filled == other.filled_bound) {
    EXPECT_GE(plan.cost, other.cost_bound) << "seed " << seed;
  }
}

// What can be made of some rolls can be made of more.
TEST(BatchLaws, MoreClothBoundsLess) {
  for (int seed = 1; seed <= kSeeds; ++seed) {
    const Job job = order_of(seed);
    Job more = job;
    more.rolls.push_back(job.rolls[1]);
    more.rolls.back().name = "d";
    const Result<BatchPlan> less = plan_batch(job, few_rounds(kRounds)), plenty = plan_batch(more, few_rounds(kRounds));
    if (less && plenty) expect_within(*less, *plenty, seed);
  }
}

TEST(BatchLaws, TheOrderOfRollsKeepsBounds) {
  for (int seed = 1; seed <= kSeeds; ++seed) {
    const Job job = order_of(seed);
    Job turned = job;
    std::swap(turned.rolls[0], turned.rolls[1]);
    const Result<BatchPlan> one = plan_batch(job, few_rounds(kRounds)), two = plan_batch(turned, few_rounds(kRounds));
    ASSERT_EQ(static_cast<bool>(one), static_cast<bool>(two)) << "seed " << seed;
    if (!one) continue;
    expect_within(*one, *two, seed);
    expect_within(*two, *one, seed);
  }
}

}  // namespace
}  // namespace foldyard::test
