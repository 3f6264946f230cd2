#include "app/drawing/paper_probe.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <cmath>

#include "drawing/calibration_square.h"

namespace foldyard::probe {

namespace {

constexpr double kMmPerPoint = 25.4 / 72;

bool put(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
}

QByteArray output_of(const QString& tool, const QStringList& arguments) {
  QProcess process;
  process.start(tool, arguments);
  const bool done = process.waitForFinished(60000) && process.exitCode() == 0;
  return done ? process.readAllStandardOutput() : QByteArray();
}

double number(const QXmlStreamReader& xml, const char* name) {
  return xml.attributes().value(QLatin1String(name)).toDouble() * kMmPerPoint;
}

// The middle of the dark stroke near `at` along one row or column of dots.
template <class Grey>
double stroke_middle(const Grey& grey, double at) {
  double weight = 0, sum = 0;
  for (int i = static_cast<int>(at) - 8; i <= static_cast<int>(at) + 8; ++i) {
    const int value = grey(i);
    if (value > 190) continue;
    weight += 255 - value;
    sum += (255 - value) * (i + 0.5);
  }
  return weight > 0 ? sum / weight : -1e9;
}

}  // namespace

QImage pdf_page(const QByteArray& pdf, int page) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("sheet.pdf"), number = QString::number(page + 1);
  if (!put(path, pdf)) return {};
  output_of("pdftoppm", {"-r", QString::number(kDotsPerInch), "-gray", "-png", "-singlefile", "-f",
                         number, "-l", number, path, folder.filePath("page")});
  return QImage(folder.filePath("page.png")).convertToFormat(QImage::Format_Grayscale8);
}

std::vector<Page> pdf_words(const QByteArray& pdf) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("sheet.pdf");
  if (!put(path, pdf)) return {};
  QXmlStreamReader xml(output_of("pdftotext", {"-bbox", path, "-"}));
  std::vector<Page> pages;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("page"))
      pages.push_back({{number(xml, "width"), number(xml, "height")}, {}});
    if (xml.name() != QLatin1String("word") || pages.empty()) continue;
    const QRectF box(QPointF(number(xml, "xMin"), number(xml, "yMin")),
                     QPointF(number(xml, "xMax"), number(xml, "yMax")));
    pages.back().words.push_back({xml.readElementText(), box});
  }
  return pages;
}

QString pdf_text(const QByteArray& pdf) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("sheet.pdf");
  return put(path, pdf) ? QString::fromUtf8(output_of("pdftotext", {path, "-"})) : QString();
}

QImage svg_picture(const QByteArray& svg) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("sheet.svg");
  if (!put(path, svg)) return {};
  const QString dots = QString::number(kDotsPerInch);
  const QByteArray png = output_of("rsvg-convert", {"-d", dots, "-p", dots, "--unlimited", path});
  return QImage::fromData(png).convertToFormat(QImage::Format_Grayscale8);
}

QByteArray pdf_complaints(const QByteArray& pdf) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("sheet.pdf");
  if (!put(path, pdf)) return "not written";
  QByteArray complaints;
  for (const auto& [tool, arguments] :
       {std::pair<QString, QStringList>{"pdfinfo", {path}}, {"pdftotext", {path, "-"}}}) {
    QProcess process;
    process.start(tool, arguments);
    if (!process.waitForFinished(60000) || process.exitCode() != 0) complaints += "failed; ";
    complaints += process.readAllStandardError();
  }
  return complaints;
}

double upright_stroke(const QImage& picture, const QPointF& near_mm) {
  const QPointF at = near_mm * kDotsPerMm;
  if (!picture.rect().adjusted(9, 9, -9, -9).contains(at.toPoint())) return -1e9;
  const int row = static_cast<int>(at.y());
  return stroke_middle([&](int x) { return qGray(picture.pixel(x, row)); }, at.x()) / kDotsPerMm;
}

double level_stroke(const QImage& picture, const QPointF& near_mm) {
  const QPointF at = near_mm * kDotsPerMm;
  if (!picture.rect().adjusted(9, 9, -9, -9).contains(at.toPoint())) return -1e9;
  const int column = static_cast<int>(at.x());
  return stroke_middle([&](int y) { return qGray(picture.pixel(column, y)); }, at.y()) /
         kDotsPerMm;
}

QSizeF square_in(const QImage& picture, const QSizeF& page) {
  const double left = page.width() - 12 - kSquare, top = page.height() - 14 - kSquare;
  // Away from the rulers' ticks: between the lowest two of an eighth of an inch
  // (3.175 mm) and between two millimetres beyond the last number.
  const int row = static_cast<int>((top + kSquare - 1.6) * kDotsPerMm);
  const int column = static_cast<int>((left + 97.5) * kDotsPerMm);
  if (picture.width() <= column || picture.height() <= (top + kSquare + 1) * kDotsPerMm) return {};
  const auto across = [&](int x) { return qGray(picture.pixel(x, row)); };
  const auto down = [&](int y) { return qGray(picture.pixel(column, y)); };
  const auto middle = [](const auto& grey, double mm) {
    return stroke_middle(grey, mm * kDotsPerMm);
  };
  return {(middle(across, left + kSquare) - middle(across, left)) / kDotsPerMm,
          (middle(down, top + kSquare) - middle(down, top)) / kDotsPerMm};
}

}  // namespace foldyard::probe
