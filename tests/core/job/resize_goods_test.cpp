#include "job/resize_goods.h"

#include <gtest/gtest.h>

#include "core/support/any_goods.h"
#include "core/support/lengths.h"
#include "goods/cut_size.h"
#include "job/check_job.h"
#include "job/defaults.h"
#include "job/start_job.h"

namespace foldyard {
namespace {

using test::mm;

// A lined bag (30 × 35 × 12 cm, seams 1 cm, hem 3 cm): panels of 44 × 88 and
// 44 × 84 cm; then a cushion cover.
Job bag_and_cushion() {
  Job job = default_job();
  add_roll(job, *cloth_kind("canvas"), mm(20'000));
  EXPECT_FALSE(add_goods(job, "Bag",
                         test::goods_of(GoodsKind::one_piece_bag, mm(300), mm(350), mm(120),
                                        mm(10), mm(30)),
                         true));
  EXPECT_FALSE(add_goods(job, "Oak",
                         test::goods_of(GoodsKind::cushion_cover, mm(400), mm(400), {}, mm(10),
                                        mm(25)),
                         false));
  return job;
}

TEST(ResizeGoods, MovesTheGoodsAndAllTheirPanels) {
  const Job job = bag_and_cushion();
  const auto next = resize_goods(job, 0, mm(460), mm(900));
  ASSERT_TRUE(next) << next.problem().sentence();
  EXPECT_EQ(next->panels[0].sewn->goods.width, mm(320));
  EXPECT_EQ(next->panels[0].sewn->goods.height, mm(360));
  EXPECT_EQ(next->panels[0].across, mm(460));
  EXPECT_EQ(next->panels[0].along, mm(900));
  EXPECT_EQ(next->panels[1].across, mm(460));
  EXPECT_EQ(next->panels[1].along, mm(860));
  EXPECT_EQ(next->panels[2], job.panels[2]);
  EXPECT_FALSE(check_job(*next));
}

TEST(ResizeGoods, LeavesAJobOfTheSameSizeAsItIs) {
  const Job job = bag_and_cushion();
  for (int i : {0, 2}) {
    const Panel& panel = job.panels[static_cast<std::size_t>(i)];
    EXPECT_EQ(resize_goods(job, i, panel.across, panel.along).value(), job);
  }
}

TEST(ResizeGoods, KeepsATurnedPanelTurned) {
  Job job = bag_and_cushion();
  std::swap(job.panels[0].across, job.panels[0].along);  // 88 × 44 cm
  EXPECT_TRUE(lies_turned(job.panels[0]));
  EXPECT_FALSE(lies_turned(job.panels[1]));
  const auto next = resize_goods(job, 0, mm(900), mm(460));
  ASSERT_TRUE(next);
  EXPECT_EQ(next->panels[0].sewn->goods.width, mm(320));
  EXPECT_EQ(next->panels[0].across, mm(900));
  EXPECT_EQ(next->panels[1].across, mm(460));
}

TEST(ResizeGoods, RefusesAPanelThatFollowsFromAnother) {
  const Job job = bag_and_cushion();
  const auto lining = resize_goods(job, 1, mm(440), mm(850));
  ASSERT_FALSE(lining);
  EXPECT_EQ(lining.problem().where, "panels[1].along");
  const auto back = resize_goods(job, 3, mm(240), mm(420));
  ASSERT_FALSE(back);
  EXPECT_EQ(back.problem().where, "panels[3].across");
}

TEST(ResizeGoods, RefusesWhatNoGoodsHave) {
  const auto narrow = resize_goods(bag_and_cushion(), 0, mm(140), mm(880));
  ASSERT_FALSE(narrow);
  EXPECT_EQ(narrow.problem().where, "panels[0].across");
}

// The back has half of the cover and its overlap, which an odd width has not.
TEST(ResizeGoods, RefusesAWidthThatAnotherPieceCannotFollow) {
  const Job job = bag_and_cushion();
  const Panel& cover = job.panels[2];
  EXPECT_TRUE(resize_goods(job, 2, cover.across + Length::units(2), cover.along));
  const auto odd = resize_goods(job, 2, cover.across + Length::units(1), cover.along);
  ASSERT_FALSE(odd);
  EXPECT_EQ(odd.problem().where, "panels[2].overlap");
}

}  // namespace
}  // namespace foldyard
