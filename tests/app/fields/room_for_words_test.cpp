#include "fields/room_for_words.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QVBoxLayout>

namespace foldyard {
namespace {

TEST(GrowForWords, MakesRoomForEveryLineAndKeepsWhatThereIs) {
  QWidget window;
  auto* words = new QLabel;
  words->setWordWrap(true);
  (new QVBoxLayout(&window))->addWidget(words);
  window.resize(200, 60);
  words->setText(QStringLiteral("few words"));
  grow_for_words(window);
  EXPECT_EQ(window.size(), QSize(200, 60));
  words->setText(QStringLiteral("many words ").repeated(40));
  grow_for_words(window);
  EXPECT_EQ(window.width(), 200);
  EXPECT_EQ(window.height(), window.layout()->totalHeightForWidth(200));
  EXPECT_GT(window.height(), 60);
}

}  // namespace
}  // namespace foldyard
