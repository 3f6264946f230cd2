#include "drawing/copied_picture.h"

#include <QBuffer>
#include <QPainter>
#include <QSvgGenerator>
#include <cmath>

#include "drawing/palette.h"
#include "drawing/pattern_picture.h"
#include "drawing/roll_picture.h"
#include "drawing/text.h"

namespace foldyard {

namespace {

constexpr double kMargin = 4;
constexpr QSizeF kPatternRoom(180, 150);
constexpr QSizeF kRollRoom(180, 70);

}  // namespace

QSizeF CopiedPicture::size_mm() const {
  const double height =
      pattern < 0
          ? lay_out_roll(job, plan, kRollRoom).height
          : lay_out_pattern(pattern_data(job, plan, pattern), kPatternRoom, false).height;
  return {kPatternRoom.width() + 2 * kMargin, std::ceil(height) + 2 * kMargin};
}

void CopiedPicture::paint(QPainter& painter) const {
  painter.fillRect(QRectF(QPointF(), size_mm()), palette::paper());
  if (pattern < 0)
    return draw_roll(painter, {kMargin, kMargin}, lay_out_roll(job, plan, kRollRoom), job, plan);
  const PatternData data = pattern_data(job, plan, pattern);
  draw_pattern(painter, {kMargin, kMargin}, kPatternRoom.width(),
               lay_out_pattern(data, kPatternRoom, false), data);
}

QImage CopiedPicture::image(double dots_per_inch) const {
  if (!font_is_ready()) return {};
  const double dots = dots_per_inch / 25.4;
  QImage image((size_mm() * dots).toSize(), QImage::Format_RGB32);
  if (image.isNull()) return {};
  image.setDotsPerMeterX(static_cast<int>(std::lround(dots * 1000)));
  image.setDotsPerMeterY(image.dotsPerMeterX());
  image.fill(palette::paper());
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.scale(dots, dots);
  paint(painter);
  return image;
}

QByteArray CopiedPicture::svg() const {
  if (!font_is_ready()) return {};
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setResolution(254);  // 10 dots a millimetre
  generator.setSize((size_mm() * 10).toSize());
  generator.setViewBox(QRectF(QPointF(), size_mm()));
  QPainter painter;
  if (!painter.begin(&generator)) return {};
  paint(painter);
  return painter.end() ? buffer.data() : QByteArray();
}

}  // namespace foldyard
