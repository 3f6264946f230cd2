#pragma once

// What a finished file shows, told by outside tools: poppler (pdftoppm,
// pdftotext, pdfinfo) and librsvg (rsvg-convert).

#include <QByteArray>
#include <QImage>
#include <QRectF>
#include <QString>
#include <vector>

namespace foldyard::probe {

inline constexpr int kDotsPerInch = 254;  // 10 dots a millimetre
inline constexpr double kDotsPerMm = 10;

struct Word {
  QString text;
  QRectF box;  // millimetres from the page's top left corner
};

struct Page {
  QSizeF size;  // millimetres
  std::vector<Word> words;
};

// Empty, or a null picture, if the tool fails.
QImage pdf_page(const QByteArray& pdf, int page);
std::vector<Page> pdf_words(const QByteArray& pdf);
QString pdf_text(const QByteArray& pdf);
QImage svg_picture(const QByteArray& svg);

// What poppler complains of while it reads the whole file; empty where it is sound.
QByteArray pdf_complaints(const QByteArray& pdf);

// Where the middle of the dark stroke near a place lies, in millimetres: of an
// upright stroke its x, of a level one its y. Far off where there is none.
double upright_stroke(const QImage& picture, const QPointF& near_mm);
double level_stroke(const QImage& picture, const QPointF& near_mm);

// The distances between the middles of opposite sides of the calibration
// square, in millimetres, in a picture at kDotsPerInch of a page of this size.
// The square stands at the lower right of the first page.
QSizeF square_in(const QImage& picture, const QSizeF& page);

}  // namespace foldyard::probe
