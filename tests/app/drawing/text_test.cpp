#include "drawing/text.h"

#include <gtest/gtest.h>

#include <QFontDatabase>

namespace foldyard {
namespace {

const TextStyle kPlain{8, false, false, {}};

TEST(Text, TheFontIsReallyThere) {
  EXPECT_TRUE(font_is_ready());
  EXPECT_TRUE(QFontDatabase::families().contains(QStringLiteral("DejaVu Sans")));
}

TEST(Text, WidthGrowsWithThePoints) {
  const TextStyle twice{16, false, false, {}};
  EXPECT_NEAR(text_width("Selvedge", twice), 2 * text_width("Selvedge", kPlain), 1e-9);
}

TEST(Text, AnEmIsAsWideAsTheFontSays) {
  // DejaVu Sans: the em dash U+2014 is one em wide; 72 pt = 25.4 mm.
  EXPECT_NEAR(text_width(QString(QChar(0x2014)), {72, false, false, {}}), 25.4, 0.05);
}

TEST(Text, WrappedLinesFitAndLoseNothing) {
  const QString words =
      "Fold both sides in over the middle, then bring the near end over onto the far end.";
  for (double width : {20.0, 35.0, 80.0}) {
    const QStringList lines = wrapped(words, kPlain, width);
    for (const QString& line : lines) EXPECT_LE(text_width(line, kPlain), width);
    EXPECT_EQ(lines.join(' '), words);
  }
}

TEST(Text, AWordLongerThanALineIsBroken) {
  const QString word = "Armlehnenschutzdeckchenverlängerung";
  const QStringList lines = wrapped(word, kPlain, 15);
  EXPECT_GT(lines.size(), 2);
  EXPECT_EQ(lines.join(QString()), word);
  for (const QString& line : lines) EXPECT_LE(text_width(line, kPlain), 15);
}

TEST(Text, WrappingEndsWhereNothingFits) {
  EXPECT_EQ(wrapped("abc", kPlain, 0.1).size(), 3);
  EXPECT_TRUE(wrapped("", kPlain, 10).isEmpty());
}

TEST(Text, ElidedTextFits) {
  EXPECT_EQ(elided("Tie", kPlain, 50), "Tie");
  const QString short_one = elided("Seat cushion top with welt allowance", kPlain, 20);
  EXPECT_LE(text_width(short_one, kPlain), 20.1);
  EXPECT_TRUE(short_one.endsWith(QChar(0x2026)));
}

}  // namespace
}  // namespace foldyard
