#include "fields/flow_row.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QSplitter>
#include <QVBoxLayout>
#include <QWidget>

namespace foldyard {
namespace {

// Of one size that never changes.
class Block : public QWidget {
 public:
  explicit Block(int width) : width_(width) {}
  QSize sizeHint() const override { return {width_, 20}; }

 private:
  int width_;
};

class FlowRowTest : public testing::Test {
 protected:
  FlowRowTest() : row(new FlowRow(&parent, 6)) { row->setContentsMargins(0, 0, 0, 0); }
  Block* add(int width) {
    auto* block = new Block(width);
    row->addWidget(block);
    return block;
  }
  void show(int width) {
    parent.resize(width, parent.height());
    parent.show();
    QApplication::processEvents();
  }

  QWidget parent;
  FlowRow* row;
};

TEST_F(FlowRowTest, NeedsASecondLineJustBelowTheWidthOfAll) {
  for (int i = 0; i < 3; ++i) add(100);
  EXPECT_EQ(row->sizeHint(), QSize(312, 20));
  EXPECT_EQ(row->heightForWidth(312), 20);
  EXPECT_EQ(row->heightForWidth(311), 46);
  EXPECT_EQ(row->heightForWidth(100), 72);
  EXPECT_EQ(row->minimumSize().width(), 100);
}

TEST_F(FlowRowTest, WhatIsHiddenTakesNoRoom) {
  add(100);
  add(100)->hide();
  add(100);
  EXPECT_EQ(row->sizeHint().width(), 206);
}

TEST_F(FlowRowTest, BehindTheGapStandsAtTheEndOfASingleLine) {
  QWidget* first = add(100);
  row->add_gap();
  QWidget* last = add(50);
  show(400);
  EXPECT_EQ(first->geometry().left(), 0);
  EXPECT_EQ(last->geometry().right(), 399);
  show(140);
  EXPECT_EQ(last->geometry().topLeft(), QPoint(0, 26));
}

TEST_F(FlowRowTest, RunsFromTheRightWhereTheScriptDoes) {
  QWidget* first = add(100);
  QWidget* second = add(100);
  parent.setLayoutDirection(Qt::RightToLeft);
  show(400);
  EXPECT_EQ(first->geometry().right(), 399);
  EXPECT_LT(second->geometry().right(), first->geometry().left());
}

TEST_F(FlowRowTest, KeepsAGroupTogether) {
  add(100);
  auto* group = new QVBoxLayout;
  group->setSpacing(0);
  for (const int width : {80, 120}) group->addWidget(new Block(width));
  row->add(group);
  EXPECT_EQ(row->sizeHint(), QSize(226, 40));
}

TEST_F(FlowRowTest, KeepsItsRoomInASplitter) {
  QSplitter split(Qt::Vertical);
  auto* bar = new FlowBar;
  for (int i = 0; i < 3; ++i) bar->row()->addWidget(new Block(100));
  split.addWidget(bar);
  split.addWidget(new Block(100));
  split.setChildrenCollapsible(false);
  split.resize(150, 200);
  split.show();
  QApplication::processEvents();
  split.setSizes({1, 1000});
  EXPECT_GE(bar->height(), 72);
}

}  // namespace
}  // namespace foldyard
