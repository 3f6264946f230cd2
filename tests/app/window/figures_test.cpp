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
  plan.remnant = {Length::mm(4600), Length::mm(5000)};
  plan.remnant_kept = true;
  figures.show_plan(sample::job(), &plan);
  EXPECT_EQ(figures.text(Figures::panels), "4");
  EXPECT_EQ(figures.text(Figures::use), "90.0 %");
  EXPECT_EQ(figures.text(Figures::minutes), "20 min");
  // 50 cm of 150 cm cloth are not used, 40 of them are kept.
  EXPECT_EQ(figures.text(Figures::waste), "0.15 m²");
  plan.remnant_kept = false;
  figures.show_plan(sample::job(), &plan);
  EXPECT_EQ(figures.text(Figures::waste), "0.75 m²");
  figures.show_plan(sample::job(), nullptr);
  EXPECT_TRUE(figures.isHidden());
}

TEST(Figures, SaysAreasInSquareYardsWhereTheJobIsInYards) {
  const Area square = Length::inches64(64 * 36) * Length::inches64(64 * 36);
  EXPECT_EQ(area_words(square, Unit::yard), "1.00 sq yd");
  EXPECT_EQ(area_words(Length::mm(1000) * Length::mm(2000), Unit::mm), "2.00 m²");
}

TEST(Figures, ShowsWhatAPlanByHandGivesUp) {
  Figures figures;
  const auto answer = sample::answer();
  figures.show_against(answer->job, *answer->comparison.ways[2].plan, *answer->comparison.ways[0].plan);
  EXPECT_TRUE(words(figures).contains(QStringLiteral("(−1)")));
  EXPECT_TRUE(words(figures).contains(QStringLiteral("(−8)")));
}

}  // namespace
}  // namespace foldyard
