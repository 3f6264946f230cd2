#include "language/in_english.h"

#include <gtest/gtest.h>

#include "language/language.h"
#include "language/local_numbers.h"
#include "language/spoken.h"

namespace foldyard {
namespace {

TEST(InEnglish, SpeaksEnglishForAsLongAsItLives) {
  speak(QStringLiteral("de"), QLocale::c());
  {
    const InEnglish english;
    EXPECT_EQ(spoken(say("no panel fits")), "no panel fits");
    EXPECT_EQ(local_number(1.5, 1), "1.5");
  }
  EXPECT_EQ(spoken(say("no panel fits")), "kein Teil passt");
  EXPECT_EQ(local_number(1.5, 1), "1,5");
  speak(QStringLiteral("en"), QLocale::c());
}

}  // namespace
}  // namespace foldyard
