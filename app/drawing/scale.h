#pragma once

// Scale: how many millimetres of cloth one millimetre of paper stands for.
//
// round_scale gives the finest scale a person can read off a ruler ("1 : 20")
// that is not finer than `needed`. free_scale is for screens, where the
// picture fits its place and only the scale bar tells the size.
//
// Example: round_scale(17.3).words() == "1 : 20"; on it 1500 mm take 75 mm.

#include <QPointF>
#include <QString>

#include "measure/length.h"
#include "measure/write_length.h"

class QPainter;

namespace foldyard {

struct Scale {
  double denominator = 1;

  double mm(Length length) const { return length.in_mm() / denominator; }
  QString words() const;
};

Scale round_scale(double needed);
Scale free_scale(double needed);

// The longest of 1, 2, 5 × 10ⁿ mm (in inches and yards: of round numbers of
// inches) that takes at most `longest_mm` of paper.
Length bar_length(const Scale& scale, Unit unit, double longest_mm);
// A bar of alternating fields with its length beside it, its left end at
// `left`, at most `longest_mm` long. Returns the width with the words.
double draw_scale_bar(QPainter& painter, const QPointF& left, const Scale& scale, Unit unit,
                      double longest_mm);

}  // namespace foldyard
