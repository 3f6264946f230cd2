#include "fields/progress_row.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

WatchedWork seventh_of_ten(int& stops) {
  return {[] { return std::pair(7, 10); },
          [](int done, int all) { return QStringLiteral("%1 of %2").arg(done).arg(all); }, [&] { ++stops; }};
}

TEST(ProgressRow, ShowsAtOnceWhereItNeedNotWait) {
  int stops = 0;
  ProgressRow row(seventh_of_ten(stops), 0);
  EXPECT_TRUE(row.isHidden());
  row.take_busy(true);
  EXPECT_FALSE(row.isHidden());
  EXPECT_EQ(row.words(), QStringLiteral("7 of 10"));
  row.take_busy(false);
  EXPECT_TRUE(row.isHidden());
}

TEST(ProgressRow, StopsTheWorkOnceAndCanDoSoTheNextTime) {
  int stops = 0;
  ProgressRow row(seventh_of_ten(stops), 0);
  row.take_busy(true);
  row.stopper()->click();
  row.stopper()->click();
  EXPECT_EQ(stops, 1);
  EXPECT_FALSE(row.stopper()->isEnabled());
  row.take_busy(true);
  EXPECT_TRUE(row.stopper()->isEnabled());
}

}  // namespace
}  // namespace foldyard
