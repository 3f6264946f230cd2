#include "file/csv.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

using Rows = std::vector<QStringList>;

Rows read(const char* text) {
  const auto rows = read_csv(text);
  EXPECT_TRUE(rows) << rows.problem().sentence();
  return rows ? *rows : Rows();
}

// The examples of RFC 4180, section 2, rules 1 to 7.
TEST(Csv, ReadsTheExamplesOfTheStandard) {
  EXPECT_EQ(read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(read("aaa,bbb,ccc\r\nzzz,yyy,xxx"), (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"), (Rows{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
  EXPECT_EQ(read("\"aaa\",\"b\"\"bb\",\"ccc\""), (Rows{{"aaa", "b\"bb", "ccc"}}));
}

TEST(Csv, ReadsWhatSpreadsheetsWrite) {
  EXPECT_EQ(read("\xef\xbb\xbfroll;left\nMoss;3,2 m\n"), (Rows{{"roll", "left"}, {"Moss", "3,2 m"}}));
  EXPECT_EQ(read("roll\tleft\nMoss\t\n"), (Rows{{"roll", "left"}, {"Moss", ""}}));
  EXPECT_EQ(read("a,b\n,\n"), (Rows{{"a", "b"}, {"", ""}}));
  EXPECT_EQ(read("a,"), (Rows{{"a", ""}}));
  EXPECT_EQ(read(""), Rows());
}

TEST(Csv, RefusesQuotesThatDoNotClose) {
  EXPECT_EQ(read_csv("a,b\n\"c,d\n").problem().sentence(),
            "line 2: a quote is not closed; write the table out again from the spreadsheet as CSV.");
  EXPECT_EQ(read_csv("a,\"b\"c\n").problem().sentence(),
            "line 1: a quote stands within a field; write the table out again from the spreadsheet as CSV.");
}

TEST(Csv, WritesEveryRecordWithAsManyFields) {
  EXPECT_EQ(csv_text({{"roll", "left"}, {"Moss, 1", "3.2 m"}, {"say \"so\""}}),
            "roll,left\r\n\"Moss, 1\",3.2 m\r\n\"say \"\"so\"\"\",\r\n");
}

TEST(Csv, GivesASpreadsheetNoFormula) {
  EXPECT_EQ(csv_text({{"=1+1", "-3.5", "+a", "@b", "-"}}), " =1+1,-3.5, +a, @b, -\r\n");
}

TEST(Csv, ReadsBackWhatItWrites) {
  const Rows rows = {{"a,b", "c\"d", "e\nf", "g\r\nh"}, {"", "ä – ×", " ", "1"}};
  EXPECT_EQ(*read_csv(csv_text(rows)), rows);
}

}  // namespace
}  // namespace foldyard
