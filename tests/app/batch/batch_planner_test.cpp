#include "batch/batch_planner.h"

#include <gtest/gtest.h>

#include <QThread>

#include <stdexcept>

#include "batch_sample.h"
#include "inspect/inspect_batch.h"

namespace foldyard {
namespace {

// What a planner says, in order.
struct Heard {
  explicit Heard(BatchPlanner& planner) {
    QObject::connect(&planner, &BatchPlanner::found, [this](const BatchAnswerPtr& a) { found.push_back(a); });
    QObject::connect(&planner, &BatchPlanner::answered, [this](const BatchAnswerPtr& a) { answers.push_back(a); });
    QObject::connect(&planner, &BatchPlanner::failed, [this](const QString& reason) { reasons << reason; });
  }
  std::vector<BatchAnswerPtr> found;
  std::vector<BatchAnswerPtr> answers;
  QStringList reasons;
};

TEST(BatchPlanner, TellsBetterPlansAndThenTheAnswer) {
  BatchPlanner planner(sample::quick_plan);
  Heard heard(planner);
  planner.ask(test::order_job());
  EXPECT_TRUE(planner.is_busy());
  ASSERT_TRUE(sample::waited_for([&] { return !heard.answers.empty(); }));
  EXPECT_FALSE(planner.is_busy());
  ASSERT_FALSE(heard.found.empty());
  EXPECT_EQ(heard.found.back()->plan.rolls, heard.answers[0]->plan.rolls);
  EXPECT_TRUE(inspect_batch(test::order_job(), heard.answers[0]->plan).empty());
}

TEST(BatchPlanner, CutsNothingFromARollThatIsLeftOut) {
  Job job = test::order_job();
  job.rolls[0].in_batch = InBatch::never;
  const auto plan = sample::quick_plan(job, {});
  ASSERT_TRUE(plan);
  EXPECT_TRUE(inspect_batch(job, *plan).empty());
  for (const Plan& roll : plan->rolls) EXPECT_NE(roll.roll, 0);
}

TEST(BatchPlanner, SaysWhyItIsRefused) {
  Job job = test::order_job();
  for (Roll& roll : job.rolls) roll.in_batch = InBatch::never;
  const auto none = plan_order(job, {});
  ASSERT_FALSE(none);
  EXPECT_FALSE(none.problem().sentence().empty());
  job = test::order_job();
  job.order.lines[1].from = {"velvet"};  // which no roll has
  const auto unserved = plan_order(job, {});
  EXPECT_EQ(unserved.problem().where, "Line 2, “pouch”, from 1");
}

TEST(BatchPlanner, TheLatestQuestionWins) {
  std::atomic<int> runs = 0;
  BatchPlanner planner([&](const Job& job, BatchBudget budget) {
    if (++runs == 1) {
      while (!budget.is_cancelled()) QThread::msleep(1);
      budget.found(BatchPlan{});
    }
    return sample::quick_plan(job, budget);
  });
  Heard heard(planner);
  Job asked = test::order_job();
  planner.ask(asked);
  asked.order.lines[0].must = 2;
  planner.ask(asked);
  ASSERT_TRUE(sample::waited_for([&] { return !planner.is_busy(); }));
  ASSERT_EQ(heard.answers.size(), 1u);
  EXPECT_EQ(heard.answers[0]->job, asked);
  for (const auto& found : heard.found) EXPECT_EQ(found->job, asked);
}

TEST(BatchPlanner, GivesWhatItHasWhenItIsStopped) {
  BatchPlanner planner([](const Job& job, BatchBudget budget) {
    while (!budget.is_cancelled()) QThread::msleep(1);
    return sample::quick_plan(job, {});
  });
  Heard heard(planner);
  planner.ask(test::order_job());
  planner.stop();
  EXPECT_TRUE(sample::waited_for([&] { return heard.answers.size() == 1; }));
}

TEST(BatchPlanner, ForgetsWhatNobodyWaitsFor) {
  BatchPlanner planner(sample::quick_plan);
  Heard heard(planner);
  planner.ask(test::order_job());
  planner.forget();
  ASSERT_TRUE(sample::waited_for([&] { return !planner.is_busy(); }));
  EXPECT_TRUE(heard.answers.empty());
  EXPECT_TRUE(heard.found.empty());
}

TEST(BatchPlanner, TellsAFaultInASentence) {
  BatchPlanner planner([](const Job&, BatchBudget) -> Result<BatchPlan> { throw std::runtime_error("out of cloth"); });
  Heard heard(planner);
  planner.ask(test::order_job());
  ASSERT_TRUE(sample::waited_for([&] { return !heard.reasons.empty(); }));
  EXPECT_EQ(heard.reasons[0], "The batch could not be planned: out of cloth.");
}

TEST(AsPlanned, LeavesOutWhatChangesNoPlan) {
  Job job = test::order_job();
  const Job before = as_planned(job);
  job.products[0].sewing = {{"usual", {{"all", Duration::seconds(60)}}}};
  job.products[0].price = Worth::whole(30);
  job.webbings = {{"cotton", Length::mm(50'000)}};
  EXPECT_EQ(as_planned(job), before);
  job.order.lines[0].must = 2;
  EXPECT_NE(as_planned(job), before);
}

}  // namespace
}  // namespace foldyard
