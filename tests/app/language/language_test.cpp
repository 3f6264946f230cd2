#include "language/language.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>

namespace foldyard {
namespace {

QString undo_words() { return QCoreApplication::translate("foldyard::MainWindow", "&Undo"); }

class LanguageTest : public testing::Test {
 protected:
  ~LanguageTest() override { speak("en", QLocale::c()); }
};

TEST_F(LanguageTest, HasItsCataloguesBuiltIn) {
  for (const QString& code : languages())
    for (const char* name : {"window_", "pages_"})
      EXPECT_TRUE(QFile::exists(QStringLiteral(":/languages/") + name + code + ".qm")) << name << code.toStdString();
}

TEST_F(LanguageTest, IsNamedByItsOwnName) {
  EXPECT_EQ(languages().front(), "en");
  EXPECT_EQ(language_name("en"), "English");
  EXPECT_EQ(language_name("de"), "Deutsch");
}

TEST_F(LanguageTest, IsTheChosenOneElseTheSystemsElseEnglish) {
  EXPECT_EQ(language_for("en", QLocale("de_AT")), "en");
  EXPECT_EQ(language_for("de", QLocale("fr_FR")), "de");
  EXPECT_EQ(language_for("", QLocale("de_AT")), "de");
  EXPECT_EQ(language_for("", QLocale("fr_FR")), "en");
  EXPECT_EQ(language_for("", QLocale::c()), "en");
  EXPECT_EQ(language_for("xx", QLocale("de_DE")), "de");
}

TEST_F(LanguageTest, WritesNumbersAsTheSystemDoesWhereItSpeaksTheLanguage) {
  speak("de", QLocale("de_AT"));
  EXPECT_EQ(QLocale().name(), "de_AT");
  speak("de", QLocale("en_US"));
  EXPECT_EQ(QLocale().decimalPoint(), ",");
  speak("en", QLocale("de_DE"));
  EXPECT_EQ(QLocale().decimalPoint(), ".");
  speak("en", QLocale::c());
  EXPECT_EQ(QLocale(), QLocale::c());
}

TEST_F(LanguageTest, BeginsAndEndsWithItsWords) {
  EXPECT_EQ(undo_words(), "&Undo");
  speak("de", QLocale("de_DE"));
  EXPECT_EQ(undo_words(), "&Rückgängig");
  speak("en", QLocale("de_DE"));
  EXPECT_EQ(undo_words(), "&Undo");
}

TEST_F(LanguageTest, TellsOneTextInAnotherLanguage) {
  EXPECT_EQ(in_language("de", "foldyard::MainWindow", "&Undo"), "&Rückgängig");
  EXPECT_EQ(in_language("en", "foldyard::MainWindow", "&Undo"), "&Undo");
  EXPECT_EQ(in_language("de", "foldyard::MainWindow", "no such text"), "no such text");
}

}  // namespace
}  // namespace foldyard
