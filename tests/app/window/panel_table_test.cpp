#include "window/panel_table.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QScrollBar>
#include <QTest>

#include "sample.h"

namespace foldyard {
namespace {

class PanelTableTest : public testing::Test {
 protected:
  PanelTableTest() {
    document.open(sample::job(), {});
    table.resize(360, 300);
    table.show();
  }

  bool shows(int column) const { return !table.view()->isColumnHidden(column); }

  Document document;
  PanelTable table{document};
};

TEST_F(PanelTableTest, ShowsRareColumnsWhenAskedFor) {
  for (int column = 0; column < PanelModel::columns; ++column)
    EXPECT_EQ(shows(column), !PanelModel::is_rare(column)) << column;
  EXPECT_EQ(table.view()->horizontalScrollBar()->maximum(), 0);
  table.more()->click();
  for (int column = 0; column < PanelModel::columns; ++column) EXPECT_TRUE(shows(column)) << column;
  EXPECT_GE(table.view()->columnWidth(PanelModel::name), table.fontMetrics().horizontalAdvance("Log carrier"));
}

TEST_F(PanelTableTest, SaysThatAHiddenColumnIsUsed) {
  EXPECT_FALSE(table.more()->text().contains("in use"));
  Job job = sample::job();
  job.panels[0].at_most = 5;
  job.panels[1].grain = Grain::warp;
  document.open(job, {});
  EXPECT_TRUE(table.more()->text().contains("in use: at most, grain")) << table.more()->text().toStdString();
}

TEST_F(PanelTableTest, ChoosesAMatchByKeys) {
  table.more()->click();
  table.view()->setFocus();
  table.view()->setCurrentIndex(table.model()->index(0, PanelModel::match));
  QTest::keyClick(table.view(), Qt::Key_F2);
  auto* combo = table.view()->findChild<QComboBox*>();
  ASSERT_NE(combo, nullptr);
  EXPECT_EQ(combo->currentText(), "none");
  QTest::keyClick(combo, Qt::Key_Down);
  QTest::keyClick(combo, Qt::Key_Return);
  EXPECT_EQ(document.job().panels[0].match, Match::start);
}

TEST_F(PanelTableTest, TellsWhyAPanelStays) {
  Job job = sample::job();
  job.products.push_back({"Bag", {{1, 2}}, {}, Worth::whole(30)});
  document.open(job, {});
  table.view()->setCurrentIndex(table.model()->index(1, 0));
  table.take_away();
  EXPECT_TRUE(table.reason()->isVisible());
  EXPECT_EQ(table.reason()->text(),
            "Panel “Pouch”: the product \"Bag\" is sewn from it; take it out of the product first.");
}

}  // namespace
}  // namespace foldyard
