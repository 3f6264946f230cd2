#include "shelf/roll_dialog.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QTest>

#include <set>

#include "job/check_job.h"
#include "shelf_sample.h"
#include "type_length.h"

namespace foldyard {
namespace {

void put(FlawTable* flaws, int row, int column, const QString& text) {
  flaws->model()->setData(flaws->model()->index(row, column), text, Qt::EditRole);
}

TEST(RollDialog, ShowsAllOfTheRoll) {
  RollDialog dialog(sample::shelf_job(), 2);
  EXPECT_EQ(dialog.name()->text(), "Fern");
  EXPECT_EQ(dialog.field("width")->line()->text(), "150 cm");
  EXPECT_EQ(dialog.field("repeat.along")->line()->text(), "32 cm");
  EXPECT_EQ(dialog.field("repeat.start_across")->line()->text(), "0 cm");
  EXPECT_TRUE(dialog.one_way()->isChecked());
  EXPECT_TRUE(dialog.railroaded()->isChecked());
  EXPECT_TRUE(dialog.symmetric()->isChecked());
  EXPECT_DOUBLE_EQ(dialog.shrinks_along()->value(), 3.0);
  EXPECT_EQ(dialog.edited_job(), sample::shelf_job());
  EXPECT_TRUE(dialog.ok()->isEnabled());
}

TEST(RollDialog, TakesEveryFieldAsItIsTyped) {
  RollDialog dialog(sample::shelf_job(), 0);
  dialog.name()->clear();
  QTest::keyClicks(dialog.name(), "  Heather ");
  sample::type(dialog.field("width"), "1.42 m");
  sample::type(dialog.field("length"), "12 1/2 yd");
  sample::type(dialog.field("selvedge"), "1.5");
  sample::type(dialog.field("thickness"), "0.9 mm");
  sample::type(dialog.field("repeat.along"), "64 cm");
  sample::type(dialog.field("repeat.start_along"), "10 cm");
  sample::type(dialog.field("repeat.across"), "35.5 cm");
  sample::type(dialog.field("repeat.start_across"), "1 in");
  dialog.one_way()->click();
  dialog.railroaded()->click();
  dialog.symmetric()->click();
  dialog.shrinks_along()->setValue(2.75);
  dialog.shrinks_across()->setValue(1);
  dialog.colours()->swatches()[0]->click();
  Job expected = sample::shelf_job();
  Roll& roll = expected.rolls[0];
  roll.name = "Heather";
  roll.length = Length::inches64(450 * 64);  // 12.5 × 36 in
  roll.fabric = {Length::mm(1420), Length::mm(15), Length::units(288), Nap::one_way, dialog.colours()->colour().toStdString(),
                 {Length::mm(640), Length::mm(355), Length::mm(100), Length::inches64(64), true}, true, {275, 100}};
  EXPECT_EQ(dialog.edited_job(), expected);
  EXPECT_FALSE(check_job(expected));
  EXPECT_TRUE(dialog.ok()->isEnabled());
}

TEST(RollDialog, AProblemStandsBesideItsFieldAndHoldsTheDialog) {
  struct Row {
    const char* key;
    const char* bad;
    const char* good;
  };
  RollDialog dialog(sample::shelf_job(), 0);
  for (const Row& row : {Row{"width", "wide", "150 cm"}, Row{"selvedge", "80 cm", "1 cm"}, Row{"thickness", "9 m", "1 mm"},
                         Row{"repeat.start_along", "10 cm", "0 cm"}}) {
    sample::type(dialog.field(row.key), row.bad);
    EXPECT_FALSE(dialog.field(row.key)->reason().isEmpty()) << row.key;
    EXPECT_FALSE(dialog.ok()->isEnabled()) << row.key;
    sample::type(dialog.field(row.key), row.good);
    EXPECT_TRUE(dialog.field(row.key)->reason().isEmpty()) << row.key;
    EXPECT_TRUE(dialog.ok()->isEnabled()) << row.key;
  }
}

TEST(RollDialog, TwoRollsDoNotBearOneName) {
  RollDialog dialog(sample::shelf_job(), 0);
  for (const char* name : {"Slate", " "}) {
    dialog.name()->clear();
    QTest::keyClicks(dialog.name(), name);
    EXPECT_FALSE(dialog.ok()->isEnabled()) << name;
    EXPECT_FALSE(dialog.name_reason()->text().isEmpty()) << name;
  }
}

// A panel that fits no roll any more is no field of the roll.
TEST(RollDialog, WhatBelongsToNoFieldStandsAtTheFoot) {
  Job job = sample::job();
  job.rolls.pop_back();
  RollDialog dialog(job, 0);
  sample::type(dialog.field("width"), "20 cm");
  EXPECT_FALSE(dialog.ok()->isEnabled());
  EXPECT_TRUE(dialog.reason()->text().contains("Carrier")) << dialog.reason()->text().toStdString();
}

TEST(RollDialog, FlawsAreAddedEditedAndPutInOrder) {
  RollDialog dialog(sample::shelf_job(), 3);
  FlawTable* flaws = dialog.flaws();
  flaws->adder()->click();
  ASSERT_EQ(flaws->model()->rowCount(), 3);
  EXPECT_TRUE(dialog.ok()->isEnabled());
  put(flaws, 2, FlawModel::from, "20 cm");
  put(flaws, 2, FlawModel::to, "0.25 m");
  put(flaws, 2, FlawModel::left, "5");
  put(flaws, 2, FlawModel::right, "12 cm");
  put(flaws, 2, FlawModel::kind, "oil stain");
  const auto edited = dialog.edited_job().rolls[3].flaws;
  ASSERT_EQ(edited.size(), 3u);
  EXPECT_EQ(edited[0], (Flaw{{Length::mm(200), Length::mm(250)}, {Length::mm(50), Length::mm(120)}, "oil stain"}));
  EXPECT_FALSE(check_job(dialog.edited_job()));
  flaws->view()->setCurrentIndex(flaws->model()->index(0, 0));
  flaws->taker()->click();
  EXPECT_EQ(dialog.edited_job().rolls[3].flaws.size(), 2u);
}

TEST(RollDialog, AFlawBeyondTheClothIsTold) {
  RollDialog dialog(sample::shelf_job(), 3);
  FlawTable* flaws = dialog.flaws();
  put(flaws, 1, FlawModel::to, "70 m");
  EXPECT_FALSE(dialog.ok()->isEnabled());
  EXPECT_TRUE(flaws->reason()->text().startsWith("Flaw 2:")) << flaws->reason()->text().toStdString();
  put(flaws, 1, FlawModel::to, "far");
  EXPECT_FALSE(dialog.ok()->isEnabled());
  put(flaws, 1, FlawModel::to, "3.3 m");
  EXPECT_TRUE(dialog.ok()->isEnabled());
  EXPECT_TRUE(flaws->reason()->text().isEmpty());
}

// A join goes over the whole width whatever it is.
TEST(RollDialog, AFlawOverTheWholeWidthGoesWithTheWidth) {
  RollDialog dialog(sample::shelf_job(), 3);
  sample::type(dialog.field("width"), "130 cm");
  EXPECT_EQ(dialog.edited_job().rolls[3].flaws[0].across, (Span{Length(), Length::mm(1300)}));
  EXPECT_TRUE(dialog.ok()->isEnabled());
}

// On the way to 145 cm the width is 14 cm for a moment, as wide as the flaw.
TEST(RollDialog, AFlawIsNotWidenedByAWidthOnTheWay) {
  Job job = sample::shelf_job();
  const Flaw narrow{{Length::mm(500), Length::mm(520)}, {Length(), Length::mm(140)}, "edge"};
  job.rolls[3].flaws.insert(job.rolls[3].flaws.begin(), narrow);
  RollDialog dialog(job, 3);
  sample::type(dialog.field("width"), "145 cm");
  const auto flaws = dialog.edited_job().rolls[3].flaws;
  EXPECT_EQ(flaws[0], narrow);
  EXPECT_EQ(flaws[1].across, (Span{Length(), Length::mm(1450)}));
  EXPECT_EQ(flaws[2], job.rolls[3].flaws[2]);
}

TEST(RollDialog, ALengthTypedForAMeasuredRollIsTheOneFound) {
  RollDialog dialog(sample::shelf_job(), 4);
  sample::type(dialog.field("length"), "35.2 m");
  EXPECT_TRUE(dialog.edited_job().rolls[4].is_found);
  EXPECT_EQ(dialog.edited_job().rolls[4].length, Length::mm(35'200));
  EXPECT_TRUE(dialog.ok()->isEnabled());
}

TEST(RollDialog, NamesEveryFieldAndUsesEveryLetterOnce) {
  RollDialog dialog(sample::shelf_job(), 3);
  dialog.show();
  for (auto* widget : dialog.findChildren<QWidget*>()) {
    if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisibleTo(&dialog) || widget->objectName().startsWith("qt_")) continue;
    auto* seen = QAccessible::queryAccessibleInterface(widget);
    ASSERT_NE(seen, nullptr);
    EXPECT_FALSE(seen->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
  }
  std::set<QChar> letters;
  const auto take = [&](const QString& text) {
    const int at = text.indexOf(QLatin1Char('&'));
    if (at < 0) return;
    EXPECT_TRUE(letters.insert(text.at(at + 1).toLower()).second) << text.toStdString();
  };
  for (auto* button : dialog.findChildren<QAbstractButton*>()) take(button->text());
  for (auto* label : dialog.findChildren<QLabel*>())
    if (label->buddy()) take(label->text());
}

TEST(ColourChoice, OffersItsOwnColoursAndAnyOther) {
  ColourChoice choice;
  std::vector<QString> chosen;
  QObject::connect(&choice, &ColourChoice::chosen, [&](const QString& colour) { chosen.push_back(colour); });
  choice.show_colour("#123456");
  for (auto* swatch : choice.swatches()) EXPECT_FALSE(swatch->isChecked());
  EXPECT_TRUE(choice.other()->text().contains("#123456"));
  choice.swatches()[3]->click();
  EXPECT_TRUE(choice.swatches()[3]->isChecked());
  choice.set_asker([](const QString&) { return std::optional<QString>("#abcdef"); });
  choice.other()->click();
  choice.set_asker([](const QString&) { return std::nullopt; });
  choice.other()->click();
  ASSERT_EQ(chosen.size(), 2u);
  EXPECT_EQ(chosen[1], "#abcdef");
  EXPECT_EQ(choice.colour(), "#abcdef");
}

}  // namespace
}  // namespace foldyard
