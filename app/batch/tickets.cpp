#include "batch/tickets.h"

#include <QFileInfo>
#include <QLocale>

#include "drawing/batch_sheet.h"
#include "drawing/page_picture.h"
#include "file/safe_write.h"
#include "language/tr.h"

namespace foldyard {
namespace {

constexpr int kDotsPerInch = 150;

std::optional<Problem> write_bytes(const QString& path, const QByteArray& bytes) {
  if (bytes.isEmpty()) 
    return Problem{path.toStdString(), tr("the tickets could not be painted").toStdString(),
                   tr("try again with fewer lines in the order").toStdString()};
  return safe_write(path, bytes);
}

QByteArray page_of(const BatchSheet& sheet, int page, const QString& ending) {
  const auto paint = [&](QPainter& painter) { sheet.paint(painter, page); };
  if (ending == QLatin1String("png")) return page_png(sheet.page_size_mm(), kDotsPerInch, paint);
  return page_svg(sheet.page_size_mm(), QString::fromStdString(sheet.answer().job.name), paint);
}

}  // namespace

std::optional<Problem> write_tickets(const BatchAnswer& answer, const QString& path) {
  const bool is_us = QLocale::system().measurementSystem() == QLocale::ImperialUSSystem;
  const BatchSheet sheet(answer, is_us ? Paper::letter : Paper::a4);
  const QString ending = QFileInfo(path).suffix().toLower();
  if (ending != QLatin1String("svg") && ending != QLatin1String("png")) return write_bytes(path, batch_pdf(sheet));
  const QStringList files = ticket_files(path, sheet.pages());
  for (int page = 0; page < sheet.pages(); ++page)
    if (auto problem = write_bytes(files[page], page_of(sheet, page, ending))) return problem;
  return {};
}

QStringList ticket_files(const QString& path, int pages) {
  const QFileInfo file(path);
  QStringList files;
  for (int page = 1; page <= pages; ++page)
    files << QStringLiteral("%1/%2-%3.%4").arg(file.path(), file.completeBaseName()).arg(page).arg(file.suffix());
  return files;
}

}  // namespace foldyard
