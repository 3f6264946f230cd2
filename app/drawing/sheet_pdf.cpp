#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

#include "drawing/actual_size.h"
#include "drawing/sheet.h"
#include "drawing/text.h"

namespace foldyard {

namespace {

// 0.01 mm a dot, no margins, the whole page: what measures true on paper.
constexpr int kDotsPerInch = 2540;
constexpr double kDotsPerMm = 100;

void set_up(QPdfWriter& writer, const Sheet& sheet) {
  writer.setResolution(kDotsPerInch);
  writer.setPageLayout(full_page(sheet.options().paper, sheet.options().landscape));
  writer.setCreator(QStringLiteral("Foldyard"));
  writer.setTitle(QString::fromStdString(sheet.job().name));
}

bool paint_pages(QPainter& painter, QPdfWriter& writer, const Sheet& sheet,
                 const std::vector<int>& pages) {
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (i > 0 && !writer.newPage()) return false;
    painter.save();
    painter.scale(kDotsPerMm, kDotsPerMm);
    sheet.paint(painter, pages[i]);
    painter.restore();
  }
  return true;
}

}  // namespace

QByteArray sheet_pdf(const Sheet& sheet, PageRange range) {
  const std::vector<int> pages = pages_in(sheet, range);
  if (!font_is_ready() || pages.empty()) return {};
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  set_up(writer, sheet);
  QPainter painter;
  if (!painter.begin(&writer)) return {};
  const bool done = paint_pages(painter, writer, sheet, pages);
  if (!painter.end() || !done || !buffer.data().startsWith("%PDF-")) return {};
  return at_actual_size(buffer.data());
}

}  // namespace foldyard
