// Small orders beside a general solver: the linear model of an order, the bound, and how
// far the plan is from the best of all plans from every length there is.

#include "oracle/batch_model.h"

#include <gtest/gtest.h>

#include <set>

#include "batch/order_model.h"
#include "core/support/dice.h"
#include "core/support/few_rounds.h"
#include "job/batch_search.h"
#include "job/cut_back.h"
#include "job/defaults.h"
#include "job/length_pricer.h"

namespace foldyard {
namespace {

// Two or three rolls of two cloths, two to four panels, few pieces; table and roll in
// steps of 5 cm, so that there are few lengths.
// of_each: the first line asks for one of each cloth.
Job small_order(unsigned seed, bool of_each = false) {
  test::Dice dice(seed);
  Job job = default_job();
  for (int r = dice.from_to(2, 3); r > 0; --r) {
    Roll roll;
    roll.name = "roll " + std::to_string(r);
    roll.fabric = default_fabric();
    roll.fabric.width = Length::mm(600);
    roll.fabric.selvedge = Length();
    roll.fabric.nap = Nap::one_way;
    roll.length = Length::mm(50 * dice.from_to(30, 60));
    roll.cloth = r % 2 ? "red" : "blue";
    roll.price = Worth::whole(dice.from_to(5, 9));
    job.rolls.push_back(roll);
  }
  const int goods = dice.from_to(2, 4);
  for (int p = 0; p < goods; ++p) {
    const std::string name = "panel " + std::to_string(p);
    job.panels.push_back({name, Length::mm(50 * dice.from_to(3, 8)), Length::mm(50 * dice.from_to(3, 8)), false, true,
                          Worth::whole(1)});
    job.products.push_back({name, {{p, 1}}, {}, Worth::whole(dice.from_to(3, 9))});
    job.order.lines.push_back({p, dice.from_to(1, 4), dice.coin() ? 0 : dice.from_to(0, 1), {}, 0, {}});
    if (dice.from_to(0, 2) == 0) job.order.lines.back().rules = {{"red", 0, dice.from_to(0, 2)}};
  }
  if (of_each) job.order.lines[0].must = 3;
  if (of_each) job.order.lines[0].each_at_least = 1;
  if (of_each) job.order.lines[0].rules.clear();
  job.losses = {Length::mm(50), Length::mm(50), Length::mm(5), Length::mm(300), Length::mm(300)};
  job.table.length = Length::mm(800);
  job.cutter.most_plies = 1;  // open cloth only
  return job;
}

// All lengths by their yields: what any cutting edge to edge of a length gives, cut by
// cut at every step of 5 cm. (More of a panel than is needed is no use, so counts stop at 5.)
class EveryLength {
 public:
  EveryLength(const Job& job, const Fabric& fabric) : job_(job), width_(steps(fabric.usable_width())) {}

  LengthPool list() {
    LengthPool pool;
    for (int v = 3; v <= steps(job_.table.length); ++v)
      for (const auto& yield : yields(width_, v))
        pool.push_back({0, 0, Length::mm(50 * v) + job_.losses.allowance, yield, 1, {}, {}});
    return pool;
  }

 private:
  using Yields = std::set<std::vector<std::int64_t>>;
  static int steps(Length l) { return static_cast<int>(l / Length::mm(50)); }

  // Only those that no other yield covers.
  static Yields undominated(const Yields& all) {
    Yields kept;
    for (const auto& a : all) {
      bool covered = false;
      for (const auto& b : all) covered |= a != b && is_within(a, b);
      if (!covered) kept.insert(a);
    }
    return kept;
  }

  void join(const Yields& one, const Yields& two, Yields& all) const {
    for (const auto& a : one)
      for (const auto& b : two) {
        auto sum = a;
        for (std::size_t p = 0; p < sum.size(); ++p) sum[p] = std::min<std::int64_t>(5, sum[p] + b[p]);
        all.insert(sum);
      }
  }

  const Yields& yields(int w, int h) {
    const auto [found, is_new] = known_.try_emplace({w, h});
    if (!is_new) return found->second;
    Yields all{std::vector<std::int64_t>(job_.panels.size(), 0)};
    for (std::size_t p = 0; p < job_.panels.size(); ++p)
      if (steps(job_.panels[p].across) <= w && steps(job_.panels[p].along) <= h) {
        std::vector<std::int64_t> one(job_.panels.size(), 0);
        one[p] = 1;
        all.insert(one);
      }
    for (int x = 1; 2 * x <= w; ++x) join(yields(x, h), yields(w - x, h), all);
    for (int y = 1; 2 * y <= h; ++y) join(yields(w, y), yields(w, h - y), all);
    return known_[{w, h}] = undominated(all);
  }

  const Job& job_;
  int width_;
  std::map<std::pair<int, int>, Yields> known_;
};

TEST(BatchModel, AgreesWithTheLinearModelOfAnOrder) {
  for (unsigned seed = 1; seed <= 20; ++seed) {
    const Job job = small_order(seed);
    const Result<BatchCase> c = batch_case(job);
    ASSERT_TRUE(c);
    const LengthPool pool = EveryLength(job, job.rolls[0].fabric).list();
    const auto expected = test::least_cost(c->order, pool, true);
    if (!expected) continue;
    OrderModel model(c->order, {1, 1000, 1, 100});
    for (int s = 0; s < std::ssize(c->order.sources); ++s)
      for (int l = 0; l < std::ssize(pool); ++l)
        if (pool[static_cast<std::size_t>(l)].size <= c->order.sources[static_cast<std::size_t>(s)].room) model.allow(s, l, pool);
    ASSERT_TRUE(model.solve());
    double filled = 0;
    for (const PieceLine& line : c->order.lines) filled += static_cast<double>(line.worth * line.must) * 1000;
    EXPECT_NEAR(model.cost() * 1e4 + filled, *expected, 1e-4 * filled / 1000) << "seed " << seed;
  }
}

// The plan is no better than the best of all, its bound no higher; some plans are the best.
TEST(BatchModel, HoldsPlansBetweenBoundAndBest) {
  int best = 0, all = 0;
  for (unsigned seed = 1; seed <= 16; ++seed) {
    const Job job = small_order(seed, seed > 8);
    const Result<BatchCase> c = batch_case(job);
    ASSERT_TRUE(c);
    const LengthPool pool = EveryLength(job, job.rolls[0].fabric).list();
    const auto least = test::least_cost(c->order, pool, false);
    BatchSearch search(job, *c, test::few_rounds(60), {});
    search.run();
    std::int64_t full = 0;
    for (const PieceLine& line : c->order.lines) full += line.worth * line.must;
    if (!least) {
      EXPECT_LT(search.score().filled, full) << "seed " << seed;
      continue;
    }
    ASSERT_TRUE(search.bounds().has_cost);
    EXPECT_LE(static_cast<double>(search.bounds().cost), *least + 1) << "seed " << seed;
    EXPECT_EQ(search.bounds().filled, full) << "seed " << seed;
    if (search.score().filled < full) continue;
    EXPECT_GE(static_cast<double>(search.score().cost), *least - 1) << "seed " << seed;
    ++all;
    best += static_cast<double>(search.score().cost) <= *least + 1;
  }
  std::cout << best << " of " << all << " plans are the best there is\n";
  EXPECT_GE(all, 10);
  EXPECT_GE(best, 1);
}

}  // namespace
}  // namespace foldyard
