#pragma once

// The picture of one pattern, or of the roll, on its own: what is copied into a
// letter or another drawing. On white paper, as wide as a page's text and as
// high as it needs, in millimetres.
//
// pattern: index into the plan's patterns; −1 for the roll with its cross-cuts.
// The image has the given dots per inch; both are empty without a font.

#include <QByteArray>
#include <QImage>
#include <QSizeF>

#include "job/job.h"
#include "job/plan.h"

class QPainter;

namespace foldyard {

struct CopiedPicture {
  const Job& job;
  const Plan& plan;
  int pattern = -1;

  QSizeF size_mm() const;
  // The painter's unit is 1 mm.
  void paint(QPainter& painter) const;
  QImage image(double dots_per_inch) const;
  QByteArray svg() const;
};

}  // namespace foldyard
