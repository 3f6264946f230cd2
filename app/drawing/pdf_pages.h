#pragma once

// Pages as one PDF file, true to scale; empty on failure (no font to write with, no
// memory, no page). The painter's unit is 1 mm of paper, origin at the page's top
// left corner. The file asks viewers to print at actual size.

#include <QByteArray>
#include <QString>
#include <functional>

#include "drawing/paper.h"

class QPainter;

namespace foldyard {

QByteArray pdf_pages(Paper paper, bool landscape, const QString& title, int pages,
                     const std::function<void(QPainter&, int)>& paint);

}  // namespace foldyard
