#include "fields/duration_text.h"

#include <gtest/gtest.h>

#include "language/language.h"

namespace foldyard {
namespace {

struct Typed {
  const char* text;
  std::int64_t ms;  // −1: refused
};

// A minute is 60 s by definition (SI brochure, 9th edition, table 8).
TEST(DurationText, ReadsWhatPeopleWrite) {
  for (const Typed& each : {Typed{"1:50", 110'000}, Typed{"0:09.5", 9'500}, Typed{" 12:00 ", 720'000}, Typed{"90 s", 90'000},
                            Typed{"90s", 90'000}, Typed{"1.5", 90'000}, Typed{"1,5 min", 90'000}, Typed{"2", 120'000},
                            Typed{"0.125 s", 125}, Typed{"1:60", -1}, Typed{"", -1}, Typed{"soon", -1}, Typed{"-1", -1},
                            Typed{"1.00001", -1}, Typed{"1:05.1234", -1}, Typed{"999999", -1}}) {
    const auto read = typed_duration(each.text);
    EXPECT_EQ(bool(read), each.ms >= 0) << each.text;
    if (read) { EXPECT_EQ(*read, Duration::ms(each.ms)) << each.text; }
  }
}

TEST(DurationText, WritesWhatItReadsAgain) {
  for (const std::int64_t ms : {0, 1, 10, 9'500, 59'999, 60'000, 110'000, 3'725'250}) {
    const QString text = duration_text(Duration::ms(ms));
    EXPECT_EQ(*typed_duration(text), Duration::ms(ms)) << text.toStdString();
  }
  EXPECT_EQ(duration_text(Duration::seconds(110)), "1:50");
  EXPECT_EQ(duration_text(Duration::ms(9'050)), "0:09.05");
  EXPECT_EQ(watch_text(Duration::ms(69'980)), "1:09.9");
}

TEST(DurationText, SaysWhatToWrite) {
  EXPECT_EQ(typed_duration("soon").problem().sentence(), "“soon” is not a time; write minutes and seconds such as 1:50, or 90 s.");
}

TEST(DurationText, HasACommaInGerman) {
  speak(QStringLiteral("de"), QLocale(QStringLiteral("de_DE")));
  EXPECT_EQ(duration_text(Duration::ms(9500)), "0:09,5");
  EXPECT_EQ(typed_duration("0:09,5").value(), Duration::ms(9500));
  EXPECT_EQ(typed_duration("0:09.5").value(), Duration::ms(9500));
  speak(QStringLiteral("en"), QLocale::c());
}

}  // namespace
}  // namespace foldyard
