#include "language/local_numbers.h"

#include <gtest/gtest.h>

#include "language/language.h"

namespace foldyard {
namespace {

class LocalNumbersTest : public testing::Test {
 protected:
  LocalNumbersTest() { speak("de", QLocale("de_DE")); }
  ~LocalNumbersTest() override { speak("en", QLocale::c()); }
};

TEST_F(LocalNumbersTest, HaveTheSignOfTheLanguageBetweenDigits) {
  EXPECT_EQ(local_numbers("12.5 cm × 1.8 m"), "12,5 cm × 1,8 m");
  EXPECT_EQ(local_numbers("17 3/4 in. 2."), "17 3/4 in. 2.");
  EXPECT_EQ(local_numbers("1.2.3"), "1,2,3");
  EXPECT_EQ(local_numbers(""), "");
}

TEST_F(LocalNumbersTest, AreReadWithEitherSign) {
  EXPECT_EQ(plain_numbers("1,125 m"), "1.125 m");
  EXPECT_EQ(plain_numbers("1.125 m"), "1.125 m");
  EXPECT_EQ(plain_numbers("1, 2"), "1, 2");
}

TEST_F(LocalNumbersTest, ComeFromANumber) {
  EXPECT_EQ(local_number(94.44, 1), "94,4");
  EXPECT_EQ(local_number(12345, 0), "12345");
}

TEST(PlainNumbersTest, AreTheSameInEnglish) {
  EXPECT_EQ(local_numbers("12.5 cm"), "12.5 cm");
  EXPECT_EQ(plain_numbers("1,125 m"), "1,125 m");
  EXPECT_EQ(local_number(94.44, 1), "94.4");
}

}  // namespace
}  // namespace foldyard
