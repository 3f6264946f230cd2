#include "window/way_table.h"

#include <gtest/gtest.h>

#include <QTest>

#include "sample.h"

namespace foldyard {
namespace {

AnswerPtr other_ranking() {
  auto answer = *sample::answer();
  answer.comparison.ranking = {2, 0};
  return std::make_shared<const Answer>(answer);
}

TEST(WayTable, ChoosesTheBestUntilAPersonChooses) {
  WayTable table;
  std::vector<int> chosen;
  QObject::connect(&table, &WayTable::chosen, [&](int row) { chosen.push_back(row); });
  table.show_answer(sample::answer());
  EXPECT_EQ(table.row(), 0);
  table.show_answer(other_ranking());
  EXPECT_EQ(table.row(), 0);
  EXPECT_EQ(table.ways()->way_index(0), 2);
  EXPECT_EQ(chosen, (std::vector<int>{0, 0}));
}

TEST(WayTable, KeepsTheChosenWay) {
  WayTable table;
  table.show_answer(sample::answer());
  QTest::keyClick(&table, Qt::Key_Down);
  EXPECT_EQ(table.row(), 1);
  table.show_answer(other_ranking());
  EXPECT_EQ(table.row(), 0);  // where the same way stands now
  EXPECT_EQ(table.ways()->way_index(0), 2);
  table.forget_choice();
  table.show_answer(sample::answer());
  EXPECT_EQ(table.row(), 0);
  EXPECT_EQ(table.ways()->way_index(0), 0);
}

}  // namespace
}  // namespace foldyard
