#include "drawing/pdf_pages.h"
#include "drawing/sheet.h"
#include "measure/index.h"

namespace foldyard {

QByteArray sheet_pdf(const Sheet& sheet, PageRange range) {
  const std::vector<int> pages = pages_in(sheet, range);
  return pdf_pages(sheet.options().paper, sheet.options().landscape, QString::fromStdString(sheet.job().name),
                   static_cast<int>(pages.size()),
                   [&](QPainter& painter, int page) { sheet.paint(painter, pages[ix(page)]); });
}

}  // namespace foldyard
