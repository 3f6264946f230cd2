#include "language/heading_words.h"

#include <gtest/gtest.h>

#include "language/language.h"

namespace foldyard {
namespace {

TEST(HeadingWords, AreSmallExceptInGerman) {
  EXPECT_EQ(heading_words("At most"), "at most");
  speak("de", QLocale("de_CH"));
  EXPECT_EQ(heading_words("Im Bruch"), "Im Bruch");
  speak("en", QLocale::c());
}

}  // namespace
}  // namespace foldyard
