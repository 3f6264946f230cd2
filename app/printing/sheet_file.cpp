#include "printing/sheet_file.h"

#include <QLocale>

#include "file/safe_write.h"

namespace foldyard {
namespace {

constexpr int kDotsPerInch = 150;

QByteArray painted(const Sheet& sheet, const QString& path, PageRange range) {
  if (path.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive)) return sheet_svg(sheet, range);
  if (path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive))
    return sheet_png(sheet, kDotsPerInch, range);
  return sheet_pdf(sheet, range);
}

}  // namespace

std::optional<Problem> write_sheet(const Sheet& sheet, const QString& path, PageRange range) {
  const auto bytes = painted(sheet, path, range);
  if (bytes.isEmpty())
    return Problem{path.toStdString(), say("the diagram could not be painted"),
                   say("choose another file type, or fewer pages")};
  return safe_write(path, bytes);
}

Paper usual_paper() {
  return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? Paper::letter
                                                                            : Paper::a4;
}

}  // namespace foldyard
