#include "fields/field_text.h"

#include <gtest/gtest.h>

#include "language/language.h"

#include "support/job_sample.h"

namespace foldyard {
namespace {

struct LengthRow {
  const char* name;
  const char* text;
  Unit unit;
  Length length;
};

const LengthRow kLengths[] = {
    {"with its unit", "450 mm", Unit::cm, Length::mm(450)},
    {"bare, centimetres", "45", Unit::cm, Length::mm(450)},
    {"bare, with spaces", "  45 ", Unit::cm, Length::mm(450)},
    {"bare, comma", "45,5", Unit::cm, Length::mm(455)},
    {"bare, inches and a fraction", "17 3/4", Unit::inch, Length::inches64(17 * 64 + 48)},
    {"bare, metres", "1.5", Unit::m, Length::mm(1500)},
    {"another unit than the job's", "18\"", Unit::cm, Length::inches64(18 * 64)},
};

TEST(TypedLength, IsReadInTheUnitOfTheJobIfItNamesNone) {
  for (const auto& row : kLengths) {
    const auto read = typed_length(QString::fromUtf8(row.text), row.unit);
    ASSERT_TRUE(read) << row.name;
    EXPECT_EQ(*read, row.length) << row.name;
  }
}

TEST(TypedLength, IsRefusedWithAReason) {
  for (const char* text : {"", "cm", "-5 cm", "1e3", "45 cm cm", "1/3 in", "nan", "1.234,5 mm"}) {
    const auto read = typed_length(QString::fromUtf8(text), Unit::cm);
    ASSERT_FALSE(read) << text;
    EXPECT_FALSE(read.problem().sentence().empty()) << text;
  }
}

TEST(LengthText, CanBeTypedAgain) {
  for (const auto unit : {Unit::mm, Unit::cm, Unit::m, Unit::inch, Unit::yard})
    for (const auto length : {Length::mm(1), Length::mm(455), Length::inches64(1), Length::units(1)}) {
      const auto again = typed_length(length_text(length, unit), unit);
      ASSERT_TRUE(again) << length_text(length, unit).toStdString();
      EXPECT_EQ(*again, length);
    }
}

TEST(TypedWorth, TakesPointAndComma) {
  EXPECT_EQ(*typed_worth("7.50"), Worth::parts(75000));
  EXPECT_EQ(*typed_worth("7,5"), Worth::parts(75000));
  for (const char* text : {"", "x", "-1", "1.23456", "1.2,3"}) EXPECT_FALSE(typed_worth(text)) << text;
}

TEST(TypedLimit, TakesAWholeNumberOrNothing) {
  EXPECT_EQ(*typed_limit(" 12 "), 12);
  EXPECT_EQ(*typed_limit(""), std::nullopt);
  for (const char* text : {"x", "-1", "1.5", "12 panels"}) {
    const auto read = typed_limit(text);
    ASSERT_FALSE(read) << text;
    EXPECT_FALSE(read.problem().next.empty());
  }
}

TEST(WorthText, CanBeTypedAgain) { EXPECT_EQ(worth_text(Worth::parts(75000)), "7.5"); }

TEST(Breakable, BreaksLongWordsOnly) {
  EXPECT_EQ(breakable("Log carrier"), "Log carrier");
  EXPECT_EQ(breakable("Rückenteile x"), "Rückenteile x");  // 11 letters
  EXPECT_EQ(breakable("Rückenteilbezug"), QStringLiteral("Rückentei\u200blbezug"));
}

TEST(ProblemText, NamesRollAndPanelByTheirNames) {
  const auto job = sample::job();
  EXPECT_EQ(problem_text({"rolls[1].width", "0 cm is no width", "give more"}, job),
            "Roll “Slate”, width: 0 cm is no width; give more.");
  EXPECT_EQ(problem_text({"panels[0].may_turn", "no", ""}, job), "Panel “Carrier”, may turn: no.");
  EXPECT_EQ(problem_text({"losses.fold_trim", "no", ""}, job), "losses, fold trim: no.");
  EXPECT_EQ(problem_text({"rolls[0].flaws[1].from", "no", ""}, job), "Roll “Moss”, flaws 2, from: no.");
  EXPECT_EQ(problem_text({"rolls[0].repeat.start_along", "no", ""}, job),
            "Roll “Moss”, repeat, start along: no.");
  EXPECT_EQ(problem_text({"order.lines[0].from[1]", "no", ""}, job), "order, lines 1, from 2: no.");
  EXPECT_EQ(problem_text({"", "no", ""}, job), "no.");
}

// In German a comma stands where English has the point; a point is read as well.
class FieldTextGermanTest : public testing::Test {
 protected:
  FieldTextGermanTest() { speak(QStringLiteral("de"), QLocale(QStringLiteral("de_DE"))); }
  ~FieldTextGermanTest() override { speak(QStringLiteral("en"), QLocale::c()); }
};

TEST_F(FieldTextGermanTest, ReadsWhatItShows) {
  for (const Length length : {Length::mm(1125), Length::mm(455), Length::units(1), Length::inches64(1136)})
    for (const Unit unit : {Unit::mm, Unit::cm, Unit::m, Unit::inch}) EXPECT_EQ(typed_length(length_text(length, unit), unit).value(), length);
  EXPECT_EQ(length_text(Length::mm(1125), Unit::m), "1,125 m");
  EXPECT_EQ(typed_length("1.125", Unit::m).value(), Length::mm(1125));
  EXPECT_EQ(worth_text(Worth::parts(75000)), "7,5");
  EXPECT_EQ(typed_worth("7,5").value(), Worth::parts(75000));
  EXPECT_EQ(typed_worth("7.5").value(), Worth::parts(75000));
}

TEST_F(FieldTextGermanTest, NamesThePlaceInGerman) {
  Job job;
  job.rolls.resize(1);
  job.rolls[0].name = "Leinen";
  EXPECT_EQ(problem_text({"rolls[0].width", "x", ""}, job), "Rolle „Leinen“, Breite: x.");
}

}  // namespace
}  // namespace foldyard
