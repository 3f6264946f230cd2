#include "drawing/stack_picture.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "app/drawing/plain_words.h"
#include "core/inspect/sound_batch.h"
#include "drawing/page_picture.h"
#include "drawing/palette.h"

namespace foldyard {
namespace {

// Two lengths of "blue" below two of "green", each folded once, of cloth 1 mm thick.
BatchAnswer stacked() {
  SoundBatch batch = sound_batch();
  return batch_answer(batch.job, batch.plan);
}

TEST(StackPicture, TellsWhichRollLiesWhereFromTheTop) {
  const StackData stack = stack_data(stacked(), 0);
  ASSERT_EQ(stack.bands.size(), 2u);
  EXPECT_EQ(stack.bands[0].roll, "green");
  EXPECT_EQ(stack.bands[0].lengths, 2);
  EXPECT_EQ(stack.bands[0].plies, 4);
  EXPECT_EQ(stack.bands[1].roll, "blue");
  EXPECT_EQ(stack.height, Length::mm(8));
  QStringList words = stack_band_words(stack);
  for (QString& each : words) each = plain(each);
  EXPECT_EQ(words, (QStringList{"2 × green, 4 plies, 4 mm", "2 × blue, 4 plies, 4 mm"}));
}

// The folded cloth takes half the width; heights are as many whole times larger as the
// cutter's height leaves room for.
TEST(StackPicture, StretchesHeightsAWholeNumberOfTimes) {
  StackData stack;
  stack.width = Length::mm(500);
  stack.height = Length::mm(10);
  stack.limit = Length::mm(20);
  EXPECT_EQ(stack_stretch(stack, QSizeF(1000, 100)), 5);  // 20 mm are 20 at the scale of widths
  EXPECT_EQ(stack_stretch(stack, QSizeF(1000, 99)), 4);
  EXPECT_EQ(stack_stretch(stack, QSizeF(1000, 5)), 1);
}

TEST(StackPicture, DrawsTheBandsInTheirClothOneOverTheOther) {
  BatchAnswer answer = stacked();
  answer.job.rolls[0].fabric.colour = "#0000ff";
  answer.job.rolls[1].fabric.colour = "#00ff00";
  const StackData stack = stack_data(answer, 0);
  QImage image(600, 200, QImage::Format_RGB32);
  image.fill(palette::paper());
  QPainter painter(&image);
  draw_stack(painter, QRectF(10, 10, 580, 190), stack);
  painter.end();
  int first_green = -1, first_blue = -1;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 20; x < 280; ++x) {
      const QColor seen = image.pixelColor(x, y);
      if (first_green < 0 && seen == cloth_ground("#00ff00")) first_green = y;
      if (first_blue < 0 && seen == cloth_ground("#0000ff")) first_blue = y;
    }
  }
  EXPECT_GT(first_green, 0);
  EXPECT_GT(first_blue, first_green);
}

// A4 is 210 × 297 mm (ISO 216): 1240 × 1754 dots at 150 an inch.
TEST(PagePicture, IsAsLargeAsItsPage) {
  const auto paint = [](QPainter& painter) { painter.fillRect(QRectF(10, 10, 100, 100), palette::ink()); };
  const QImage image = QImage::fromData(page_png(QSizeF(210, 297), 150, paint), "PNG");
  EXPECT_EQ(image.size(), QSize(1240, 1754));
  EXPECT_EQ(image.pixelColor(100, 100), palette::ink());
  EXPECT_EQ(image.pixelColor(20, 20), palette::paper());
  const QByteArray svg = page_svg(QSizeF(210, 297), "Bags & covers", paint);
  EXPECT_TRUE(svg.contains("width=\"210mm\"")) << svg.left(400).toStdString();
  EXPECT_TRUE(svg.contains("<title>Bags &amp; covers</title>"));
  EXPECT_TRUE(page_png(QSizeF(210, 297), 0, paint).isEmpty());
}

}  // namespace
}  // namespace foldyard
