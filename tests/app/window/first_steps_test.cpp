#include "window/first_steps.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QMenuBar>
#include <QTemporaryDir>
#include <QTest>

#include "file/safe_write.h"
#include "file/write_job.h"
#include "sample.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

// What the plans say is no matter here.
Comparison made_up(const Question& question, Watch&) {
  auto comparison = sample::comparison(question);
  for (auto& way : comparison.ways)
    if (way.plan) way.plan->yield.resize(question.job.panels.size());
  return comparison;
}

class FirstStepsTest : public testing::Test {
 protected:
  FirstStepsTest()
      : places{folder.filePath("foldyard.ini"), folder.filePath("recovery")},
        window(made_up, places) {
    window.resize(1024, 740);
    window.show();
  }

  void wait() {
    ASSERT_TRUE(sample::waited_for([this] { return !window.planner().is_busy(); }));
    QCoreApplication::processEvents();
  }
  GuideStrip& strip() { return *window.first_steps()->strip(); }
  bool is_shown() { return strip().isVisible(); }

  QTemporaryDir folder;
  Places places;
  MainWindow window;
};

TEST_F(FirstStepsTest, TheFirstStartHasTheDemoAndAnEmptyTable) {
  window.start({});
  wait();
  EXPECT_TRUE(is_shown());
  EXPECT_GE(window.document().job().rolls.size(), 5u);
  EXPECT_EQ(window.plan_view()->plan(), nullptr);
  EXPECT_TRUE(window.plan_view()->answer()->text().contains("table is empty"));
  EXPECT_FALSE(window.way_tabs()->isVisible());
  for (int i = 0; i < GuideStrip::kSteps; ++i) EXPECT_FALSE(strip().is_ticked(static_cast<GuideStrip::Step>(i))) << i;
}

TEST_F(FirstStepsTest, EachStepIsTickedWhenItIsDone) {
  window.start({});
  QTest::keyClick(strip().step(GuideStrip::roll), Qt::Key_Space);
  wait();
  EXPECT_TRUE(window.way_tabs()->isVisible());
  EXPECT_NE(window.plan_view()->plan(), nullptr);
  EXPECT_TRUE(strip().is_ticked(GuideStrip::roll));
  EXPECT_FALSE(strip().is_ticked(GuideStrip::sewn));
  Job job = window.document().job();
  job.rolls[0].length = job.rolls[0].length + Length::mm(100);
  window.document().edit(job, "longer");
  EXPECT_FALSE(strip().is_ticked(GuideStrip::sewn));
  window.panel_table()->add_panel();
  EXPECT_TRUE(strip().is_ticked(GuideStrip::sewn));
  EXPECT_FALSE(strip().is_ticked(GuideStrip::printed));
  emit window.printed();
  EXPECT_TRUE(strip().is_done());
}

TEST_F(FirstStepsTest, ADiagramThatWasWrittenTicksTheLastStep) {
  MainWindow real(compare, places);
  real.document().open(sample::job(), {});
  ASSERT_TRUE(sample::waited_for([&] { return real.plan_view()->plan() != nullptr; }, 60000));
  const auto* steps = real.first_steps()->strip();
  EXPECT_FALSE(real.export_to(folder.filePath("none/d.pdf")));
  EXPECT_FALSE(steps->is_ticked(GuideStrip::printed));
  EXPECT_TRUE(real.export_to(folder.filePath("d.pdf")));
  EXPECT_TRUE(steps->is_ticked(GuideStrip::printed));
}

TEST_F(FirstStepsTest, ClosedTheyStayClosedUntilTheMenuShowsThem) {
  window.start({});
  QTest::keyClick(strip().closer(), Qt::Key_Space);
  EXPECT_FALSE(is_shown());
  MainWindow next(made_up, places);
  next.show();
  next.start({});
  EXPECT_FALSE(next.first_steps()->strip()->isVisible());
  ASSERT_TRUE(sample::waited_for([&] { return next.plan_view()->plan() != nullptr; }));  // the table is not empty
  for (auto* action : next.findChildren<QAction*>())
    if (action->text().remove('&') == "Show the first steps") action->trigger();
  EXPECT_TRUE(next.first_steps()->strip()->isVisible());
}

TEST_F(FirstStepsTest, AFileIsOpenedAsItIs) {
  const QString path = folder.filePath("a.json");
  ASSERT_FALSE(safe_write(path, write_job(sample::job())));
  window.start(path);
  wait();
  EXPECT_EQ(window.document().path(), path);
  EXPECT_NE(window.plan_view()->plan(), nullptr);
  EXPECT_TRUE(strip().is_ticked(GuideStrip::sewn));
}

TEST_F(FirstStepsTest, AFileThatCannotBeReadIsToldBesideTheDemo) {
  window.start(folder.filePath("none.json"));
  EXPECT_TRUE(window.notice().contains("none.json")) << window.notice().toStdString();
  EXPECT_GE(window.document().job().rolls.size(), 5u);
}

TEST_F(FirstStepsTest, FitsASmallScreenWithBothStrips) {
  window.start({});
  window.documents()->strip()->tell("a", QStringLiteral("The program ended without saving. It is back as it was. ").repeated(3));
  const auto least = window.minimumSizeHint();
  EXPECT_LE(least.width(), 1024);
  EXPECT_LE(least.height(), 740);
}

TEST_F(FirstStepsTest, RemembersItsPlaceAndColours) {
  window.documents()->settings().set_dark(true);
  window.resize(1100, 745);
  window.close();
  MainWindow next(made_up, places);
  EXPECT_EQ(shade_of(QApplication::palette()), Shade::dark);
  next.set_shade(Shade::light);
}

}  // namespace
}  // namespace foldyard
