#include "window/busy_row.h"

#include <gtest/gtest.h>

#include <QSemaphore>
#include <QThread>

#include "sample.h"

namespace foldyard {
namespace {

TEST(BusyRow, ShowsHowManyWaysAreDoneAndStops) {
  Planner planner([](const Question& asked, Watch& watch) {
    watch.progress.begin(26);
    watch.progress.done = 7;
    while (!watch.stopped) QThread::msleep(1);
    return sample::comparison(asked);
  });
  BusyRow row(planner);
  AnswerPtr answer;
  QObject::connect(&planner, &Planner::answered, [&](const AnswerPtr& a) { answer = a; });
  planner.ask(sample::question());
  EXPECT_TRUE(row.isHidden()) << "not at once";
  ASSERT_TRUE(sample::waited_for([&] { return !row.isHidden(); }));
  EXPECT_EQ(row.words(), QStringLiteral("Planning: 7 of 26 fold ways done"));
  row.stopper()->click();
  EXPECT_FALSE(row.stopper()->isEnabled());
  ASSERT_TRUE(sample::waited_for([&] { return answer != nullptr; }));
  EXPECT_TRUE(row.isHidden());
}

TEST(BusyRow, StaysHiddenForAPlanThatIsThereSoon) {
  Planner planner(sample::comparison);
  BusyRow row(planner);
  bool shown = false;
  planner.ask(sample::question());
  ASSERT_TRUE(sample::waited_for([&] {
    shown = shown || !row.isHidden();
    return !planner.is_busy();
  }));
  QThread::msleep(300);
  EXPECT_TRUE(sample::waited_for([&] { return row.isHidden(); }));
  EXPECT_FALSE(shown);
}

}  // namespace
}  // namespace foldyard
