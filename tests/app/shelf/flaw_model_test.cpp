#include "shelf/flaw_model.h"

#include <gtest/gtest.h>

#include "shelf_sample.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

class FlawModelTest : public testing::Test {
 protected:
  QString shown(int row, int column) { return model.index(row, column).data().toString(); }
  bool put(int row, int column, const QString& text) { return model.setData(model.index(row, column), text, Qt::EditRole); }

  Roll roll = sample::shelf_job().rolls[3];
  FlawModel model{roll, Unit::cm};
  StrictTester tester{&model};
};

TEST_F(FlawModelTest, ShowsPlacesAlongInMetresAndAcrossInTheJobsUnit) {
  EXPECT_EQ(shown(1, FlawModel::from), "3.2 m");
  EXPECT_EQ(shown(1, FlawModel::to), "3.26 m");
  EXPECT_EQ(shown(1, FlawModel::left), "40 cm");
  EXPECT_EQ(shown(0, FlawModel::right), "140 cm");
  EXPECT_EQ(shown(0, FlawModel::kind), "join");
}

TEST_F(FlawModelTest, WhatIsNoLengthStaysAsADraftAndChangesNothing) {
  const Roll before = roll;
  EXPECT_TRUE(put(0, FlawModel::from, "here"));
  EXPECT_EQ(roll, before);
  EXPECT_EQ(shown(0, FlawModel::from), "here");
  EXPECT_TRUE(model.has_drafts());
  EXPECT_TRUE(model.first_reason().startsWith("Flaw 1:"));
  EXPECT_TRUE(put(0, FlawModel::from, "0.9"));
  EXPECT_EQ(roll.flaws[0].along.from, Length::mm(900));
  EXPECT_FALSE(model.has_drafts());
  EXPECT_TRUE(model.first_reason().isEmpty());
}

TEST_F(FlawModelTest, AddsAFlawThatLiesOnTheCloth) {
  model.add();
  ASSERT_EQ(model.rowCount(), 3);
  EXPECT_TRUE((Span{Length(), roll.length}).covers(roll.flaws[2].along));
  EXPECT_FALSE(roll.flaws[2].along.is_empty());
  EXPECT_EQ(roll.flaws[2].across, (Span{Length(), roll.fabric.width}));
  model.take_away(0);
  EXPECT_EQ(roll.flaws.size(), 2u);
  EXPECT_EQ(shown(0, FlawModel::from), "3.2 m");
}

TEST_F(FlawModelTest, TellsWhatTheJobSaysOfACell) {
  model.blame(1, "right", "it ends beyond the cloth");
  EXPECT_EQ(model.index(1, FlawModel::right).data(kReasonRole).toString(), "it ends beyond the cloth");
  EXPECT_TRUE(model.first_reason().startsWith("Flaw 2:"));
  EXPECT_FALSE(model.has_drafts());
  model.blame_none();
  EXPECT_TRUE(model.first_reason().isEmpty());
}

}  // namespace
}  // namespace foldyard
