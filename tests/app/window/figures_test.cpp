#include "window/figures.h"

#include <gtest/gtest.h>

#include "sample.h"

namespace foldyard {
namespace {

QString words(const Figures& figures) {
  QString all;
  for (const auto* label : figures.findChildren<QLabel*>()) all += label->text() + QLatin1Char('\n');
  return all;
}

TEST(Figures, ShowsPanelsUseAndMinutes) {
  Figures figures;
  Plan plan = *sample::answer()->comparison.ways[0].plan;
  plan.used = Length::mm(1500) * Length::mm(4500);
  figures.show_plan(&plan);
  EXPECT_EQ(figures.text(Figures::panels), "4");
  EXPECT_EQ(figures.text(Figures::use), "90.0 %");
  EXPECT_EQ(figures.text(Figures::minutes), "20 min");
  figures.show_plan(nullptr);
  EXPECT_TRUE(figures.isHidden());
}

TEST(Figures, ShowsWhatAPlanByHandGivesUp) {
  Figures figures;
  const auto answer = sample::answer();
  figures.show_against(*answer->comparison.ways[2].plan, *answer->comparison.ways[0].plan);
  EXPECT_TRUE(words(figures).contains(QStringLiteral("(−1)")));
  EXPECT_TRUE(words(figures).contains(QStringLiteral("(−8)")));
}

}  // namespace
}  // namespace foldyard
