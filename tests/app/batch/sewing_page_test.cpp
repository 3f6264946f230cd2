#include "batch/sewing_page.h"

#include <gtest/gtest.h>

#include "batch/sewing_edits.h"
#include "core/support/order_job.h"
#include "job/limits.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

// Edges first takes 100 + 250 s, handles first 290 + 160. Without allowance, at 36 an
// hour: a second is worth 0.01.
Job sewn_job() {
  Job job = test::order_job();
  job.pace.allowance_percent = 0;
  job.pace.rate = Worth::whole(36);
  job.products[0].sewing = {{"edges first", {{"edges", Duration::seconds(100)}, {"handles", Duration::seconds(250)}}},
                            {"handles first", {{"handles", Duration::seconds(290)}, {"edges", Duration::seconds(160)}}}};
  return job;
}

struct SewingPageTest : testing::Test {
  SewingPageTest() {
    document.open(sewn_job(), {});
    page.set_pieces({20, 10});
  }
  template <class Column>
  static QString shown(JobListEdit* list, int row, Column column) {
    return list->model()->index(row, static_cast<int>(column)).data().toString();
  }
  bool step(int row, StepColumn column, const QString& text) {
    auto* model = page.steps()->model();
    return model->setData(model->index(row, static_cast<int>(column)), text, Qt::EditRole);
  }
  const SewingStep& first_step() { return document.job().products[0].sewing[0].steps[0]; }
  // Times the chosen step.
  void lap(int ms) {
    now += ms;
    page.watch()->lapper()->click();
  }

  std::int64_t now = 0;
  Document document;
  SewingPage page{document, [this] { return now; }};
  StrictTester orders{page.orders()->model()};
  StrictTester steps{page.steps()->model()};
  StrictTester beside{page.side_by_side()};
};

TEST_F(SewingPageTest, ShowsOrdersAndTheStepsOfTheOneThatIsUsed) {
  EXPECT_EQ(page.orders()->model()->rowCount(), 2);
  EXPECT_EQ(shown(page.orders(), 0, SewingColumn::a_piece), "5:50");
  EXPECT_EQ(shown(page.orders(), 0, SewingColumn::saves), "used");
  // 20 pieces take 100 s longer each: 2000 s, worth 20.
  EXPECT_TRUE(shown(page.orders(), 1, SewingColumn::saves).contains("20.00")) << shown(page.orders(), 1, SewingColumn::saves).toStdString();
  EXPECT_EQ(page.steps()->model()->rowCount(), 2);
  EXPECT_EQ(shown(page.steps(), 0, StepColumn::counts), "1:40, assumed");
  // A tenth of 100 s for 20 pieces: 200 s, worth 2.
  EXPECT_EQ(shown(page.steps(), 0, StepColumn::tenth), "2.00");
}

