#include "batch/line_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>

#include "core/support/order_job.h"

namespace foldyard {
namespace {

struct LineModelTest : testing::Test {
  LineModelTest() { document.open(test::order_job(), {}); }

  bool type(int row, int column, const QString& text) { return model.setData(model.index(row, column), text, Qt::EditRole); }
  QString shown(int row, int column) { return model.index(row, column).data().toString(); }
  const OrderLine& line(int row) { return document.job().order.lines[static_cast<std::size_t>(row)]; }

  Document document;
  LineModel model{document};
  QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(LineModelTest, ShowsTheOrder) {
  EXPECT_EQ(model.rowCount(), 2);
  EXPECT_EQ(shown(0, LineModel::product), "carrier");
  EXPECT_EQ(shown(0, LineModel::from), "any");
  EXPECT_EQ(shown(1, LineModel::from), "printed");
  EXPECT_EQ(shown(1, LineModel::may), "2");
}

TEST_F(LineModelTest, AnEditIsAStepWithWords) {
  EXPECT_TRUE(type(0, LineModel::must, "30"));
  EXPECT_EQ(line(0).must, 30);
  EXPECT_EQ(document.history().undoText(), "change “must” of “carrier”");
  document.history().undo();
  EXPECT_EQ(document.job(), test::order_job());
}

TEST_F(LineModelTest, EveryColumnCanBeEdited) {
  EXPECT_TRUE(type(0, LineModel::product, "pouch"));
  EXPECT_TRUE(type(0, LineModel::may, "4"));
  EXPECT_TRUE(type(0, LineModel::from, "moss, sand"));
  EXPECT_TRUE(type(0, LineModel::each_at_least, "2"));
  EXPECT_EQ(line(0), (OrderLine{1, 12, 4, {"moss", "sand"}, 2, {}}));
}

TEST_F(LineModelTest, ARefusedTextStaysWithItsReason) {
  EXPECT_FALSE(type(0, LineModel::must, "many"));
  EXPECT_EQ(shown(0, LineModel::must), "many");
  EXPECT_EQ(model.first_reason(), "“many” is not a number of pieces; write a whole number such as 12.");
  EXPECT_EQ(document.job(), test::order_job());
  EXPECT_TRUE(type(0, LineModel::must, "5"));
  EXPECT_TRUE(model.first_reason().isEmpty());
}

TEST_F(LineModelTest, RefusesAClothThatIsNotThere) {
  EXPECT_FALSE(type(0, LineModel::from, "velvet"));
  EXPECT_TRUE(model.first_reason().startsWith("Line 1, “carrier”, from 1: ")) << model.first_reason().toStdString();
  EXPECT_FALSE(type(0, LineModel::product, "boat"));
  EXPECT_EQ(document.job(), test::order_job());
}

TEST_F(LineModelTest, FollowsTheJob) {
  Job job = test::order_job();
  job.order.lines.pop_back();
  EXPECT_FALSE(document.edit(job, "less"));
  EXPECT_EQ(model.rowCount(), 1);
  document.history().undo();
  EXPECT_EQ(model.rowCount(), 2);
}

TEST_F(LineModelTest, SaysItsRules) {
  Job job = test::order_job();
  job.order.lines[0].rules = {{"printed", 1, 4}};
  EXPECT_FALSE(document.edit(job, "rule"));
  EXPECT_TRUE(model.index(0, 0).data(Qt::ToolTipRole).toString().endsWith("Rule: at least 1 of printed and at most 4 of printed"));
}

}  // namespace
}  // namespace foldyard
