#pragma once

// A label inside a rectangle: name and detail on a plain ground over a hatch.
//
// It takes the first of these that fits, and nothing if none does: the name
// wrapped, with its detail (wrapped, too) below; the same running upwards; the name elided to
// one line, level or upwards; the code alone. Text is never smaller than
// kSmallestPoints and never leaves the box.

#include <QRectF>
#include <QString>

class QPainter;

namespace foldyard {

struct Label {
  QString name;
  QString detail;
  QString code;
  double points = 7.5;
  bool bold = true;
};

// Returns the place it covers; empty if nothing was drawn.
QRectF draw_label(QPainter& painter, const QRectF& box, const Label& label);

}  // namespace foldyard
