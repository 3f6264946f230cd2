#include "printing/print_form.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "print_source.h"

namespace foldyard {
namespace {

class PrintFormTest : public testing::Test {
 protected:
  PrintSource source = samples::source(samples::both_edges_in());
  PrintForm form{source, Paper::a4};
};

TEST_F(PrintFormTest, BeginsWithTheWholeDiagram) {
  const SheetOptions options = form.options();
  EXPECT_EQ(options.paper, Paper::a4);
  EXPECT_TRUE(options.diagram && options.comparison && !options.landscape);
  EXPECT_EQ(options.patterns->size(), source.plan().patterns.size());
  EXPECT_TRUE(options.templates.empty());
  EXPECT_EQ(options.unit, source.job.unit);
  EXPECT_FALSE(form.problem());
}

TEST_F(PrintFormTest, EveryChoiceChangesTheOptions) {
  QSignalSpy changed(&form, &PrintForm::options_changed);
  form.paper()->setCurrentIndex(form.paper()->findText(QStringLiteral("Tabloid")));
  form.turn()->setCurrentIndex(1);
  form.unit()->setCurrentIndex(3);
  form.comparison()->setChecked(false);
  form.patterns()->item(0)->setCheckState(Qt::Unchecked);
  form.templates()->item(0)->setCheckState(Qt::Checked);
  EXPECT_EQ(changed.count(), 6);
  SheetOptions expected{Paper::tabloid, true};
  expected.comparison = false;
  expected.unit = Unit::inch;
  expected.patterns = {1};
  expected.templates = {0};
  EXPECT_EQ(form.options(), expected);
}

TEST_F(PrintFormTest, SaysHowManyPagesATemplateTakesOnThisPaper) {
  const QString on_a4 = form.templates()->item(0)->text();
  EXPECT_TRUE(on_a4.startsWith("P1 ") && on_a4.endsWith("pages")) << on_a4.toStdString();
  form.paper()->setCurrentIndex(form.paper()->findText(QStringLiteral("A3")));
  EXPECT_NE(form.templates()->item(0)->text(), on_a4);
}

TEST_F(PrintFormTest, LeavesATemplateOfTooManyPagesOutAndSaysSo) {
  source.job.panels[0].across = Length::mm(1400);
  source.job.panels[0].along = Length::mm(2500);
  form.templates()->item(0)->setCheckState(Qt::Checked);
  EXPECT_TRUE(form.options().templates.empty());
  ASSERT_TRUE(form.problem());
  EXPECT_NE(form.problem()->sentence().find("60 is the most"), std::string::npos);
}

TEST_F(PrintFormTest, SaysSoWhereNothingIsLeft) {
  form.diagram()->setChecked(false);
  ASSERT_TRUE(form.problem());
  EXPECT_FALSE(form.patterns()->isEnabled());
}

TEST_F(PrintFormTest, TheRangeFollowsTheLastPageUntilItIsSet) {
  form.set_pages(5);
  EXPECT_EQ(form.range(), (PageRange{0, 4}));
  form.set_pages(8);
  EXPECT_EQ(form.range(), (PageRange{0, 7}));
  form.last()->setValue(3);
  form.first()->setValue(2);
  form.set_pages(20);
  EXPECT_EQ(form.range(), (PageRange{1, 2}));
  EXPECT_EQ(form.first()->maximum(), 3);
  form.set_pages(2);
  EXPECT_EQ(form.range(), (PageRange{1, 1}));
}

}  // namespace
}  // namespace foldyard
