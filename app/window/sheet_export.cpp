#include "window/sheet_export.h"

#include <QLocale>

#include "drawing/sheet.h"
#include "file/safe_write.h"

namespace foldyard {
namespace {

constexpr int kDotsPerInch = 150;

Paper usual_paper() {
  return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? Paper::letter : Paper::a4;
}

QByteArray painted(const Sheet& sheet, const QString& path) {
  if (path.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive)) return sheet_svg(sheet);
  if (path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive)) return sheet_png(sheet, kDotsPerInch);
  return sheet_pdf(sheet);
}

}  // namespace

std::optional<Problem> export_sheet(const Answer& answer, int way, const QString& path) {
  const Sheet sheet(answer.job, answer.comparison, way, usual_paper());
  const auto bytes = painted(sheet, path);
  if (bytes.isEmpty())
    return Problem{path.toStdString(), "the diagram could not be painted", "choose another file type"};
  return safe_write(path, bytes);
}

}  // namespace foldyard
