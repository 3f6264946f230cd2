#include "cli/goods_lines.h"

#include <gtest/gtest.h>

#include "cli/goods_json.h"
#include "job/defaults.h"
#include "job/start_job.h"

#include <QJsonObject>

namespace foldyard {
namespace {

Job carriers() {
  Job job = default_job();
  add_roll(job, *cloth_kind("canvas"), Length::mm(9'000));
  EXPECT_FALSE(add_goods(job, "Carrier", goods_by_key("carrier")->goods, false));
  EXPECT_FALSE(add_goods(job, "Oak", goods_by_key("cushion")->goods, false));
  return job;
}

Plan yielding(std::vector<std::int64_t> yield) {
  Plan plan;
  plan.yield = std::move(yield);
  return plan;
}

TEST(GoodsLines, CountPiecesAndWebbing) {
  const QString text = plan_goods_words(carriers(), yielding({6, 4, 5}));
  EXPECT_TRUE(text.contains("6 × Carrier: one-piece bag, 38 × 40 cm, 14 cm deep, 21.28 litres; "
                            "660 cm of webbing for all")) << text.toStdString();
  EXPECT_TRUE(text.contains("2 × Oak: cushion cover, 45 × 45 cm\n")) << text.toStdString();
  EXPECT_TRUE(text.contains("for one: 1 × Oak, front; 2 × Oak, back."));
  EXPECT_TRUE(goods_legend(carriers()).contains("Carrier: one-piece bag"));
}

TEST(GoodsLines, AreNoneForPlainPanels) {
  Job job = carriers();
  for (Panel& panel : job.panels) panel.sewn.reset();
  EXPECT_TRUE(goods_legend(job).isEmpty());
  EXPECT_TRUE(plan_goods_words(job, yielding({6, 4, 5})).isEmpty());
  EXPECT_TRUE(goods_json(job, yielding({6, 4, 5})).isEmpty());
}

TEST(GoodsJson, HasSizesExactAndAllThatOneNeeds) {
  const QJsonArray json = goods_json(carriers(), yielding({6, 4, 5}));
  ASSERT_EQ(json.size(), 2);
  const QJsonObject carrier = json[0].toObject();
  EXPECT_EQ(carrier["pieces"].toInt(), 6);
  EXPECT_EQ(carrier["width"].toString(), "38 cm");
  EXPECT_EQ(carrier["litres"].toString(), "21.28");
  EXPECT_EQ(carrier["corner"].toString(), "7 cm");
  EXPECT_EQ(carrier["webbing"].toString(), "110 cm");
  EXPECT_EQ(carrier["handle_marks"].toArray(), (QJsonArray{"13.6 cm", "40.8 cm"}));
  const QJsonArray panels = json[1].toObject()["panels"].toArray();
  EXPECT_EQ(panels[1].toObject()["panel"].toString(), "Oak, back");
  EXPECT_EQ(panels[1].toObject()["count"].toInt(), 2);
}

}  // namespace
}  // namespace foldyard
