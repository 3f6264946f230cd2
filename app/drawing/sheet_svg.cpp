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
  // Whole dots only; both page sizes are whole in tenths of a millimetre.
  generator.setSize(QSize(static_cast<int>(std::lround(whole.width() * 10)),
                          static_cast<int>(std::lround(whole.height() * 10))));
  generator.setViewBox(QRectF(QPointF(0, 0), whole));
  // The generator does not escape its title itself.
  generator.setTitle(QString::fromStdString(sheet.job().name).toHtmlEscaped());
}

void paint_pages(QPainter& painter, const Sheet& sheet, int pages) {
  const QSizeF size = sheet.page_size_mm();
  painter.fillRect(QRectF(0, 0, size.width(), size.height() * pages), palette::paper());
  for (int page = 0; page < pages; ++page) {
    painter.save();
    painter.translate(0, page * size.height());
    sheet.paint(painter, page);
    painter.restore();
  }
}

}  // namespace

QByteArray sheet_svg(const Sheet& sheet) {
  if (!font_is_ready()) return {};
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  const int pages = sheet.pages();
  set_up(generator, sheet, pages);
  QPainter painter;
  if (!painter.begin(&generator)) return {};
  paint_pages(painter, sheet, pages);
  return painter.end() && buffer.data().trimmed().endsWith("</svg>") ? buffer.data() : QByteArray();
}

}  // namespace foldyard
