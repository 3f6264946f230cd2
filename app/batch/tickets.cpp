#include "batch/tickets.h"

#include <QLocale>

#include "drawing/batch_sheet.h"
#include "file/safe_write.h"

namespace foldyard {

std::optional<Problem> write_tickets(const BatchAnswer& answer, const QString& path) {
  const bool is_us = QLocale::system().measurementSystem() == QLocale::ImperialUSSystem;
  const QByteArray bytes = batch_pdf(BatchSheet(answer, is_us ? Paper::letter : Paper::a4));
  if (bytes.isEmpty()) return Problem{path.toStdString(), "the tickets could not be painted", "try again with fewer lines in the order"};
  return safe_write(path, bytes);
}

}  // namespace foldyard
