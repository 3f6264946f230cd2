#include "batch/product_dialog.h"

#include <gtest/gtest.h>

#include <QTest>

#include "core/support/order_job.h"

namespace foldyard {
namespace {

void type(QLineEdit* line, const QString& text) {
  line->selectAll();
  QTest::keyClicks(line, text);
}

bool count(ProductDialog& dialog, int row, const QString& text) {
  auto* panels = dialog.panels();
  return panels->setData(panels->index(row, panels->fill_in_column()), text, Qt::EditRole);
}

TEST(ProductDialog, ShowsAProductAndChangesNothingByItself) {
  ProductDialog dialog(test::order_job());
  EXPECT_EQ(dialog.name()->text(), "carrier");
  EXPECT_EQ(dialog.worth()->text(), "20");
  EXPECT_EQ(dialog.panels()->entry("1"), "2");
  EXPECT_EQ(dialog.panels()->entry("2"), "");
  dialog.list()->setCurrentRow(1);
  EXPECT_EQ(dialog.name()->text(), "pouch");
  EXPECT_TRUE(dialog.confirmer()->isEnabled());
  EXPECT_EQ(dialog.job(), test::order_job());
}

TEST(ProductDialog, ReadsEveryField) {
  ProductDialog dialog(test::order_job());
  type(dialog.name(), "tote");
  type(dialog.worth(), "21.5");
  type(dialog.price(), "30");
  EXPECT_TRUE(count(dialog, 0, "2"));
  EXPECT_TRUE(count(dialog, 1, ""));
  const Product& product = dialog.job().products[0];
  EXPECT_EQ(product.name, "tote");
  EXPECT_EQ(product.worth, Worth::parts(215'000));
  EXPECT_EQ(product.price, Worth::whole(30));
  EXPECT_EQ(product.panels, (std::vector<PanelCount>{{0, 2, {}}}));
  EXPECT_EQ(dialog.list()->item(0)->text(), "tote");
}

TEST(ProductDialog, KeepsTheClothOfALining) {
  Job job = test::order_job();
  job.products[0].panels[1].from = {"sand"};
  ProductDialog dialog(job);
  EXPECT_TRUE(count(dialog, 1, "3"));
  EXPECT_EQ(dialog.job().products[0].panels[1], (PanelCount{1, 3, {"sand"}}));
}

TEST(ProductDialog, CannotBeConfirmedWhileRefused) {
  ProductDialog dialog(test::order_job());
  type(dialog.worth(), "much");
  EXPECT_FALSE(dialog.confirmer()->isEnabled());
  EXPECT_TRUE(dialog.reason().startsWith("“much” is not a worth"));
  type(dialog.worth(), "3");
  EXPECT_TRUE(dialog.confirmer()->isEnabled());
  for (int row : {0, 1}) count(dialog, row, "");
  EXPECT_EQ(dialog.reason(), "“carrier” takes no panel; say how many of one go into a piece.");
  EXPECT_FALSE(dialog.confirmer()->isEnabled());
}

TEST(ProductDialog, RefusesANameThatStandsTwice) {
  ProductDialog dialog(test::order_job());
  type(dialog.name(), "pouch");
  EXPECT_FALSE(dialog.confirmer()->isEnabled());
  EXPECT_FALSE(dialog.reason().isEmpty());
}

TEST(ProductDialog, AddsAndTakesAway) {
  ProductDialog dialog(test::order_job());
  dialog.adder()->click();
  EXPECT_EQ(dialog.list()->count(), 3);
  EXPECT_EQ(dialog.name()->text(), "Product 3");
  dialog.list()->setCurrentRow(0);
  dialog.taker()->click();
  EXPECT_EQ(dialog.name()->text(), "pouch");
  EXPECT_EQ(dialog.job().order.lines.size(), 1u);
  dialog.taker()->click();
  dialog.taker()->click();
  EXPECT_FALSE(dialog.taker()->isEnabled());
  EXPECT_TRUE(dialog.confirmer()->isEnabled());
  EXPECT_TRUE(dialog.job().products.empty());
}

}  // namespace
}  // namespace foldyard
