#include "batch/product_lists.h"

#include <gtest/gtest.h>

#include "batch/product_page.h"
#include "core/support/order_job.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

struct ProductPageTest : testing::Test {
  ProductPageTest() {
    Job job = test::order_job();
    job.webbings = {{"cotton", Length::mm(50'000)}, {"cord", Length::mm(25'000)}};
    document.open(job, {});
    before = job;
  }
  template <class Column>
  static bool type(JobListEdit* list, int row, Column column, const QString& text) {
    return list->model()->setData(list->model()->index(row, static_cast<int>(column)), text, Qt::EditRole);
  }
  const Product& product(std::size_t at) { return document.job().products[at]; }
  void undo_all() {
    while (document.history().canUndo()) document.history().undo();
    EXPECT_EQ(document.job(), before);
  }

  Job before;
  Document document;
  ProductPage page{document};
  StrictTester products{page.products()->model()};
  StrictTester panels{page.panels()->model()};
  StrictTester webbing{page.webbing()->model()};
  StrictTester prices{page.prices()->model()};
};

TEST_F(ProductPageTest, EveryFieldOfAProductCanBeEdited) {
  EXPECT_TRUE(type(page.products(), 0, ProductColumn::name, "tote"));
  EXPECT_TRUE(type(page.products(), 0, ProductColumn::worth, "21.5"));
  EXPECT_TRUE(type(page.products(), 0, ProductColumn::price, "30"));
  EXPECT_TRUE(type(page.products(), 0, ProductColumn::seam, "3.6 m"));
  EXPECT_TRUE(type(page.products(), 0, ProductColumn::labels, "1"));
  EXPECT_EQ(product(0).name, "tote");
  EXPECT_EQ(product(0).worth, Worth::parts(215'000));
  EXPECT_EQ(product(0).price, Worth::whole(30));
  EXPECT_EQ(product(0).seam, Length::mm(3'600));
  EXPECT_EQ(product(0).labels, 1);
  EXPECT_TRUE(type(page.products(), 0, ProductColumn::price, ""));
  EXPECT_EQ(product(0).price, std::nullopt);
  undo_all();
}

TEST_F(ProductPageTest, RefusesWhatCannotBe) {
  EXPECT_FALSE(type(page.products(), 0, ProductColumn::worth, "much"));
  EXPECT_TRUE(page.products()->reason().startsWith("“much” is not a worth"));
  EXPECT_FALSE(type(page.products(), 0, ProductColumn::name, "pouch"));  // stands already
  EXPECT_EQ(document.job(), before);
}

TEST_F(ProductPageTest, ThePanelsOfAPieceMayBeALining) {
  page.products()->table()->choose(0);
  ASSERT_EQ(page.panels()->model()->rowCount(), 2);
  EXPECT_TRUE(type(page.panels(), 1, PieceColumn::count, "3"));
  EXPECT_TRUE(type(page.panels(), 1, PieceColumn::from, "sand"));
  EXPECT_EQ(product(0).panels[1], (PanelCount{1, 3, {"sand"}}));
  page.panels()->adder()->click();
  EXPECT_EQ(product(0).panels[2].panel, 2);  // the first that it did not take yet
  EXPECT_FALSE(type(page.panels(), 2, PieceColumn::panel, "body"));
  EXPECT_TRUE(page.panels()->reason().contains("stands twice")) << page.panels()->reason().toStdString();
  page.panels()->taker()->click();
  EXPECT_EQ(product(0).panels.size(), 2u);
  undo_all();
}

TEST_F(ProductPageTest, WebbingAndPricesOfAProduct) {
  page.products()->table()->choose(1);
  page.webbing()->adder()->click();
  EXPECT_TRUE(type(page.webbing(), 0, CutColumn::webbing, "cord"));
  EXPECT_TRUE(type(page.webbing(), 0, CutColumn::length, "55 cm"));
  EXPECT_TRUE(type(page.webbing(), 0, CutColumn::count, "2"));
  EXPECT_EQ(product(1).webbing, (std::vector<WebbingCut>{{1, Length::mm(550), 2}}));
  page.prices()->adder()->click();
  EXPECT_TRUE(type(page.prices(), 0, PriceColumn::of, "printed"));
  EXPECT_TRUE(type(page.prices(), 0, PriceColumn::price, "12.50"));
  EXPECT_EQ(product(1).prices, (std::vector<SalePrice>{{"printed", Worth::parts(125'000)}}));
  EXPECT_FALSE(type(page.webbing(), 0, CutColumn::length, "60 m"));  // longer than a roll of cord
  undo_all();
}

TEST_F(ProductPageTest, AProductComesAndGoesWithItsLines) {
  page.products()->adder()->click();
  EXPECT_EQ(product(2).name, "Product 3");
  page.products()->table()->choose(0);
  page.products()->taker()->click();
  EXPECT_EQ(product(0).name, "pouch");
  EXPECT_EQ(document.job().order.lines.size(), 1u);
  undo_all();
}

}  // namespace
}  // namespace foldyard
