#include "shelf/roll_form.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QTest>
#include <QTimer>

#include "cloth/length_estimate.h"
#include "shelf/shelf.h"
#include "support/job_sample.h"

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
  Shelf shelf{document};
  RollForm& form{*shelf.form()};
};

TEST_F(RollFormTest, ShowsTheNumbersOfTheChosenRoll) {
  shelf.choose(1);
  EXPECT_EQ(shown(0), "140 cm");
  EXPECT_EQ(shown(1), "5 m");
  EXPECT_EQ(shown(2), "1 cm");
  EXPECT_EQ(shown(3), "1 mm");
}

TEST_F(RollFormTest, TypesIntoTheChosenRollOnly) {
  shelf.choose(1);
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
  shelf.choose(1);
  EXPECT_TRUE(form.field(0)->reason().isEmpty());
  EXPECT_EQ(shown(0), "140 cm");
}

TEST_F(RollFormTest, AJobWithFewerRollsShowsItsFirst) {
  shelf.choose(1);
  Job job = sample::job();
  job.rolls.pop_back();
  document.open(job, {});
  EXPECT_EQ(form.roll(), 0);
  EXPECT_EQ(shown(0), "150 cm");
}

// Accepts or rejects the dialog that the button opens.
void measure(RollForm& form, bool accept) {
  QTimer::singleShot(0, &form, [accept] {
    auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(dialog, nullptr);
    accept ? dialog->accept() : dialog->reject();
  });
  form.measure()->click();
}

TEST_F(RollFormTest, MeasuresARollInOneStep) {
  measure(form, true);
  EXPECT_EQ(document.history().count(), 1);
  const Roll& roll = document.job().rolls[0];
  ASSERT_TRUE(roll.measured);
  EXPECT_FALSE(roll.is_found);
  EXPECT_TRUE(form.length_note()->text().startsWith("Estimated"));
  document.history().undo();
  EXPECT_EQ(document.job(), sample::job());
  EXPECT_TRUE(form.length_note()->text().isEmpty());
}

TEST_F(RollFormTest, RejectedMeasuresChangeNothing) {
  measure(form, false);
  EXPECT_EQ(document.history().count(), 0);
}

TEST_F(RollFormTest, TakesALengthTypedForAMeasuredRollAsFound) {
  measure(form, true);
  type(1, "24 m");
  EXPECT_TRUE(document.job().rolls[0].is_found);
  EXPECT_EQ(document.job().rolls[0].length, Length::mm(24'000));
  EXPECT_TRUE(document.job().rolls[0].measured);
  EXPECT_TRUE(form.length_note()->text().startsWith("Found"));
}

// By weight the length goes with the width: half as wide, twice as long.
TEST_F(RollFormTest, KeepsTheEstimateOfARollThatChangesItsWidth) {
  Job job = sample::job();
  job.rolls[0].measured = ByWeight{{18'500, 0}, {500, 0}, {4000, 0}};
  job.rolls[0].length = Length::mm(30'000);
  document.open(job, {});
  type(0, "75 cm");
  EXPECT_EQ(document.job().rolls[0].length, Length::mm(60'000));
}

// On the way to 145 cm the width is 14 cm for a moment, as wide as the flaw.
TEST_F(RollFormTest, DoesNotWidenAFlawByAWidthOnTheWay) {
  Job job = sample::job();
  const Flaw narrow{{Length::mm(500), Length::mm(520)}, {Length(), Length::mm(140)}, "edge"};
  job.rolls[0].flaws = {narrow};
  document.open(job, {});
  type(0, "145 cm");
  EXPECT_EQ(document.job().rolls[0].fabric.width, Length::mm(1450));
  EXPECT_EQ(document.job().rolls[0].flaws, std::vector<Flaw>{narrow});
  EXPECT_EQ(document.history().count(), 1);
}

// The field shows a whole centimetre, and leaving it so changes nothing.
TEST_F(RollFormTest, ShowsAnEstimatedLengthRounded) {
  Job job = sample::job();
  job.rolls[0].measured = ByWeight{{2'450, 30}, {0, 0}, {3'500, 0}};
  job.rolls[0].length = estimate(*job.rolls[0].measured, Length::mm(1500)).value().least;
  document.open(job, {});
  EXPECT_EQ(shown(1), "4.6 m");  // 2420 g of 350 g/m², 1.5 m wide: 4.6095 m
  form.field(1)->line()->setFocus();
  QTest::keyClick(form.field(1)->line(), Qt::Key_Escape);
  EXPECT_EQ(document.job(), job);
}

}  // namespace
}  // namespace foldyard
