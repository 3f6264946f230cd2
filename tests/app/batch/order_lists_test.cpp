#include "batch/order_lists.h"

#include <gtest/gtest.h>

#include "batch/order_table.h"
#include "core/support/order_job.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

struct OrderTableTest : testing::Test {
  OrderTableTest() { document.open(test::order_job(), {}); }

  bool rule(int row, RuleColumn column, const QString& text) {
    auto* model = table.rules()->model();
    return model->setData(model->index(row, static_cast<int>(column)), text, Qt::EditRole);
  }
  const std::vector<ClothRule>& rules(std::size_t line) { return document.job().order.lines[line].rules; }

  Document document;
  OrderTable table{document};
  StrictTester tester{table.rules()->model()};
};

TEST_F(OrderTableTest, RulesAreThoseOfTheChosenLine) {
  EXPECT_FALSE(table.rules()->adder()->isEnabled());
  table.lines()->table()->choose(0);
  EXPECT_EQ(table.rules_of(), "Rules for “carrier”: how many of a cloth or a mark");
  table.rules()->adder()->click();
  EXPECT_EQ(rules(0), (std::vector<ClothRule>{{"moss", 1, {}}}));
  EXPECT_EQ(document.history().undoText(), "add a rule");
  table.lines()->table()->choose(1);
  EXPECT_EQ(table.rules()->model()->rowCount(), 0);
  table.lines()->table()->choose(0);
  EXPECT_EQ(table.rules()->model()->rowCount(), 1);
}

TEST_F(OrderTableTest, ARuleIsEditedCellByCell) {
  table.lines()->table()->choose(0);
  table.rules()->adder()->click();
  const Job before = document.job();
  EXPECT_TRUE(rule(0, RuleColumn::of, "printed"));
  EXPECT_TRUE(rule(0, RuleColumn::at_least, "2"));
  EXPECT_TRUE(rule(0, RuleColumn::at_most, "6"));
  EXPECT_EQ(rules(0), (std::vector<ClothRule>{{"printed", 2, 6}}));
  EXPECT_TRUE(rule(0, RuleColumn::at_most, ""));
  EXPECT_EQ(rules(0), (std::vector<ClothRule>{{"printed", 2, {}}}));
  EXPECT_EQ(table.lines()->model()->index(0, static_cast<int>(LineColumn::rules)).data().toString(), "at least 2 of printed");
  for (int i = 0; i < 2; ++i) document.history().undo();  // the limit that came and went is no step
  EXPECT_EQ(document.job(), before);
  table.rules()->table()->choose(0);
  table.rules()->taker()->click();
  EXPECT_EQ(document.job(), test::order_job());
}

TEST_F(OrderTableTest, ARuleThatCannotBeKeptStaysADraft) {
  table.lines()->table()->choose(0);
  table.rules()->adder()->click();
  EXPECT_FALSE(rule(0, RuleColumn::of, "velvet"));
  EXPECT_TRUE(table.rules()->reason().contains("velvet")) << table.rules()->reason().toStdString();
  EXPECT_FALSE(rule(0, RuleColumn::at_least, "13"));  // of 12 pieces
  EXPECT_FALSE(rule(0, RuleColumn::at_most, "some"));
  EXPECT_EQ(rules(0), (std::vector<ClothRule>{{"moss", 1, {}}}));
}

TEST(OrderLists, OffersEveryClothAndMarkOnce) {
  Job job = test::order_job();
  job.on_hand = {{0, "felt", {"grey"}, 3}};
  EXPECT_EQ(cloths_and_marks(job), (QStringList{"moss", "sand", "felt", "printed", "grey"}));
}

TEST(OrderLists, SaysARule) {
  EXPECT_EQ(rule_words({"printed", 1, 4}), "at least 1 of printed and at most 4 of printed");
  EXPECT_EQ(rule_words({"moss", 6, {}}), "at least 6 of moss");
}

}  // namespace
}  // namespace foldyard
