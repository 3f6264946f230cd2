#include "window/planner.h"

#include <gtest/gtest.h>

#include <QSemaphore>
#include <QThread>

#include <stdexcept>
#include <vector>

#include "sample.h"

namespace foldyard {
namespace {

TEST(Planner, AnswersWithTheJobThatWasAsked) {
  Planner planner(sample::comparison);
  AnswerPtr answer;
  QObject::connect(&planner, &Planner::answered, [&](const AnswerPtr& a) { answer = a; });
  planner.ask(sample::question(1));
  EXPECT_TRUE(planner.is_busy());
  ASSERT_TRUE(sample::waited_for([&] { return answer != nullptr; }));
  EXPECT_FALSE(planner.is_busy());
  EXPECT_EQ(answer->comparison.roll, 1);
  EXPECT_EQ(answer->job, sample::job());
}

TEST(Planner, TheLatestQuestionWins) {
  QSemaphore gate;
  std::atomic<int> runs = 0;
  std::vector<int> answered;
  {
    Planner planner([&](const Question& asked, const std::atomic<bool>&) {
      ++runs;
      gate.acquire();
      return sample::comparison(asked);
    });
    QObject::connect(&planner, &Planner::answered,
                     [&](const AnswerPtr& a) { answered.push_back(a->comparison.roll); });
    for (const int roll : {0, 1, 2, 3}) planner.ask(sample::question(roll));
    gate.release(10);
    ASSERT_TRUE(sample::waited_for([&] { return !answered.empty(); }));
  }
  EXPECT_EQ(answered, std::vector<int>{3});
  EXPECT_EQ(runs, 2);  // the first, which had begun, and the last
}

TEST(Planner, PlansOnAnotherThread) {
  std::atomic<QThread*> thread = nullptr;
  Planner planner([&](const Question& asked, const std::atomic<bool>&) {
    thread = QThread::currentThread();
    return sample::comparison(asked);
  });
  planner.ask(sample::question(0));
  ASSERT_TRUE(sample::waited_for([&] { return !planner.is_busy(); }));
  EXPECT_NE(thread.load(), QThread::currentThread());
}

TEST(Planner, StopsWhatIsNoLongerAskedFor) {
  std::atomic<int> stopped_runs = 0;
  std::vector<int> answered;
  Planner planner([&](const Question& asked, const std::atomic<bool>& stopped) {
    // The first plans until it is stopped.
    while (asked.roll == 0 && !stopped) QThread::msleep(1);
    stopped_runs += stopped;
    return sample::comparison(asked);
  });
  QObject::connect(&planner, &Planner::answered,
                   [&](const AnswerPtr& a) { answered.push_back(a->comparison.roll); });
  planner.ask(sample::question(0));
  planner.ask(sample::question(1));
  ASSERT_TRUE(sample::waited_for([&] { return !planner.is_busy(); }));
  EXPECT_EQ(answered, std::vector<int>{1});
  EXPECT_EQ(stopped_runs, 1);  // and the second ran to its end
}

// The person who stops it wants the answer; a newer question does not.
TEST(Planner, GivesWhatItHasWhenItIsStopped) {
  std::atomic<bool> unwanted = true;
  Planner planner([&](const Question& asked, Watch& watch) {
    while (!watch.stopped) QThread::msleep(1);
    unwanted = watch.unwanted.load();
    return sample::comparison(asked);
  });
  AnswerPtr answer;
  QObject::connect(&planner, &Planner::answered, [&](const AnswerPtr& a) { answer = a; });
  planner.ask(sample::question(1));
  planner.stop();
  ASSERT_TRUE(sample::waited_for([&] { return answer != nullptr; }));
  EXPECT_EQ(answer->comparison.roll, 1);
  EXPECT_FALSE(unwanted);
}

TEST(Planner, TellsAFault) {
  Planner planner([](const Question&, const std::atomic<bool>&) -> Comparison { throw std::runtime_error("too little memory"); });
  QString reason;
  QObject::connect(&planner, &Planner::failed, [&](const QString& r) { reason = r; });
  planner.ask(sample::question(0));
  ASSERT_TRUE(sample::waited_for([&] { return !reason.isEmpty(); }));
  EXPECT_TRUE(reason.contains("too little memory")) << reason.toStdString();
  EXPECT_FALSE(planner.is_busy());
}

TEST(Planner, IsLeftWhileItWorks) {
  Planner planner(sample::comparison);
  planner.ask(sample::question(0));
}

}  // namespace
}  // namespace foldyard
