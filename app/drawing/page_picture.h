#pragma once

// One page as a picture in a file of its own: SVG, or PNG at so many dots an inch. Empty
// on failure (no font to write with, no memory). The painter's unit is 1 mm of paper,
// origin at the page's top left corner; the ground is white.
//
// Example: a page of A4 at 150 dots an inch: 1240 × 1754 dots.

#include <QByteArray>
#include <QSizeF>
#include <QString>
#include <functional>

class QPainter;

namespace foldyard {

using PagePainter = std::function<void(QPainter&)>;

QByteArray page_svg(const QSizeF& page_mm, const QString& title, const PagePainter& paint);
QByteArray page_png(const QSizeF& page_mm, int dots_per_inch, const PagePainter& paint);

}  // namespace foldyard
