#include "job/goods_made.h"

#include <gtest/gtest.h>

#include "core/support/any_goods.h"
#include "job/defaults.h"
#include "job/start_job.h"

namespace foldyard {
namespace {

const Goods kCushion = test::goods_of(GoodsKind::cushion_cover, Length::mm(400), Length::mm(400),
                                      {}, Length::mm(10), Length::mm(25));

Job job_of(int cushions) {
  Job job = default_job();
  for (int i = 0; i < cushions; ++i) EXPECT_FALSE(add_goods(job, "Oak", kCushion, false));
  return job;
}

TEST(GoodsMade, AreAsManyAsTheirScarcestPanelMakes) {
  const Job job = job_of(1);
  const auto pieces = [&](std::int64_t fronts, std::int64_t backs) {
    return goods_made(job, {fronts, backs}).at(0).pieces;
  };
  EXPECT_EQ(pieces(10, 15), 7);
  EXPECT_EQ(pieces(10, 40), 10);
  EXPECT_EQ(pieces(3, 1), 0);
}

TEST(GoodsMade, NameTheirPanelsAndGoods) {
  const GoodsMade made = goods_of(job_of(1)).at(0);
  EXPECT_EQ(made.name, "Oak");
  EXPECT_EQ(made.goods, kCushion);
  EXPECT_EQ(made.panels, (std::vector<int>{0, 1}));
  EXPECT_EQ(made.pieces, 0);
}

TEST(GoodsMade, BeginAnewWhereAPieceComesAgain) {
  Job job = job_of(2);
  std::swap(job.panels[1], job.panels[2]);  // front, front, back, back
  const auto all = goods_made(job, {4, 6, 8, 4});
  ASSERT_EQ(all.size(), 2u);
  EXPECT_EQ(all[0].panels, (std::vector<int>{0, 2}));
  EXPECT_EQ(all[0].pieces, 4);
  EXPECT_EQ(all[1].name, "Oak 2");
  EXPECT_EQ(all[1].panels, (std::vector<int>{1, 3}));
  EXPECT_EQ(all[1].pieces, 2);
}

TEST(GoodsMade, LeaveOutPanelsThatAreNotSewn) {
  Job job = job_of(1);
  job.panels.front().sewn.reset();
  const auto all = goods_made(job, {9, 5});
  ASSERT_EQ(all.size(), 1u);
  EXPECT_EQ(all[0].panels, std::vector<int>{1});
  EXPECT_EQ(all[0].pieces, 2);
}

}  // namespace
}  // namespace foldyard