TEST_F(SewingPageTest, LapsGoToTheStepsOneAfterAnother) {
  page.watch()->starter()->click();
  lap(98'000);
  EXPECT_EQ(page.steps()->row(), 1);
  lap(240'000);
  EXPECT_EQ(page.steps()->row(), 0);  // the next piece
  lap(102'000);
  EXPECT_EQ(first_step().timed, (std::vector<Duration>{Duration::seconds(98), Duration::seconds(102)}));
  EXPECT_EQ(shown(page.steps(), 0, StepColumn::counts), "1:40, median of 2");
  EXPECT_EQ(shown(page.steps(), 1, StepColumn::counts), "4:00, timed once");
  EXPECT_EQ(document.history().undoText(), "time the step “edges”: 1:42");
  const Job after = document.job();
  for (int i = 0; i < 3; ++i) document.history().undo();
  EXPECT_EQ(document.job(), sewn_job());
  for (int i = 0; i < 3; ++i) document.history().redo();
  EXPECT_EQ(document.job(), after);
}

TEST_F(SewingPageTest, EveryFieldOfAStepCanBeEdited) {
  EXPECT_TRUE(step(0, StepColumn::name, "hems"));
  EXPECT_TRUE(step(0, StepColumn::usual, "1:30"));
  EXPECT_TRUE(step(0, StepColumn::timed, "1:20; 1:24; 80 s"));
  EXPECT_EQ(first_step(), (SewingStep{"hems", Duration::seconds(90), {Duration::seconds(80), Duration::seconds(84), Duration::seconds(80)}}));
  EXPECT_FALSE(step(0, StepColumn::usual, "long"));
  EXPECT_TRUE(page.steps()->reason().startsWith("“long” is not a time"));
  EXPECT_FALSE(step(0, StepColumn::timed, "1:20; soon"));
  EXPECT_EQ(first_step().timed.size(), 3u);
}

TEST_F(SewingPageTest, AnotherOrderCanBeUsed) {
  EXPECT_FALSE(page.user()->isEnabled());
  page.orders()->table()->choose(1);
  EXPECT_EQ(shown(page.steps(), 0, StepColumn::name), "handles");
  page.user()->click();
  EXPECT_EQ(document.job().products[0].sewing[0].name, "handles first");
  EXPECT_EQ(document.history().undoText(), "use the order “handles first”");
  document.history().undo();
  EXPECT_EQ(document.job(), sewn_job());
}

TEST_F(SewingPageTest, OrdersAndStepsComeGoAndMove) {
  page.orders()->adder()->click();
  EXPECT_EQ(document.job().products[0].sewing[2].name, "Order 3");
  EXPECT_EQ(document.job().products[0].sewing[2].steps, sewn_job().products[0].sewing[0].steps);
  page.steps()->adder()->click();
  EXPECT_EQ(document.job().products[0].sewing[2].steps[2].name, "Step 3");
  page.steps()->upper()->click();
  EXPECT_EQ(document.job().products[0].sewing[2].steps[1].name, "Step 3");
  EXPECT_EQ(page.steps()->row(), 1);
  page.steps()->taker()->click();
  page.orders()->taker()->click();
  EXPECT_EQ(document.job(), sewn_job());
}

TEST_F(SewingPageTest, AProductWithoutAnOrderGetsItsFirst) {
  page.choose_product(1);
  EXPECT_EQ(page.orders()->model()->rowCount(), 0);
  EXPECT_FALSE(page.watch()->starter()->isEnabled());
  page.orders()->adder()->click();
  EXPECT_EQ(document.job().products[1].sewing, (std::vector<SewingOrder>{{"Order 1", {{"Step 1", Duration::seconds(60)}}}}));
  EXPECT_TRUE(page.watch()->starter()->isEnabled());
}

TEST_F(SewingPageTest, OrdersStandSideBySide) {
  const auto table = steps_side_by_side(document.job(), 0, 20);
  EXPECT_EQ(table.head, (QStringList{"Step", "edges first", "handles first"}));
  ASSERT_EQ(table.rows.size(), 5u);
  EXPECT_EQ(table.rows[0], (QStringList{"1", "edges 1:40", "handles 4:50"}));
  EXPECT_EQ(table.rows[2], (QStringList{"a piece", "5:50", "7:30"}));
  EXPECT_EQ(table.rows[4][0], "20 pieces");
  EXPECT_EQ(page.side_by_side()->rowCount(), 5);
}

TEST(SewingEdits, TheOldestTimeGoesWhereThereAreTooMany) {
  Job job = sewn_job();
  for (std::size_t i = 0; i <= limits::kMostTimes; ++i) job = with_time(job, {0, 0, 0}, Duration::seconds(static_cast<std::int64_t>(i) + 1));
  const auto& timed = job.products[0].sewing[0].steps[0].timed;
  EXPECT_EQ(timed.size(), limits::kMostTimes);
  EXPECT_EQ(timed.front(), Duration::seconds(2));
  EXPECT_EQ(step_at(job, {0, 2, 0}), nullptr);
  EXPECT_EQ(step_at(job, {5, 0, 0}), nullptr);
}

}  // namespace
}  // namespace foldyard
