#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "drawing/sheet.h"
#include "drawing/text.h"

namespace foldyard {

namespace {

// 0.01 mm a dot, no margins, the whole page: what measures true on paper.
constexpr int kDotsPerInch = 2540;
constexpr double kDotsPerMm = 100;

void set_up(QPdfWriter& writer, const Sheet& sheet) {
  writer.setResolution(kDotsPerInch);
  const QPageSize size =
      sheet.paper() == Paper::a4 ? QPageSize(QPageSize::A4) : QPageSize(QPageSize::Letter);
  QPageLayout layout(size, QPageLayout::Portrait, QMarginsF());
  layout.setMode(QPageLayout::FullPageMode);
  writer.setPageLayout(layout);
  writer.setCreator(QStringLiteral("Foldyard"));
  writer.setTitle(QString::fromStdString(sheet.job().name));
}

bool paint_pages(QPainter& painter, QPdfWriter& writer, const Sheet& sheet) {
  const int pages = sheet.pages();
  for (int page = 0; page < pages; ++page) {
    if (page > 0 && !writer.newPage()) return false;
    painter.save();
    painter.scale(kDotsPerMm, kDotsPerMm);
    sheet.paint(painter, page);
    painter.restore();
  }
  return true;
}

}  // namespace

QByteArray sheet_pdf(const Sheet& sheet) {
  if (!font_is_ready()) return {};
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  set_up(writer, sheet);
  QPainter painter;
  if (!painter.begin(&writer)) return {};
  const bool done = paint_pages(painter, writer, sheet);
  return painter.end() && done && buffer.data().startsWith("%PDF-") ? buffer.data() : QByteArray();
}

}  // namespace foldyard
