#include "window/own_roll_dialog.h"

#include <gtest/gtest.h>

#include <QLayout>
#include <QTest>

#include "job/check_job.h"

namespace foldyard {
namespace {

class OwnRollDialogTest : public testing::Test {
 protected:
  void type(LengthField* field, const QString& text) {
    field->line()->selectAll();
    QTest::keyClicks(field->line(), text);
  }
  void choose(const char* key) { dialog.goods()->setCurrentIndex(dialog.goods()->findData(QString::fromLatin1(key))); }

  OwnRollDialog dialog{Unit::cm};
};

TEST_F(OwnRollDialogTest, CanBeConfirmedAtOnce) {
  EXPECT_TRUE(dialog.confirmer()->isEnabled());
  EXPECT_FALSE(check_job(dialog.job()));
  EXPECT_EQ(dialog.width_field()->line()->text(), "150 cm");
  EXPECT_EQ(dialog.length_field()->line()->text(), "10 m");
}

TEST_F(OwnRollDialogTest, TakesSizesAsPeopleWriteThem) {
  type(dialog.width_field(), "54 in");
  type(dialog.length_field(), "8,5");
  choose("pouch");
  const Job job = dialog.job();
  EXPECT_EQ(job.rolls[0].fabric.width, Length::inches64(54 * 64));
  EXPECT_EQ(job.rolls[0].length, Length::mm(8500));
  EXPECT_TRUE(dialog.confirmer()->isEnabled());
  dialog.show();
  QTest::keyClick(dialog.length_field()->line(), Qt::Key_Return);
  EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

TEST_F(OwnRollDialogTest, ReturnDoesNothingWhileItCannotBeConfirmed) {
  type(dialog.width_field(), "wide");
  dialog.show();
  QTest::keyClick(dialog.width_field()->line(), Qt::Key_Return);
  EXPECT_TRUE(dialog.isVisible());
}

TEST_F(OwnRollDialogTest, CannotBeConfirmedWithTextThatIsNoLength) {
  type(dialog.width_field(), "wide");
  EXPECT_FALSE(dialog.confirmer()->isEnabled());
  EXPECT_FALSE(dialog.width_field()->reason().isEmpty());
  type(dialog.width_field(), "150");
  EXPECT_TRUE(dialog.confirmer()->isEnabled());
}

TEST_F(OwnRollDialogTest, GrowsForWordsOfSeveralLines) {
  dialog.show();
  dialog.resize(dialog.minimumSizeHint());
  type(dialog.width_field(), "99999999999999999999999999999999 cm and no length at all, however one reads it");
  QTest::keyClick(dialog.width_field()->line(), Qt::Key_Tab);
  QCoreApplication::processEvents();
  EXPECT_GE(dialog.height(), dialog.layout()->totalHeightForWidth(dialog.width()));
}

TEST_F(OwnRollDialogTest, SaysWhyTheGoodsDoNotFit) {
  type(dialog.width_field(), "20 cm");
  choose("tote");
  EXPECT_FALSE(dialog.confirmer()->isEnabled());
  EXPECT_FALSE(dialog.reason().isEmpty());
  EXPECT_FALSE(dialog.reason().contains('[')) << dialog.reason().toStdString();
  type(dialog.width_field(), "150 cm");
  EXPECT_TRUE(dialog.reason().isEmpty());
}

TEST_F(OwnRollDialogTest, SpeaksOfYardsWhereTheyAreUsed) {
  const OwnRollDialog inches(Unit::inch);
  EXPECT_EQ(inches.width_field()->line()->text(), "54 in");
  EXPECT_EQ(inches.length_field()->line()->text(), "10 yd");
  EXPECT_EQ(inches.job().unit, Unit::inch);
}

}  // namespace
}  // namespace foldyard
