#include "batch/job_table.h"

#include <gtest/gtest.h>

#include "batch/job_list_edit.h"
#include "batch/order_lists.h"
#include "core/support/order_job.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

int at(LineColumn column) { return static_cast<int>(column); }

struct JobTableTest : testing::Test {
  JobTableTest() { document.open(test::order_job(), {}); }

  bool type(int row, LineColumn column, const QString& text) {
    return model.setData(model.index(row, at(column)), text, Qt::EditRole);
  }
  QString shown(int row, LineColumn column) { return model.index(row, at(column)).data().toString(); }
  const OrderLine& line(int row) { return document.job().order.lines[static_cast<std::size_t>(row)]; }

  Document document;
  JobTable model{document, line_list()};
  StrictTester tester{&model};
};

TEST_F(JobTableTest, ShowsTheOrder) {
  EXPECT_EQ(model.rowCount(), 2);
  EXPECT_EQ(shown(0, LineColumn::product), "carrier");
  EXPECT_EQ(shown(0, LineColumn::from), "any");
  EXPECT_EQ(shown(1, LineColumn::from), "printed");
  EXPECT_EQ(shown(1, LineColumn::may), "2");
  EXPECT_EQ(shown(1, LineColumn::rules), "none");
}

TEST_F(JobTableTest, AnEditIsAStepWithWords) {
  EXPECT_TRUE(type(0, LineColumn::must, "30"));
  EXPECT_EQ(line(0).must, 30);
  EXPECT_EQ(document.history().undoText(), "change “must” of “carrier”");
  const Job after = document.job();
  document.history().undo();
  EXPECT_EQ(document.job(), test::order_job());
  document.history().redo();
  EXPECT_EQ(document.job(), after);
}

TEST_F(JobTableTest, EveryColumnCanBeEdited) {
  EXPECT_TRUE(type(0, LineColumn::product, "pouch"));
  EXPECT_TRUE(type(0, LineColumn::may, "4"));
  EXPECT_TRUE(type(0, LineColumn::from, "moss, sand"));
  EXPECT_TRUE(type(0, LineColumn::each_at_least, "2"));
  EXPECT_EQ(line(0), (OrderLine{1, 12, 4, {"moss", "sand"}, 2, {}}));
}

TEST_F(JobTableTest, ARefusedTextStaysWithItsReason) {
  EXPECT_FALSE(type(0, LineColumn::must, "many"));
  EXPECT_EQ(shown(0, LineColumn::must), "many");
  EXPECT_EQ(model.first_reason(), "“many” is not a number of pieces; write a whole number such as 12.");
  EXPECT_EQ(document.job(), test::order_job());
  EXPECT_TRUE(type(0, LineColumn::must, "5"));
  EXPECT_TRUE(model.first_reason().isEmpty());
}

TEST_F(JobTableTest, RefusesAClothThatIsNotThere) {
  EXPECT_FALSE(type(0, LineColumn::from, "velvet"));
  EXPECT_TRUE(model.first_reason().startsWith("Line 1, “carrier”, from 1: ")) << model.first_reason().toStdString();
  EXPECT_FALSE(type(0, LineColumn::product, "boat"));
  EXPECT_EQ(model.reason(0, at(LineColumn::product)), "There is no “boat”; choose one of: carrier; pouch.");
  EXPECT_EQ(document.job(), test::order_job());
}

TEST_F(JobTableTest, FollowsTheJob) {
  Job job = test::order_job();
  job.order.lines.pop_back();
  EXPECT_FALSE(document.edit(job, "less"));
  EXPECT_EQ(model.rowCount(), 1);
  document.history().undo();
  EXPECT_EQ(model.rowCount(), 2);
}

TEST_F(JobTableTest, AProductIsChosenFromThoseThereAre) {
  EXPECT_EQ(model.index(0, at(LineColumn::product)).data(kChoicesRole).toStringList(), (QStringList{"carrier", "pouch"}));
  EXPECT_TRUE(model.index(0, at(LineColumn::must)).data(kChoicesRole).toStringList().isEmpty());
}

TEST_F(JobTableTest, RowsComeAndGo) {
  JobListEdit list(document, line_list(), "Order", "Add", "Take away");
  list.take();
  EXPECT_EQ(document.job(), test::order_job());  // none is chosen
  list.adder()->click();
  EXPECT_EQ(document.job().order.lines.size(), 3u);
  EXPECT_EQ(list.row(), 2);
  list.taker()->click();
  EXPECT_EQ(document.job(), test::order_job());
  EXPECT_EQ(document.history().undoText(), "take “carrier” out of the order");
  EXPECT_EQ(list.row(), 1);
}

}  // namespace
}  // namespace foldyard
