#include "drawing/page_picture.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>
#include <cmath>

#include "drawing/palette.h"
#include "drawing/text.h"

namespace foldyard {
namespace {

constexpr int kSvgDotsPerInch = 254;  // 10 dots a millimetre
constexpr int kMostDotsPerInch = 1200;

QSize dots(const QSizeF& mm, double dots_per_mm) {
  return {static_cast<int>(std::lround(mm.width() * dots_per_mm)), static_cast<int>(std::lround(mm.height() * dots_per_mm))};
}

}  // namespace

QByteArray page_svg(const QSizeF& page_mm, const QString& title, const PagePainter& paint) {
  if (!font_is_ready()) return {};
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setResolution(kSvgDotsPerInch);
  generator.setSize(dots(page_mm, 10));
  generator.setViewBox(QRectF(QPointF(0, 0), page_mm));
  generator.setTitle(title.toHtmlEscaped());  // the generator does not escape it
  QPainter painter;
  if (!painter.begin(&generator)) return {};
  painter.fillRect(QRectF(QPointF(0, 0), page_mm), palette::paper());
  paint(painter);
  return painter.end() && buffer.data().trimmed().endsWith("</svg>") ? buffer.data() : QByteArray();
}

QByteArray page_png(const QSizeF& page_mm, int dots_per_inch, const PagePainter& paint) {
  if (!font_is_ready() || dots_per_inch < 1 || dots_per_inch > kMostDotsPerInch) return {};
  const double dots_per_mm = dots_per_inch / 25.4;
  QImage image(dots(page_mm, dots_per_mm), QImage::Format_RGB32);
  if (image.isNull()) return {};
  image.setDotsPerMeterX(static_cast<int>(std::lround(dots_per_mm * 1000)));
  image.setDotsPerMeterY(image.dotsPerMeterX());
  image.fill(palette::paper());
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.scale(dots_per_mm, dots_per_mm);
  paint(painter);
  painter.end();
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  return image.save(&buffer, "PNG") ? buffer.data() : QByteArray();
}

}  // namespace foldyard
