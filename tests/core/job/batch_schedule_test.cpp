#include "job/batch_schedule.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

constexpr Duration minutes(int n) { return Duration::seconds(60 * n); }

Job workshop(std::vector<int> piece_minutes) {
  Job job;
  for (std::size_t i = 0; i < piece_minutes.size(); ++i) {
    Product product{"bag " + std::to_string(i), {{0, 1}}, {}, Worth::whole(1)};
    if (piece_minutes[i] > 0) product.sewing = {{"usual", {{"all", minutes(piece_minutes[i])}}}};
    job.products.push_back(product);
    job.order.lines.push_back({static_cast<int>(i), 1});
  }
  job.sitting = minutes(180);
  return job;
}

BatchPlan plan(int cutting, const std::vector<std::int64_t>& pieces) {
  BatchPlan plan;
  plan.time = minutes(cutting);
  for (std::size_t i = 0; i < pieces.size(); ++i) plan.made.push_back({static_cast<int>(i), "moss", pieces[i]});
  return plan;
}

TEST(BatchSchedule, CutsFirstAndSewsWholePieces) {
  EXPECT_EQ(batch_schedule(workshop({50}), plan(60, {8})),
            (std::vector<Sitting>{{{}, minutes(60)},
                                  {{{0, 3}}, minutes(150)},
                                  {{{0, 3}}, minutes(150)},
                                  {{{0, 2}}, minutes(100)}}));
}

TEST(BatchSchedule, PartsLongCutting) {
  EXPECT_EQ(batch_schedule(workshop({50}), plan(400, {})),
            (std::vector<Sitting>{{{}, minutes(180)}, {{}, minutes(180)}, {{}, minutes(40)}}));
}

TEST(BatchSchedule, GoesOnWithTheNextLineInTheSameSitting) {
  EXPECT_EQ(batch_schedule(workshop({50, 30}), plan(0, {2, 4})),
            (std::vector<Sitting>{{{{0, 2}, {1, 2}}, minutes(160)}, {{{1, 2}}, minutes(60)}}));
}

TEST(BatchSchedule, BeginsASittingWhereNoPieceOfTheNextLineFits) {
  EXPECT_EQ(batch_schedule(workshop({50, 100}), plan(0, {2, 2})),
            (std::vector<Sitting>{{{{0, 2}}, minutes(100)}, {{{1, 1}}, minutes(100)}, {{{1, 1}}, minutes(100)}}));
}

TEST(BatchSchedule, GivesALongPieceASittingOfItsOwn) {
  EXPECT_EQ(batch_schedule(workshop({200}), plan(0, {2})),
            (std::vector<Sitting>{{{{0, 1}}, minutes(200)}, {{{0, 1}}, minutes(200)}}));
}

TEST(BatchSchedule, PutsPiecesThatTakeNoTimeAlong) {
  EXPECT_EQ(batch_schedule(workshop({50, 0}), plan(0, {1, 9})),
            (std::vector<Sitting>{{{{0, 1}, {1, 9}}, minutes(50)}}));
}

TEST(BatchSchedule, JoinsOneLineOfSeveralCloths) {
  BatchPlan two = plan(0, {1});
  two.made.push_back({0, "fern", 1});
  EXPECT_EQ(batch_schedule(workshop({50}), two), (std::vector<Sitting>{{{{0, 2}}, minutes(100)}}));
}

}  // namespace
}  // namespace foldyard
