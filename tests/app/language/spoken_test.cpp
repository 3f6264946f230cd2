#include "language/spoken.h"

#include <gtest/gtest.h>

#include <QCoreApplication>

#include "language/language.h"

namespace foldyard {
namespace {

std::string in_german(const Words& words) { return spoken(words).toStdString(); }

class SpokenTest : public testing::Test {
 protected:
  void SetUp() override { speak(QStringLiteral("de"), QLocale::c()); }
  void TearDown() override { speak(QStringLiteral("en"), QLocale::c()); }
};

TEST_F(SpokenTest, APatternIsSaidInTheLanguageWithItsParts) {
  EXPECT_EQ(in_german(say("no panel fits")), "kein Teil passt");
  EXPECT_EQ(in_german(say("%1 is longer than a full roll of \"%2\"", Words::number("60.5 m"), "Borte 2.5")),
            "60,5 m ist länger als eine volle Rolle „Borte 2.5“");
}

TEST_F(SpokenTest, PartsAreSaidToo) {
  EXPECT_EQ(in_german(say("%1, end to end", say("in thirds"))), "in Dritteln, Ende auf Ende");
}

TEST_F(SpokenTest, ACountChoosesItsForm) {
  EXPECT_EQ(in_german(say("the list has %n entries", 1)), "die Liste hat 1 Eintrag");
  EXPECT_EQ(in_german(say("the list has %n entries", 201)), "die Liste hat 201 Einträge");
}

TEST_F(SpokenTest, NamesAndFieldsStayAsTheyAre) {
  EXPECT_EQ(in_german("rolls[2].width"), "rolls[2].width");
  EXPECT_EQ(in_german(say("no roll is called \"%1\"", "100 %1 2.5")), "keine Rolle heißt „100 %1 2.5“");
}

TEST_F(SpokenTest, WhatHasNoTranslationStaysEnglish) {
  const char* unknown = "nobody %1 this";  // not in to_say(): no catalogue has it
  EXPECT_EQ(in_german(Words::made(unknown, {Words("translated")})), "nobody translated this");
}

TEST_F(SpokenTest, AProblemIsOneSentence) {
  const Problem problem{"rolls[0].width", say("%1 is too large", Words::number("12.5 m")),
                        say("give %1", say("1 cm to 10 m"))};
  EXPECT_EQ(spoken(problem).toStdString(), "rolls[0].width: 12,5 m ist zu groß; 1 cm bis 10 m angeben.");
  EXPECT_EQ(spoken(Problem{"", say("no panel fits"), ""}).toStdString(), "kein Teil passt.");
}

TEST_F(SpokenTest, InEnglishItIsWhatCoreSays) {
  speak(QStringLiteral("en"), QLocale::c());
  for (const Words& words : {say("the list has %n entries", 1), say("%1, end to end", say("in thirds")),
                             Words("moss 1"), say("%1 is too small", Words::number("0.5 mm"))})
    EXPECT_EQ(spoken(words).toStdString(), words.english());
  const Problem problem{"rolls[0].width", say("%1 is too large", Words::number("12.5 m")), say("give 0 or more")};
  EXPECT_EQ(spoken(problem).toStdString(), problem.sentence());
}

}  // namespace
}  // namespace foldyard
