#include "batch/batch_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QTemporaryDir>
#include <QTimer>

#include <algorithm>

#include "batch/cut_dialog.h"
#include "batch_sample.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

struct BatchPageTest : testing::Test {
  BatchPageTest() {
    document.open(test::order_job(), {});
    page.resize(1100, 700);
  }
  bool show_answer() {
    page.show();
    return sample::waited_for([&] { return page.view()->answer() && !page.planner().is_busy(); });
  }
  // Ticks or unticks a roll in its table.
  void tick(int roll, bool on) {
    page.view()->choose(BatchTableKind::rolls);
    auto* model = page.view()->model();
    model->setData(model->index(roll, 0), on ? Qt::Checked : Qt::Unchecked, Qt::CheckStateRole);
  }

  Document document;
  BatchPage page{document, sample::quick_plan};
};

TEST_F(BatchPageTest, PlansOnlyWhileItIsSeen) {
  EXPECT_FALSE(page.planner().is_busy());
  ASSERT_TRUE(show_answer());
  EXPECT_EQ(page.view()->answer()->job, document.job());
  EXPECT_EQ(page.view()->figures()->text(BatchFigures::pieces), "20 of 20");
}

TEST_F(BatchPageTest, EveryTableHasItsTab) {
  ASSERT_TRUE(show_answer());
  StrictTester tester(page.view()->model());
  const auto tables = batch_tables(*page.view()->answer());
  ASSERT_EQ(page.view()->tabs()->count(), static_cast<int>(tables.size()));
  for (int tab = 0; tab < page.view()->tabs()->count(); ++tab) {
    page.view()->tabs()->setCurrentIndex(tab);
    const auto& table = tables[static_cast<std::size_t>(tab)];
    EXPECT_EQ(page.view()->table()->accessibleName(), table.heading);
    const bool is_of_shelf = table.kind == BatchTableKind::rolls;  // all rolls, those that are not cut too
    EXPECT_EQ(page.view()->model()->rowCount(), static_cast<int>(is_of_shelf ? document.job().rolls.size() : table.rows.size()));
  }
}

TEST_F(BatchPageTest, TheLastAnswerStaysUntilTheNextIsThere) {
  ASSERT_TRUE(show_answer());
  page.view()->choose(BatchTableKind::lays);
  Job job = document.job();
  job.order.lines[0].must = 4;
  EXPECT_FALSE(document.edit(job, "less"));
  EXPECT_EQ(page.view()->answer()->job, test::order_job());
  EXPECT_FALSE(page.view()->marker()->isEnabled());  // it is of another job
  ASSERT_TRUE(sample::waited_for([&] { return !page.planner().is_busy(); }));
  EXPECT_EQ(page.view()->answer()->job, job);
  EXPECT_TRUE(page.view()->marker()->isEnabled());
  EXPECT_EQ(page.view()->table()->accessibleName(), "Lays, in cutting order");
}

TEST_F(BatchPageTest, ARollCanBeLeftOutAndComesBack) {
  ASSERT_TRUE(show_answer());
  tick(0, false);
  ASSERT_TRUE(sample::waited_for([&] { return !page.planner().is_busy(); }));
  for (const Plan& roll : page.view()->answer()->plan.rolls) EXPECT_NE(roll.roll, 0);
  EXPECT_EQ(page.view()->model()->index(0, 3).data().toString(), "left out");
  EXPECT_EQ(document.job().rolls[0].in_batch, InBatch::never);
  EXPECT_EQ(document.history().undoText(), "leave “moss 1” out of the batch");
  tick(0, true);
  EXPECT_EQ(document.job(), test::order_job());
  EXPECT_EQ(document.history().undoText(), "let the batch cut from “moss 1”");
  ASSERT_TRUE(sample::waited_for([&] { return !page.planner().is_busy(); }));
}

TEST_F(BatchPageTest, WhatLacksIsSaidAndCanBeTakenBack) {
  ASSERT_TRUE(show_answer());
  tick(2, false);  // the only printed cloth
  ASSERT_TRUE(sample::waited_for([&] { return !page.planner().is_busy(); }));
  EXPECT_TRUE(!page.view()->fault().isEmpty() || !page.view()->answer()->plan.shortfalls.empty());
  tick(2, true);
  EXPECT_TRUE(sample::waited_for([&] { return page.view()->fault().isEmpty() && !page.planner().is_busy(); }));
  EXPECT_TRUE(page.view()->answer()->plan.shortfalls.empty());
}

TEST_F(BatchPageTest, WithoutAnOrderItSaysWhatToDo) {
  Job job = test::order_job();
  job.order.lines.clear();
  job.products.clear();
  document.open(job, {});
  page.show();
  EXPECT_FALSE(page.planner().is_busy());
  EXPECT_TRUE(page.order_maker()->isVisible());
  page.order_maker()->click();
  EXPECT_EQ(document.job().order.lines.size(), 3u);
  EXPECT_EQ(document.history().undoText(), "make an order from the panels");
  EXPECT_FALSE(page.order_maker()->isVisible());
  ASSERT_TRUE(sample::waited_for([&] { return !page.planner().is_busy(); }));
}

TEST_F(BatchPageTest, WhatItIsPlannedFromStandsUnderTabs) {
  ASSERT_TRUE(show_answer());
  page.sides()->choose(page.sewing());
  EXPECT_TRUE(page.sewing()->isVisible());
  EXPECT_FALSE(page.order()->isVisible());
  page.sides()->tabs()->setCurrentIndex(0);
  EXPECT_TRUE(page.order()->isVisible());
}

