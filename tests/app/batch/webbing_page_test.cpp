#include "batch/webbing_page.h"

#include <gtest/gtest.h>

#include "batch/webbing_lists.h"
#include "core/support/order_job.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

struct WebbingPageTest : testing::Test {
  WebbingPageTest() { document.open(test::order_job(), {}); }
  bool webbing(int row, WebbingColumn column, const QString& text) {
    auto* model = page.webbings()->model();
    return model->setData(model->index(row, static_cast<int>(column)), text, Qt::EditRole);
  }
  bool figure(NotionRow row, const QString& text) {
    auto* model = page.figures()->model();
    return model->setData(model->index(static_cast<int>(row), 1), text, Qt::EditRole);
  }

  Document document;
  WebbingPage page{document};
  StrictTester webbings{page.webbings()->model()};
  StrictTester figures{page.figures()->model()};
};

TEST_F(WebbingPageTest, EveryFieldOfAWebbingCanBeEdited) {
  page.webbings()->adder()->click();
  EXPECT_TRUE(webbing(0, WebbingColumn::name, "cotton 30 mm"));
  EXPECT_TRUE(webbing(0, WebbingColumn::roll, "25 m"));
  EXPECT_TRUE(webbing(0, WebbingColumn::price, "19.50"));
  EXPECT_TRUE(webbing(0, WebbingColumn::ends, "3.4 m; 120 cm"));
  EXPECT_TRUE(webbing(0, WebbingColumn::loss, "5 mm"));
  EXPECT_EQ(document.job().webbings, (std::vector<Webbing>{{"cotton 30 mm", Length::mm(25'000), Worth::parts(195'000),
                                                            {Length::mm(3'400), Length::mm(1'200)}, Length::mm(5)}}));
  EXPECT_FALSE(webbing(0, WebbingColumn::ends, "3.4 m; some"));
  EXPECT_EQ(document.job().webbings[0].ends.size(), 2u);
  const Job after = document.job();
  while (document.history().canUndo()) document.history().undo();
  EXPECT_EQ(document.job(), test::order_job());
  while (document.history().canRedo()) document.history().redo();
  EXPECT_EQ(document.job(), after);
}

TEST_F(WebbingPageTest, WhatProductsTakeOfAWebbingGoesWithIt) {
  Job job = test::order_job();
  job.webbings = {{"cotton", Length::mm(50'000)}, {"cord", Length::mm(25'000)}};
  job.products[0].webbing = {{0, Length::mm(550), 2}, {1, Length::mm(300), 1}};
  document.open(job, {});
  page.webbings()->table()->choose(0);
  page.webbings()->taker()->click();
  EXPECT_EQ(document.job().products[0].webbing, (std::vector<WebbingCut>{{0, Length::mm(300), 1}}));
  document.history().undo();
  EXPECT_EQ(document.job(), job);
}

TEST_F(WebbingPageTest, EveryFigureCanBeEdited) {
  EXPECT_TRUE(figure(NotionRow::thread, "3.1"));
  EXPECT_TRUE(figure(NotionRow::reel, "1000 m"));
  EXPECT_TRUE(figure(NotionRow::reel_price, "7.9"));
  EXPECT_TRUE(figure(NotionRow::label_price, "0.15"));
  EXPECT_TRUE(figure(NotionRow::cloth_price, "8.25"));
  EXPECT_TRUE(figure(NotionRow::sitting, "120"));
  EXPECT_EQ(document.job().notions, (Notions{31, Length::mm(1'000'000), Worth::parts(79'000), Worth::parts(1'500)}));
  EXPECT_EQ(document.job().cloth_price, Worth::parts(82'500));
  EXPECT_EQ(document.job().sitting, Duration::seconds(7'200));
  EXPECT_FALSE(figure(NotionRow::thread, "thick"));
  EXPECT_FALSE(figure(NotionRow::sitting, "0:30"));  // shorter than a minute
  EXPECT_EQ(document.job().notions.thread_tenths, 31);
}

}  // namespace
}  // namespace foldyard
