#include "window/plan_view.h"

#include <gtest/gtest.h>

#include "job/plan_roll.h"
#include "sample.h"

namespace foldyard {
namespace {

TEST(PlanView, HasATabForEachPatternAndTheRoll) {
  const auto answer = sample::planned();
  const int best = answer->comparison.ranking.at(0);
  PlanView view;
  view.show_plan(answer, best);
  const auto& plan = *answer->comparison.ways[static_cast<std::size_t>(best)].plan;
  EXPECT_EQ(view.tabs()->count(), static_cast<int>(plan.patterns.size()) + 1);
  EXPECT_EQ(view.picture()->accessibleDescription(), view.answer()->text());
  view.resize(700, 500);
  for (int i = 0; i < view.tabs()->count(); ++i) {
    view.tabs()->setCurrentIndex(i);
    const auto image = view.grab().toImage();
    EXPECT_FALSE(image.isNull());
  }
}

TEST(PlanView, ShowsTheReasonOfARefusedWay) {
  PlanView view;
  view.show_plan(sample::answer(), 1);
  EXPECT_EQ(view.tabs()->count(), 0);
  EXPECT_TRUE(view.answer()->text().contains("4 plies are too thick"));
}

}  // namespace
}  // namespace foldyard