TEST_F(BatchPageTest, MarkingAsCutIsOneStep) {
  ASSERT_TRUE(show_answer());
  QTimer::singleShot(0, [] {
    auto* dialog = qobject_cast<CutDialog*>(QApplication::activeModalWidget());
    ASSERT_TRUE(dialog);
    dialog->confirmer()->click();
  });
  const int steps = document.history().count();
  page.mark_as_cut();
  EXPECT_EQ(document.history().count(), steps + 1);
  EXPECT_TRUE(document.history().undoText().startsWith("mark "));
  EXPECT_FALSE(document.job().on_hand.empty());
  document.history().undo();
  EXPECT_EQ(document.job(), test::order_job());
  ASSERT_TRUE(sample::waited_for([&] { return !page.planner().is_busy(); }));
}

TEST_F(BatchPageTest, CopiesTheTableThatIsShown) {
  ASSERT_TRUE(show_answer());
  page.view()->choose(BatchTableKind::made);
  page.view()->copier()->click();
  const auto lines = QApplication::clipboard()->text().split('\n');
  EXPECT_EQ(lines[0], "product\tcloth\tpieces");
  EXPECT_EQ(lines.size(), page.view()->model()->rowCount() + 2);  // head, and the end of the last line
}

TEST_F(BatchPageTest, TimingAStepPlansNothingAnew) {
  ASSERT_TRUE(show_answer());
  const BatchPlan plan = page.view()->answer()->plan;
  Job job = document.job();
  job.products[0].sewing = {{"usual", {{"all", Duration::seconds(600)}}}};
  EXPECT_FALSE(document.edit(job, "steps"));
  EXPECT_FALSE(page.planner().is_busy());
  EXPECT_EQ(page.view()->answer()->job, job);
  EXPECT_EQ(page.view()->answer()->plan, plan);
  EXPECT_GT(page.view()->answer()->money.sewing, Duration());
  EXPECT_TRUE(page.view()->marker()->isEnabled());
}

TEST_F(BatchPageTest, ALayIsShownStackedAndKept) {
  ASSERT_TRUE(show_answer());
  EXPECT_TRUE(page.view()->keeper()->isHidden());
  page.view()->choose(BatchTableKind::lays);
  EXPECT_EQ(page.view()->chosen_lay(), 0);
  EXPECT_TRUE(page.view()->stack()->stack());
  EXPECT_FALSE(page.view()->stack()->accessibleDescription().isEmpty());
  page.view()->keeper()->click();
  EXPECT_FALSE(document.job().order.kept.empty());
  EXPECT_EQ(document.history().undoText(), "keep lay 1");
  EXPECT_EQ(page.hand()->kept()->model()->rowCount(), static_cast<int>(document.job().order.kept.size()));
  ASSERT_TRUE(sample::waited_for([&] { return !page.planner().is_busy(); }));
  EXPECT_EQ(page.view()->answer()->job, document.job());
  document.history().undo();
  EXPECT_EQ(document.job(), test::order_job());
  ASSERT_TRUE(sample::waited_for([&] { return !page.planner().is_busy(); }));
}

TEST_F(BatchPageTest, ARollCanBeMadeToBeCut) {
  ASSERT_TRUE(show_answer());
  page.view()->choose(BatchTableKind::rolls);
  page.view()->table()->setCurrentIndex(page.view()->model()->index(1, 0));
  page.view()->forcer()->click();
  EXPECT_EQ(document.job().rolls[1].in_batch, InBatch::must);
  EXPECT_EQ(page.view()->model()->index(1, 0).data().toString(), "moss 2, must be cut");
  ASSERT_TRUE(sample::waited_for([&] { return !page.planner().is_busy(); }));
  const auto& rolls = page.view()->answer()->plan.rolls;
  EXPECT_TRUE(std::any_of(rolls.begin(), rolls.end(), [](const Plan& roll) { return roll.roll == 1; }));
  EXPECT_TRUE(page.view()->forcer()->isChecked());
}

TEST_F(BatchPageTest, WritesPagesAsPicturesOneAFile) {
  ASSERT_TRUE(show_answer());
  QTemporaryDir folder;
  for (const char* ending : {"svg", "png"}) {
    EXPECT_TRUE(page.write_tickets_to(folder.filePath(QString("tickets.") + ending)));
    EXPECT_TRUE(QFile::exists(folder.filePath(QString("tickets-1.") + ending)));
    EXPECT_TRUE(QFile::exists(folder.filePath(QString("tickets-2.") + ending)));
  }
}

TEST_F(BatchPageTest, WritesTicketsAsPdf) {
  ASSERT_TRUE(show_answer());
  QTemporaryDir folder;
  EXPECT_TRUE(page.write_tickets_to(folder.filePath("tickets.pdf")));
  QFile file(folder.filePath("tickets.pdf"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
  EXPECT_FALSE(page.write_tickets_to(folder.filePath("no such folder/tickets.pdf")));
  EXPECT_FALSE(page.view()->fault().isEmpty());
}

TEST_F(BatchPageTest, EveryWidgetThatTakesTheFocusHasAName) {
  ASSERT_TRUE(show_answer());
  for (QWidget* widget : page.tab_order()) {
    const auto* button = qobject_cast<QPushButton*>(widget);
    EXPECT_FALSE(widget->accessibleName().isEmpty() && !(button && !button->text().isEmpty())) << widget->metaObject()->className();
  }
}

TEST_F(BatchPageTest, StandsOverEachOtherWhereItIsNarrow) {
  ASSERT_TRUE(show_answer());
  EXPECT_LT(page.sides()->geometry().right(), page.view()->parentWidget()->geometry().left());
  page.resize(640, 700);
  QApplication::processEvents();
  EXPECT_LT(page.sides()->geometry().bottom(), page.view()->parentWidget()->geometry().top());
}

}  // namespace
}  // namespace foldyard
