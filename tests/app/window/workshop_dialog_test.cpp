#include "window/workshop_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QTest>
#include <QTimer>

#include "job/defaults.h"
#include "sample.h"

namespace foldyard {
namespace {

class WorkshopDialogTest : public testing::Test {
 protected:
  void type(const QString& key, const QString& text) {
    auto* line = dialog.length(key)->line();
    line->selectAll();
    QTest::keyClicks(line, text);
  }

  WorkshopDialog dialog{sample::job()};
};

TEST_F(WorkshopDialogTest, ChangesNothingByBeingShown) {
  EXPECT_EQ(dialog.job(), sample::job());
  EXPECT_TRUE(dialog.ok()->isEnabled());
  EXPECT_EQ(dialog.length("table.length")->line()->text(), "250 cm");
  EXPECT_EQ(dialog.length("cutter.height")->line()->text(), "25 mm");
  EXPECT_EQ(dialog.number("pace.unroll")->text(), "120 s");
}

TEST_F(WorkshopDialogTest, OpensHighEnoughToBeRead) { EXPECT_GT(dialog.height(), 500); }

// Each key of the table of defaults that is none of a roll or a panel, nor of sewing.
TEST_F(WorkshopDialogTest, HasAFieldForEveryDefaultOfTheWorkshop) {
  std::size_t fields = 0;
  for (const Default& each : defaults()) {
    if (each.key.find("[]") != std::string_view::npos || each.key == "table.both_sides") continue;
    if (each.key.substr(0, 8) == "notions." || each.key == "sitting") continue;
    const auto key = QString::fromUtf8(each.key.data(), static_cast<qsizetype>(each.key.size()));
    bool found = false;
    for (const auto& length : workshop_lengths()) found = found || key == QLatin1String(length.key);
    for (const auto& number : workshop_numbers()) found = found || key == QLatin1String(number.key);
    EXPECT_TRUE(found) << each.key;
    fields += found;
  }
  EXPECT_EQ(fields, workshop_lengths().size() + workshop_numbers().size());
}

// Every field is set to another value, and only its own value changes.
TEST_F(WorkshopDialogTest, PutsEachFieldIntoTheJob) {
  for (const auto& each : workshop_lengths()) {
    WorkshopDialog fresh(sample::job());
    auto* line = fresh.length(each.key)->line();
    line->selectAll();
    QTest::keyClicks(line, "77 mm");
    Job expected = sample::job();
    each.of(expected) = Length::mm(77);
    EXPECT_EQ(fresh.job(), expected) << each.key;
  }
  for (const auto& each : workshop_numbers()) {
    WorkshopDialog fresh(sample::job());
    auto* box = fresh.number(each.key);
    const double least = box->minimum() + box->singleStep();
    box->setValue(least);
    Job expected = sample::job();
    each.set(expected, std::llround(least * std::pow(10, each.places)));
    EXPECT_NE(fresh.job(), sample::job()) << each.key;
    EXPECT_EQ(fresh.job(), expected) << each.key;
  }
}

TEST_F(WorkshopDialogTest, TakesThePartsOfASecond) {
  dialog.number("pace.handle")->setValue(3.125);
  EXPECT_EQ(dialog.job().pace.handle, Duration::ms(3125));
  EXPECT_EQ(dialog.number("pace.handle")->text().remove(' '), "3.125s");
}

TEST_F(WorkshopDialogTest, SaysWhatIsAssumedUntilItIsChanged) {
  EXPECT_EQ(dialog.note("pace.fold"), "Assumed: time your own");
  dialog.number("pace.fold")->setValue(25);
  EXPECT_TRUE(dialog.note("pace.fold").isEmpty());
  EXPECT_TRUE(dialog.note("table.depth").isEmpty());  // its default has a source
  EXPECT_FALSE(dialog.note("table.both_sides").isEmpty());
  dialog.both_sides()->click();
  EXPECT_TRUE(dialog.note("table.both_sides").isEmpty());
  EXPECT_FALSE(dialog.job().table.both_sides);
}

TEST_F(WorkshopDialogTest, ShowsAFaultBesideItsField) {
  type("table.length", "5 cm");  // at least 10 cm
  EXPECT_FALSE(dialog.ok()->isEnabled());
  EXPECT_TRUE(dialog.length("table.length")->reason().contains("10 cm to 1 km"))
      << dialog.length("table.length")->reason().toStdString();
  type("table.length", "wide");
  EXPECT_FALSE(dialog.ok()->isEnabled());
  type("table.length", "3 m");
  EXPECT_TRUE(dialog.ok()->isEnabled());
  EXPECT_EQ(dialog.job().table.length, Length::mm(3000));
}

// The cloth of the sample is 1 mm thick.
TEST_F(WorkshopDialogTest, ShowsAtTheFootWhatIsAboutARoll) {
  Job thick = sample::job();
  thick.rolls[0].fabric.thickness = Length::mm(4);
  WorkshopDialog other(thick);
  auto* line = other.length("cutter.height")->line();
  line->selectAll();
  QTest::keyClicks(line, "3 mm");
  EXPECT_FALSE(other.ok()->isEnabled());
  EXPECT_FALSE(other.reason()->text().isEmpty() && other.length("cutter.height")->reason().isEmpty());
}

TEST_F(WorkshopDialogTest, CautionsForTheCuttersHeight) {
  EXPECT_TRUE(dialog.caution()->text().contains("stack of 2.5 cm")) << dialog.caution()->text().toStdString();
  type("cutter.height", "30 mm");
  EXPECT_TRUE(dialog.caution()->text().contains("stack of 3 cm"));
  EXPECT_TRUE(dialog.caution()->text().contains("Never cut a stack above the rated height."));
}

TEST_F(WorkshopDialogTest, ShowsTheUnitThatIsChosen) {
  dialog.unit()->setCurrentText("in");
  EXPECT_EQ(dialog.job().unit, Unit::inch);
  EXPECT_EQ(dialog.job().table, sample::job().table);
  EXPECT_NE(dialog.length("table.length")->line()->text(), "250 cm");
}

TEST_F(WorkshopDialogTest, RefusesANameThatIsTooLong) {
  dialog.name()->selectAll();
  QTest::keyClicks(dialog.name(), QString(81, 'x'));
  EXPECT_FALSE(dialog.ok()->isEnabled());
  EXPECT_FALSE(dialog.name_reason()->text().isEmpty());
}

TEST(AskWorkshop, IsOneStepOfTheHistory) {
  Document document;
  document.open(sample::job(), {});
  QTimer::singleShot(0, [] {
    auto* dialog = qobject_cast<WorkshopDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(dialog, nullptr);
    dialog->number("pace.fold")->setValue(25);
    dialog->number("pace.lift")->setValue(70);
    dialog->accept();
  });
  ask_workshop(document, nullptr);
  EXPECT_EQ(document.job().pace.fold, Duration::seconds(25));
  EXPECT_EQ(document.job().pace.lift, Duration::seconds(70));
  EXPECT_EQ(document.history().count(), 1);
  EXPECT_EQ(document.history().undoText(), "change the workshop");
  document.history().undo();
  EXPECT_EQ(document.job(), sample::job());
}

}  // namespace
}  // namespace foldyard
