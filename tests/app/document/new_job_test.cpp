#include "document/new_job.h"

#include <gtest/gtest.h>

#include "job/check_job.h"
#include "job/plan_roll.h"

namespace foldyard {
namespace {

// CLDR, supplemental data, measurementData: the US system in the United States.
TEST(NewJobTest, MeasuresAsTheCountryDoes) {
  for (const char* metric : {"de_DE", "fr_FR", "en_GB", "ja_JP"}) EXPECT_EQ(unit_of(QLocale(metric)), Unit::cm) << metric;
  EXPECT_EQ(unit_of(QLocale("en_US")), Unit::inch);
}

TEST(NewJobTest, StandsAndHasAPlan) {
  for (const Unit unit : {Unit::cm, Unit::inch}) {
    const Job job = new_job(unit);
    EXPECT_FALSE(check_job(job));
    EXPECT_EQ(job.unit, unit);
    EXPECT_EQ(job.rolls.size(), 1u);
    EXPECT_EQ(job.panels.size(), 1u);
    const auto comparison = compare_ways(job, 0, Aim::most_worth);
    ASSERT_FALSE(comparison.ranking.empty());
    EXPECT_GT(comparison.ways[static_cast<std::size_t>(comparison.ranking[0])].plan->worth, Worth());
  }
}

TEST(NewJobTest, HasRoundSizesInItsUnit) {
  EXPECT_EQ(new_job(Unit::cm).rolls[0].length, Length::mm(10'000));
  EXPECT_EQ(new_job(Unit::cm).panels[0].across, Length::mm(450));
  EXPECT_EQ(new_job(Unit::inch).rolls[0].length, Length::inches64(360 * 64));  // 10 yd of 36 in
  EXPECT_EQ(new_job(Unit::inch).panels[0].along, Length::inches64(18 * 64));
}

TEST(OwnJobTest, HasTheRollAndThePanelsOfTheGoods) {
  const Job job = own_job(Unit::cm, Length::mm(1400), Length::mm(8000), *goods_by_key("cushion"));
  EXPECT_FALSE(check_job(job));
  ASSERT_EQ(job.rolls.size(), 1u);
  EXPECT_EQ(job.rolls[0].fabric.width, Length::mm(1400));
  EXPECT_EQ(job.rolls[0].length, Length::mm(8000));
  EXPECT_FALSE(job.panels.empty());
  for (const Panel& panel : job.panels) EXPECT_TRUE(panel.sewn) << panel.name;
}

TEST(OwnJobTest, EveryReadyGoodsFitsAUsualRoll) {
  for (const auto& goods : ready_goods())
    EXPECT_FALSE(check_job(own_job(Unit::cm, Length::mm(1500), Length::mm(10'000), goods))) << goods.key;
}

TEST(OwnJobTest, WhatDoesNotFitIsForCheckJobToSay) {
  EXPECT_TRUE(check_job(own_job(Unit::cm, Length::mm(100), Length::mm(10'000), *goods_by_key("tote"))));
  EXPECT_TRUE(check_job(own_job(Unit::cm, Length::mm(1500), Length(), *goods_by_key("tote"))));
}

}  // namespace
}  // namespace foldyard
