#include "shelf/roll_words.h"

#include <gtest/gtest.h>

#include "shelf_sample.h"

namespace foldyard {
namespace {

struct LengthCase {
  const char* name;
  int roll;
  Unit unit;
  const char* words;
};

// Estimated 31.14 to 42.09 m, most likely 36.05 m: outwards to 10 cm, the likely
// one to the nearest. In yards, to quarters: 34.06, 39.43, 46.03.
const LengthCase kLengths[] = {
    {"known", 0, Unit::cm, "5 m"},
    {"estimated", 4, Unit::cm, "about 36 m (31.1 to 42.1 m)"},
    {"estimated, in yards", 4, Unit::yard, "about 39 yd 18 in (34 yd to 46 yd 9 in)"},
};

TEST(RollWords, SaysALengthAsItIsKnown) {
  const Job job = sample::shelf_job();
  for (const LengthCase& c : kLengths)
    EXPECT_EQ(roll_length_words(job.rolls[static_cast<std::size_t>(c.roll)], c.unit).toStdString(), c.words) << c.name;
}

TEST(RollWords, SaysALengthThatWasFoundAsKnown) {
  Roll roll = sample::shelf_job().rolls[4];
  roll.is_found = true;
  roll.length = Length::mm(33'900);
  EXPECT_EQ(roll_length_words(roll, Unit::cm), "33.9 m");
  EXPECT_TRUE(roll_text(roll, Unit::cm, false).contains("found"));
}

TEST(RollWords, NamesAllThatIsSpecialInOneText) {
  const Job job = sample::shelf_job();
  EXPECT_EQ(roll_text(job.rolls[2], Unit::cm, true).toStdString(),
            "Fern: 150 cm wide, 5 m long; on the table; one-way nap; railroaded; repeats every 32 cm along and 16 cm "
            "across, symmetric; shrinks 3 % along.");
  EXPECT_EQ(roll_text(job.rolls[3], Unit::cm, false).toStdString(), "Rust: 140 cm wide, 5 m long; 2 flaws.");
  EXPECT_TRUE(roll_text(job.rolls[4], Unit::cm, false).contains("estimated"));
}

TEST(RollWords, APlainRollHasNoMarks) {
  EXPECT_TRUE(roll_marks(sample::shelf_job().rolls[0]).empty());
  EXPECT_EQ(roll_marks(sample::shelf_job().rolls[2]).size(), 4u);
  EXPECT_EQ(roll_marks(sample::shelf_job().rolls[3]), std::vector<RollMark>{RollMark::flaws});
}

TEST(RollWords, FindsEveryTypedWordInWhateverCaseAndOrder) {
  const auto text = QStringLiteral("Canvas, moss: 150 cm wide; one-way nap.");
  for (const char* typed : {"", "  ", "moss", "ONE-WAY canvas", "nap 150"}) EXPECT_TRUE(has_words(text, typed)) << typed;
  for (const char* typed : {"rust", "moss rust", "no flaws"}) EXPECT_FALSE(has_words(text, typed)) << typed;
}

}  // namespace
}  // namespace foldyard
