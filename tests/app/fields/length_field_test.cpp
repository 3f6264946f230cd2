#include "fields/length_field.h"

#include <gtest/gtest.h>

#include <QTest>


namespace foldyard {
namespace {

class LengthFieldTest : public testing::Test {
 protected:
  LengthFieldTest() {
    field.show_length(Length::mm(1500), Unit::cm);
    QObject::connect(&field, &LengthField::typed, [this](Length length) { typed.push_back(length); });
    field.show();
    field.activateWindow();
    field.line()->setFocus();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&field));
  }

  void type(const QString& text) {
    field.line()->selectAll();
    QTest::keyClicks(field.line(), text);
  }

  QLabel* reason_label() { return field.findChild<QLabel*>(); }

  LengthField field{"Width"};
  std::vector<Length> typed;
};

TEST_F(LengthFieldTest, GivesOutEachTextThatIsALength) {
  type("160 mm");
  // "1", "16" and "160" are centimetres, "160 m" metres, "160 mm" what was meant.
  ASSERT_FALSE(typed.empty());
  EXPECT_EQ(typed.back(), Length::mm(160));
  EXPECT_TRUE(field.reason().isEmpty());
}

TEST_F(LengthFieldTest, MarksWhatIsNoLengthAndKeepsIt) {
  type("wide");
  EXPECT_TRUE(typed.empty());
  EXPECT_FALSE(field.reason().isEmpty());
  QTest::keyClick(field.line(), Qt::Key_Return);
  EXPECT_EQ(field.line()->text(), "wide");
  EXPECT_TRUE(field.line()->property("refused").toBool());
  EXPECT_FALSE(reason_label()->isHidden());
  EXPECT_EQ(field.line()->accessibleDescription(), field.reason());
}

TEST_F(LengthFieldTest, TellsTheReasonAfterAWhileOfCalm) {
  type("160 m m");
  EXPECT_TRUE(reason_label()->isHidden());
  EXPECT_TRUE(QTest::qWaitFor([this] { return !reason_label()->isHidden(); }, 3000));
}

TEST_F(LengthFieldTest, EscapeTakesTheJobsValueBack) {
  type("wide");
  QTest::keyClick(field.line(), Qt::Key_Escape);
  EXPECT_EQ(field.line()->text(), "150 cm");
  EXPECT_TRUE(field.reason().isEmpty());
}

TEST_F(LengthFieldTest, EscapeTakesBackWhatWasTypedAndTakenOnTheWay) {
  type("90 x");
  field.show_length(Length::mm(900), Unit::cm);  // "90" was taken
  QTest::keyClick(field.line(), Qt::Key_Escape);
  EXPECT_EQ(field.line()->text(), "150 cm");
  EXPECT_EQ(typed.back(), Length::mm(1500));
}

TEST_F(LengthFieldTest, LeavingRewritesAGoodText) {
  type("160");
  field.show_length(typed.back(), Unit::cm);  // as the job would
  EXPECT_EQ(field.line()->text(), "160");     // not while it is typed
  QTest::keyClick(field.line(), Qt::Key_Return);
  EXPECT_EQ(field.line()->text(), "160 cm");
}

TEST_F(LengthFieldTest, ANewValueOfTheJobIsShown) {
  type("wide");
  field.show_length(Length::mm(1400), Unit::cm);
  EXPECT_EQ(field.line()->text(), "140 cm");
  EXPECT_TRUE(field.reason().isEmpty());
}

TEST_F(LengthFieldTest, TheOldValueDoesNotWriteOverARefusedText) {
  type("wide");
  field.show_length(Length::mm(1500), Unit::cm);
  EXPECT_EQ(field.line()->text(), "wide");
}

}  // namespace
}  // namespace foldyard
