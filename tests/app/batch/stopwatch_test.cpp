#include "batch/stopwatch.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "batch/watch_row.h"

namespace foldyard {
namespace {

TEST(Stopwatch, CountsFromItsStartAndFromEachLap) {
  std::int64_t now = 1'000;
  Stopwatch watch([&now] { return now; });
  EXPECT_EQ(watch.elapsed(), Duration());
  watch.start();
  now = 3'500;
  EXPECT_EQ(watch.elapsed(), Duration::ms(2'500));
  EXPECT_EQ(watch.lap(), Duration::ms(2'500));
  now = 3'600;
  EXPECT_EQ(watch.elapsed(), Duration::ms(100));
  watch.stop();
  EXPECT_FALSE(watch.is_running());
}

TEST(Stopwatch, RunsByTheSystemsClockByItself) {
  Stopwatch watch;
  watch.start();
  EXPECT_GE(watch.elapsed(), Duration());
}

TEST(WatchRow, SaysWhatIsTimed) {
  std::int64_t now = 0;
  WatchRow row([&now] { return now; });
  EXPECT_FALSE(row.starter()->isEnabled());
  row.start_or_stop();
  EXPECT_FALSE(row.is_running());
  row.set_timed("“edges”");
  EXPECT_EQ(row.words(), "Next: “edges”");
  row.starter()->click();
  EXPECT_EQ(row.words(), "Timing “edges”");
  EXPECT_EQ(row.starter()->text(), "Stop");
  EXPECT_EQ(row.starter()->shortcut(), QKeySequence(Qt::Key_F7));
  now = 12'340;
  QSignalSpy laps(&row, &WatchRow::lapped);
  row.lapper()->click();
  ASSERT_EQ(laps.count(), 1);
  EXPECT_EQ(laps[0][0].value<Duration>(), Duration::ms(12'340));
  row.starter()->click();
  EXPECT_FALSE(row.lapper()->isEnabled());
  row.lap();
  EXPECT_EQ(laps.count(), 1);
}

TEST(WatchRow, StopsWhenNothingCanBeTimed) {
  WatchRow row;
  row.set_timed("“edges”");
  row.start_or_stop();
  row.set_timed({});
  EXPECT_FALSE(row.is_running());
  EXPECT_EQ(row.words(), "Choose a step to time it.");
}

}  // namespace
}  // namespace foldyard
