#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <cmath>
#include <cstring>

#include "drawing/sheet.h"
#include "drawing/text.h"

namespace foldyard {

namespace {

constexpr int kMostDotsPerInch = 1200;

QImage page_image(const Sheet& sheet, int page, const QSize& size, double dots_per_mm) {
  QImage image(size, QImage::Format_RGB32);
  if (image.isNull()) return image;
  image.fill(palette::paper());
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.scale(dots_per_mm, dots_per_mm);
  sheet.paint(painter, page);
  return image;
}

// Pages are painted one by one and set below each other row by row: a single
// picture would grow past what the painter can address.
void copy_rows(const QImage& page, QImage& all, int top) {
  for (int y = 0; y < page.height(); ++y)
    std::memcpy(all.scanLine(top + y), page.constScanLine(y),
                static_cast<std::size_t>(page.bytesPerLine()));
}

}  // namespace

QByteArray sheet_png(const Sheet& sheet, int dots_per_inch, PageRange range) {
  const std::vector<int> pages = pages_in(sheet, range);
  if (!font_is_ready() || pages.empty() || dots_per_inch < 1 ||
      dots_per_inch > kMostDotsPerInch)
    return {};
  const double dots_per_mm = dots_per_inch / 25.4;
  const QSizeF mm = sheet.page_size_mm();
  const QSize size(static_cast<int>(std::lround(mm.width() * dots_per_mm)),
                   static_cast<int>(std::lround(mm.height() * dots_per_mm)));
  QImage all(size.width(), size.height() * static_cast<int>(pages.size()), QImage::Format_RGB32);
  if (all.isNull()) return {};
  all.setDotsPerMeterX(static_cast<int>(std::lround(dots_per_mm * 1000)));
  all.setDotsPerMeterY(all.dotsPerMeterX());
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const QImage image = page_image(sheet, pages[i], size, dots_per_mm);
    if (image.isNull()) return {};
    copy_rows(image, all, static_cast<int>(i) * size.height());
  }
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  return all.save(&buffer, "PNG") ? buffer.data() : QByteArray();
}

}  // namespace foldyard
