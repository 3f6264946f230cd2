#include "job/check_sewn.h"

#include <gtest/gtest.h>

#include <functional>

#include "core/support/any_goods.h"
#include "core/support/lengths.h"
#include "job/check_job.h"
#include "job/defaults.h"
#include "job/limits.h"
#include "job/start_job.h"

namespace foldyard {
namespace {

using test::kUnit;

// A bag of 30 × 35 × 12 cm with seams of 1 cm, hems of 3 cm and two handles:
// its panel is 44 × 88 cm.
Panel sewn_bag() {
  Job job = default_job();
  Goods bag = test::goods_of(GoodsKind::one_piece_bag, Length::mm(300), Length::mm(350),
                             Length::mm(120), Length::mm(10), Length::mm(30));
  bag.handles = 2;
  bag.handle = Length::mm(550);
  EXPECT_FALSE(add_goods(job, "Bag", bag, false));
  return job.panels.front();
}

TEST(CheckSewn, TakesItsCutSizeOneWayRoundOrTheOther) {
  Panel panel = sewn_bag();
  EXPECT_FALSE(check_sewn(panel, Unit::cm));
  std::swap(panel.across, panel.along);
  EXPECT_FALSE(check_sewn(panel, Unit::cm));
}

TEST(CheckSewn, RefusesAnyOtherSize) {
  Panel panel = sewn_bag();
  panel.along += kUnit * 320;
  const auto problem = check_sewn(panel, Unit::cm);
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->sentence(),
            "across: 44 cm × 88.1 cm is not the 44 cm × 88 cm that the one-piece bag needs; leave "
            "across and along out, or correct them or sewn.");
}

struct SpoiltGoods {
  const char* where;
  std::function<void(Goods&)> spoil;
};

TEST(CheckSewn, HoldsSizesToTheirLimits) {
  const SpoiltGoods rows[] = {
      {"sewn.width", [](Goods& g) { g.width = limits::kMostFinished + kUnit; }},
      {"sewn.height", [](Goods& g) { g.height = limits::kMostFinished + kUnit; }},
      {"sewn.depth", [](Goods& g) { g.depth = limits::kMostFinished + kUnit; }},
      {"sewn.seam", [](Goods& g) { g.seam = limits::kMostTurning + kUnit; }},
      {"sewn.hem", [](Goods& g) { g.hem = limits::kMostTurning + kUnit; }},
      {"sewn.overlap", [](Goods& g) { g.overlap = limits::kMostFinished + kUnit; }},
      {"sewn.handle", [](Goods& g) { g.handle = limits::kMostFinished + kUnit; }},
      {"sewn.handles", [](Goods& g) { g.handles = limits::kMostHandles + 1; }},
      {"sewn.overlap", [](Goods& g) { g.overlap = kUnit; }},
      {"sewn.width", [](Goods& g) { g.width = Length(); }},
  };
  for (const SpoiltGoods& row : rows) {
    Panel panel = sewn_bag();
    row.spoil(panel.sewn->goods);
    const auto problem = check_sewn(panel, Unit::cm);
    ASSERT_TRUE(problem) << row.where;
    EXPECT_EQ(problem->where, row.where) << problem->sentence();
    EXPECT_FALSE(problem->next.empty());
  }
}

// 1 km is the longest that is written exactly.
TEST(CheckSewn, NamesASizeHoweverLargeItIs) {
  Panel panel = sewn_bag();
  panel.sewn->goods.height = kLongest + Length::mm(10);
  EXPECT_EQ(check_sewn(panel, Unit::cm)->sentence(), "sewn.height: 100001 cm is too large; give at most 10 m.");
}

TEST(CheckSewn, TakesSizesAtTheirLimits) {
  Job job = default_job();
  Goods bag = test::goods_of(GoodsKind::one_piece_bag, limits::kMostFinished - Length::mm(1100),
                             limits::kMostFinished, Length::mm(100), limits::kMostTurning,
                             limits::kMostTurning);
  bag.handles = limits::kMostHandles;
  bag.handle = limits::kMostFinished;
  ASSERT_FALSE(add_goods(job, "Tent", bag, false));
  EXPECT_FALSE(check_sewn(job.panels.front(), Unit::cm));
}

TEST(CheckSewn, IsAskedWhereAJobIsChecked) {
  Job job = default_job();
  add_roll(job, *cloth_kind("canvas"), Length::mm(20'000));
  job.panels = {sewn_bag()};
  EXPECT_FALSE(check_job(job));
  job.panels[0].sewn->goods.hem = Length::mm(20);
  const auto problem = check_job(job);
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->where, "panels[0].across");
}

}  // namespace
}  // namespace foldyard
