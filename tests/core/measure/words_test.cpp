#include "measure/words.h"

#include <gtest/gtest.h>

#include <sstream>

#include "measure/result.h"

using namespace foldyard;

TEST(Words, PlainTextHasNoPattern) {
  const Words name = "moss 1";
  EXPECT_EQ(name.english(), "moss 1");
  EXPECT_EQ(name.pattern(), nullptr);
  EXPECT_TRUE(name.parts().empty());
  EXPECT_FALSE(name.is_number());
  EXPECT_TRUE(Words().empty());
}

TEST(Words, SayPutsEachPartInItsPlace) {
  const Words words = say("%2 before %1, and %2 again", "late", "early");
  EXPECT_EQ(words, "early before late, and early again");
  EXPECT_STREQ(words.pattern(), "%2 before %1, and %2 again");
  ASSERT_EQ(words.parts().size(), 2u);
  EXPECT_EQ(words.parts()[0], "late");
}

TEST(Words, ACountStandsAtItsOwnPlace) {
  EXPECT_EQ(say("%n plies of %2", 12, Words::number("1.5 mm")), "12 plies of 1.5 mm");
  EXPECT_TRUE(say("%n plies", 12).parts()[0].is_number());
}

// A part that looks like a place is not filled again.
TEST(Words, PartsStandAsTheyAre) {
  EXPECT_EQ(say("%1 and %2", "%2", "100 %1"), "%2 and 100 %1");
}

TEST(Words, APercentSignWithoutAPartStays) {
  EXPECT_EQ(say("%1 % of %3", 7), "7 % of %3");
  EXPECT_EQ(say("%n %"), "%n %");
  EXPECT_EQ(say("%0 %a", 1), "%0 %a");
}

TEST(Words, MayBeMadeOfWords) {
  const Words words = say("%1; %2", say("the roll %1 is bare", "moss"), "measure it");
  EXPECT_EQ(words, "the roll moss is bare; measure it");
  EXPECT_STREQ(words.parts()[0].pattern(), "the roll %1 is bare");
}

TEST(Words, AreComparedAndWrittenByTheirEnglish) {
  EXPECT_EQ(say("%1 cm", 3), Words("3 cm"));
  EXPECT_NE(say("%1 cm", 3), std::string("4 cm"));
  std::ostringstream out;
  out << say("%1 cm", 3);
  EXPECT_EQ(out.str(), "3 cm");
  EXPECT_EQ("at " + say("%1 cm", 3) + ".", std::string("at 3 cm."));
}

TEST(Words, OfAProblemMakeItsSentence) {
  const Problem problem{"rolls[2].width", say("%1 is not a width", Words::number("0 mm")), say("give more than zero")};
  EXPECT_EQ(problem.sentence(), "rolls[2].width: 0 mm is not a width; give more than zero.");
  EXPECT_EQ((Problem{"", say("it is empty"), ""}.sentence()), "it is empty.");
}
