#include <QBuffer>
#include <QPainter>
#include <QSvgGenerator>
#include <cmath>

#include "drawing/sheet.h"
#include "drawing/text.h"

namespace foldyard {

namespace {

constexpr int kDotsPerInch = 254;  // 10 dots a millimetre

void set_up(QSvgGenerator& generator, const Sheet& sheet, int pages) {
  const QSizeF page = sheet.page_size_mm();
  const QSizeF whole(page.width(), page.height() * pages);
  generator.setResolution(kDotsPerInch);
  // Whole dots only; every page size is whole in tenths of a millimetre.
  generator.setSize(QSize(static_cast<int>(std::lround(whole.width() * 10)),
                          static_cast<int>(std::lround(whole.height() * 10))));
  generator.setViewBox(QRectF(QPointF(0, 0), whole));
  // The generator does not escape its title itself.
  generator.setTitle(QString::fromStdString(sheet.job().name).toHtmlEscaped());
}

void paint_pages(QPainter& painter, const Sheet& sheet, const std::vector<int>& pages) {
  const QSizeF size = sheet.page_size_mm();
  painter.fillRect(QRectF(0, 0, size.width(), size.height() * static_cast<double>(pages.size())), palette::paper());
  for (std::size_t i = 0; i < pages.size(); ++i) {
    painter.save();
    painter.translate(0, static_cast<double>(i) * size.height());
    sheet.paint(painter, pages[i]);
    painter.restore();
  }
}

}  // namespace

QByteArray sheet_svg(const Sheet& sheet, PageRange range) {
  const std::vector<int> pages = pages_in(sheet, range);
  if (!font_is_ready() || pages.empty()) return {};
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  set_up(generator, sheet, static_cast<int>(pages.size()));
  QPainter painter;
  if (!painter.begin(&generator)) return {};
  paint_pages(painter, sheet, pages);
  return painter.end() && buffer.data().trimmed().endsWith("</svg>") ? buffer.data() : QByteArray();
}

}  // namespace foldyard
