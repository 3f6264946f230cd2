#include "drawing/pdf_pages.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

#include "drawing/actual_size.h"
#include "drawing/text.h"

namespace foldyard {

namespace {

// 0.01 mm a dot, no margins, the whole page: what measures true on paper.
constexpr int kDotsPerInch = 2540;
constexpr double kDotsPerMm = 100;

}  // namespace

QByteArray pdf_pages(Paper paper, bool landscape, const QString& title, int pages,
                     const std::function<void(QPainter&, int)>& paint) {
  if (!font_is_ready() || pages == 0) return {};
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(kDotsPerInch);
  writer.setPageLayout(full_page(paper, landscape));
  writer.setCreator(QStringLiteral("Foldyard"));
  writer.setTitle(title);
  QPainter painter;
  if (!painter.begin(&writer)) return {};
  bool done = true;
  for (int page = 0; page < pages && done; ++page) {
    done = page == 0 || writer.newPage();
    painter.save();
    painter.scale(kDotsPerMm, kDotsPerMm);
    paint(painter, page);
    painter.restore();
  }
  if (!painter.end() || !done || !buffer.data().startsWith("%PDF-")) return {};
  return at_actual_size(buffer.data());
}

}  // namespace foldyard
