#include "printing/print_sheet.h"

#include <QPainter>

#include "drawing/text.h"

namespace foldyard {
namespace {

bool print_pages(QPainter& painter, QPrinter& printer, const Sheet& sheet,
                 const std::vector<int>& pages) {
  const double dots_per_mm = printer.resolution() / 25.4;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (i > 0 && !printer.newPage()) return false;
    painter.save();
    painter.scale(dots_per_mm, dots_per_mm);
    sheet.paint(painter, pages[i]);
    painter.restore();
  }
  return true;
}

// All pages as often as the printer cannot copy them itself.
std::vector<int> with_copies(const std::vector<int>& pages, const QPrinter& printer) {
  const int copies = printer.supportsMultipleCopies() ? 1 : std::max(1, printer.copyCount());
  std::vector<int> all;
  for (int copy = 0; copy < copies; ++copy) all.insert(all.end(), pages.begin(), pages.end());
  return all;
}

}  // namespace

void set_up_printer(QPrinter& printer, const Sheet& sheet) {
  printer.setFullPage(true);
  printer.setPageLayout(full_page(sheet.options().paper, sheet.options().landscape));
  printer.setDocName(QString::fromStdString(sheet.job().name));
  printer.setCreator(QStringLiteral("Foldyard"));
}

bool print_sheet(QPrinter& printer, const Sheet& sheet, PageRange range) {
  const std::vector<int> pages = pages_in(sheet, range);
  if (pages.empty() || !font_is_ready()) return false;
  set_up_printer(printer, sheet);
  QPainter painter;
  if (!painter.begin(&printer)) return false;
  const bool done = print_pages(painter, printer, sheet, with_copies(pages, printer));
  return painter.end() && done && printer.printerState() != QPrinter::Error;
}

}  // namespace foldyard
