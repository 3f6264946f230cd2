#include "drawing/goods_words.h"

#include <gtest/gtest.h>

#include "app/drawing/plain_words.h"
#include "core/support/any_goods.h"
#include "drawing/goods_list.h"
#include "job/defaults.h"
#include "job/start_job.h"

namespace foldyard {
namespace {

// 38 × 40 cm, 14 cm deep: 21 280 cm³. Its panel is 38 + 14 + 2.4 = 54.4 cm wide.
TEST(GoodsWords, SayWhatIsFinished) {
  const Goods& carrier = goods_by_key("carrier")->goods;
  EXPECT_EQ(plain(finished_words(carrier, Unit::cm)), "38 × 40 cm, 14 cm deep");
  EXPECT_EQ(plain(goods_words(carrier, Unit::cm)),
            "one-piece bag, 38 × 40 cm, 14 cm deep, 21.28 litres");
  EXPECT_EQ(plain(goods_words(goods_by_key("pouch")->goods, Unit::mm)), "flat pouch, 240 × 170 mm");
}

TEST(GoodsWords, SayWhatToMarkOnThePanel) {
  const QStringList words = making_words(goods_by_key("carrier")->goods, Unit::cm);
  ASSERT_EQ(words.size(), 2);
  EXPECT_EQ(plain(words[0]),
            "Bottom corners: stitch across 7 cm from the tip, or cut out squares of 8.2 cm.");
  EXPECT_EQ(plain(words[1]), "Handles: 2 × 55 cm, 110 cm of webbing for one; their middles at "
                             "13.6 cm and 40.8 cm from the left edge of the panel.");
  EXPECT_TRUE(making_words(goods_by_key("strap")->goods, Unit::cm).isEmpty());
}

TEST(GoodsWords, OfAWrapRoundBagNameAllFourMarks) {
  Goods bag = goods_by_key("peg-bag")->goods;  // faces of 26 cm behind a seam of 1.2 cm
  bag.handles = 2;
  bag.handle = Length::mm(400);
  EXPECT_TRUE(plain(making_words(bag, Unit::cm).last())
                  .contains("at 7.7 cm, 20.7 cm, 33.7 cm and 46.7 cm from"));
}

Job cushions() {
  Job job = default_job();
  add_roll(job, *cloth_kind("canvas"), Length::mm(9'000));
  EXPECT_FALSE(add_goods(job, "Oak", goods_by_key("cushion")->goods, false));
  return job;
}

TEST(GoodsWords, SayWhatOneNeeds) {
  const Job job = cushions();
  const QString words = needed_words(job, goods_of(job)[0]).replace(QChar::Nbsp, QLatin1Char(' '));
  EXPECT_EQ(words, "for one: 1 × Oak, front; 2 × Oak, back");
}

TEST(GoodsList, SaysHowManyThePanelsAreEnoughFor) {
  Plan plan;
  plan.yield = {5, 7};
  const std::vector<ListLine> lines = goods_lines(cushions(), plan);
  ASSERT_EQ(lines.size(), 3u);  // heading, goods, what one needs
  EXPECT_EQ(lines[1].cells[0], "3 ×");
  EXPECT_EQ(plain(lines[1].cells[1]), "Oak: cushion cover, 45 × 45 cm");
}

TEST(GoodsList, IsEmptyWhereNothingIsKnown) {
  Job job = cushions();
  for (Panel& panel : job.panels) panel.sewn.reset();
  Plan plan;
  plan.yield = {5, 7};
  EXPECT_TRUE(goods_lines(job, plan).empty());
}

}  // namespace
}  // namespace foldyard
