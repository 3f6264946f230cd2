#include "cli/text_table.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

TEST(TextTable, PutsTheFirstColumnLeftAndTheOthersRight) {
  EXPECT_EQ(text_table({{"way", "cuts"}, {"open", "8"}}).toStdString(),
            "way   cuts\nopen     8\n");
}

TEST(TextTable, CountsCharactersNotBytes) {
  EXPECT_EQ(text_table({{QStringLiteral("× ü"), "1"}, {"abc", "2"}}).toStdString(),
            "× ü  1\nabc  2\n");
}

TEST(TextTable, LeavesNoBlanksAtTheEnd) {
  EXPECT_EQ(text_table({{"a", "b"}, {"c", ""}}).toStdString(), "a  b\nc\n");
  EXPECT_EQ(text_table({}).toStdString(), "");
}

}  // namespace
}  // namespace foldyard
