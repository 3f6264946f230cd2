#include "table/roll_drop.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDropEvent>
#include <QMimeData>
#include <QWidget>

#include "table/cloth_table.h"

namespace foldyard {
namespace {

struct RollDropTest : testing::Test {
  RollDropTest() {
    place.resize(300, 200);
    place.show();
    QObject::connect(&drop, &RollDrop::dropped, [this](int roll) { dropped.push_back(roll); });
  }

  // True where each of the three steps is taken.
  bool let_go(const QMimeData& held) {
    QDragEnterEvent enter(QPoint(50, 50), Qt::CopyAction | Qt::MoveAction, &held, Qt::LeftButton, Qt::NoModifier);
    enter.ignore();
    QApplication::sendEvent(&place, &enter);
    if (!enter.isAccepted()) return false;
    seen = drop.hint()->isVisible();
    QDropEvent event(QPointF(50, 50), Qt::CopyAction | Qt::MoveAction, &held, Qt::LeftButton, Qt::NoModifier);
    event.ignore();
    QApplication::sendEvent(&place, &event);
    return event.isAccepted() && event.dropAction() == Qt::CopyAction;
  }

  QWidget place;
  RollDrop drop{&place};
  std::vector<int> dropped;
  bool seen = false;
};

TEST_F(RollDropTest, TakesARollAndShowsThatItMayBeLetGo) {
  EXPECT_TRUE(let_go(*roll_to_drag(3)));
  EXPECT_TRUE(seen);
  EXPECT_FALSE(drop.hint()->isVisible());
  EXPECT_EQ(dropped, std::vector<int>{3});
}

TEST_F(RollDropTest, RefusesAnythingElse) {
  QMimeData words, other, broken;
  words.setText("3");
  other.setData("application/x-foldyard-roll", "1 3");  // of another program
  broken.setData("application/x-foldyard-roll", QByteArray::number(QCoreApplication::applicationPid()) + " -1");
  for (const QMimeData* held : {&words, &other, &broken}) {
    EXPECT_FALSE(dragged_roll(*held));
    EXPECT_FALSE(let_go(*held));
  }
  EXPECT_TRUE(dropped.empty());
}

TEST_F(RollDropTest, TheHintGoesWhenTheRollIsTakenElsewhere) {
  const auto held = roll_to_drag(0);
  QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, held.get(), Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&place, &enter);
  EXPECT_TRUE(drop.hint()->isVisible());
  QDragLeaveEvent leave;
  QApplication::sendEvent(&place, &leave);
  EXPECT_FALSE(drop.hint()->isVisible());
}

}  // namespace
}  // namespace foldyard
