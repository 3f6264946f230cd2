#include "drawing/screen_view.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <functional>

#include "app/drawing/sample_plans.h"
#include "drawing/palette.h"

namespace foldyard {
namespace {

QImage painted(const QSize& size, const std::function<void(QPainter&)>& paint) {
  QImage image(size, QImage::Format_RGB32);
  image.fill(Qt::magenta);
  QPainter painter(&image);
  paint(painter);
  return image;
}

int count(const QImage& image, const QRect& area, QRgb colour) {
  int dots = 0;
  for (int y = area.top(); y <= area.bottom(); ++y)
    for (int x = area.left(); x <= area.right(); ++x) dots += image.pixel(x, y) == colour;
  return dots;
}

const QRgb kNotPainted = QColor(Qt::magenta).rgb();

TEST(ScreenView, NothingIsPaintedOutsideTheArea) {
  const QRect area(40, 30, 700, 500);
  for (const samples::Sample& sample : samples::all()) {
    const QImage image = painted(
        {800, 600}, [&](QPainter& p) { paint_pattern(p, sample.job, sample.plan(), 0, area); });
    const int outside = count(image, image.rect(), kNotPainted) - count(image, area, kNotPainted);
    EXPECT_EQ(outside, 800 * 600 - 700 * 500);
  }
}

TEST(ScreenView, AnAreaOfAnySizeIsSafe) {
  const samples::Sample sample = samples::open_long_names();
  for (const QSize& size :
       {QSize(0, 0), QSize(1, 1), QSize(20, 400), QSize(400, 20), QSize(60, 60)})
    painted({500, 500}, [&](QPainter& p) {
      const QRectF area(QPointF(10, 10), QSizeF(size));
      paint_pattern(p, sample.job, sample.plan(), 0, area);
      paint_roll(p, sample.job, sample.plan(), area);
      paint_thumbnail(p, sample.job, sample.plan(), area);
    });
}

TEST(ScreenView, AZoomedPainterShowsTheSamePicture) {
  const samples::Sample sample = samples::carriers();
  const QImage plain = painted({700, 500}, [&](QPainter& p) {
    paint_pattern(p, sample.job, sample.plan(), 0, QRectF(0, 0, 700, 500));
  });
  const QImage zoomed = painted({700, 500}, [&](QPainter& p) {
    p.scale(100, 100);
    paint_pattern(p, sample.job, sample.plan(), 0, QRectF(0, 0, 7, 5));
  });
  int different = 0;
  for (int y = 0; y < 500; ++y)
    for (int x = 0; x < 700; ++x)
      different += std::abs(qGray(plain.pixel(x, y)) - qGray(zoomed.pixel(x, y))) > 40;
  EXPECT_LT(different, 700);
}

TEST(ScreenView, AThumbnailShowsThePanels) {
  const samples::Sample sample = samples::carriers();
  const QImage image = painted({120, 90}, [&](QPainter& p) {
    paint_thumbnail(p, sample.job, sample.plan(), QRectF(0, 0, 120, 90));
  });
  EXPECT_GT(count(image, image.rect(), panel_look(0).fill.rgb()), 500);
}

TEST(ScreenView, APlanWithoutPatternsIsPaper) {
  const samples::Sample sample = samples::carriers();
  const Plan none;
  const QImage image = painted(
      {40, 40}, [&](QPainter& p) { paint_thumbnail(p, sample.job, none, QRectF(0, 0, 40, 40)); });
  EXPECT_EQ(count(image, image.rect(), palette::paper().rgb()), 1600);
}

}  // namespace
}  // namespace foldyard
