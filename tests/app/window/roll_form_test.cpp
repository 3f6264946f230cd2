#include "window/roll_form.h"

#include <gtest/gtest.h>

#include <QTest>

#include "sample.h"

namespace foldyard {
namespace {

class RollFormTest : public testing::Test {
 protected:
  RollFormTest() { document.open(sample::job(), {}); }

  void type(int field, const QString& text) {
    form.field(field)->line()->selectAll();
    QTest::keyClicks(form.field(field)->line(), text);
    QTest::keyClick(form.field(field)->line(), Qt::Key_Return);
  }
  QString shown(int field) { return form.field(field)->line()->text(); }

  Document document;
  RollForm form{document};
};

TEST_F(RollFormTest, ShowsTheNumbersOfTheChosenRoll) {
  form.choose(1);
  EXPECT_EQ(shown(0), "140 cm");
  EXPECT_EQ(shown(1), "5 m");
  EXPECT_EQ(shown(2), "1 cm");
  EXPECT_EQ(shown(3), "1 mm");
  EXPECT_TRUE(form.chooser()->currentText().contains("Slate"));
}

TEST_F(RollFormTest, TypesIntoTheChosenRollOnly) {
  form.choose(1);
  type(1, "6.5");  // metres
  EXPECT_EQ(document.job().rolls[1].length, Length::mm(6500));
  EXPECT_EQ(document.job().rolls[0].length, Length::mm(5000));
  EXPECT_EQ(shown(1), "6.5 m");
  form.one_way()->click();
  EXPECT_EQ(document.job().rolls[1].fabric.nap, Nap::one_way);
  EXPECT_EQ(document.history().count(), 2);
}

TEST_F(RollFormTest, TwoVisitsOfAFieldAreTwoSteps) {
  type(1, "6 m");
  type(1, "7 m");
  EXPECT_EQ(document.history().count(), 2);
  document.history().undo();
  EXPECT_EQ(shown(1), "6 m");
}

TEST_F(RollFormTest, TellsWhatTheJobRefuses) {
  type(0, "1 cm");  // narrower than every panel, but the other roll takes them
  type(2, "80 cm");
  EXPECT_FALSE(form.field(2)->reason().isEmpty());
  EXPECT_EQ(shown(2), "80 cm");
}

TEST_F(RollFormTest, AnotherRollDropsRefusedText) {
  type(0, "wide");
  EXPECT_FALSE(form.field(0)->reason().isEmpty());
  form.choose(1);
  EXPECT_TRUE(form.field(0)->reason().isEmpty());
  EXPECT_EQ(shown(0), "140 cm");
}

TEST_F(RollFormTest, AJobWithFewerRollsShowsItsFirst) {
  form.choose(1);
  Job job = sample::job();
  job.rolls.pop_back();
  document.open(job, {});
  EXPECT_EQ(form.roll(), 0);
  EXPECT_EQ(shown(0), "150 cm");
}

}  // namespace
}  // namespace foldyard
