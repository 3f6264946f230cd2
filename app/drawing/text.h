#pragma once

// Text on paper: measured first, then drawn, so that nothing is cut off.
//
// All widths and heights are in millimetres at the painter's scale of 1 unit
// a millimetre; sizes are in points (1 pt = 25.4 / 72 mm). A line that is too
// long is elided at its end with an ellipsis; a paragraph is wrapped at
// spaces, and inside a word only where the word alone is too long.
//
// The font is DejaVu Sans (headings: DejaVu Serif), else what the system has.
// font_is_ready says whether letters can really be drawn and measured: without
// any font a picture would come out with no text and no error.

#include <QColor>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>

#include "drawing/palette.h"

class QPainter;

namespace foldyard {

inline constexpr double kMmPerPoint = 25.4 / 72;
inline constexpr double kSmallestPoints = 6.5;

struct TextStyle {
  double points = 8;
  bool bold = false;
  bool serif = false;
  QColor colour = palette::ink();
};

bool font_is_ready();

double text_width(const QString& text, const TextStyle& style);
double line_height(const TextStyle& style);
QString elided(const QString& text, const TextStyle& style, double width);
QStringList wrapped(const QString& text, const TextStyle& style, double width);
double paragraph_height(const QString& text, const TextStyle& style, double width);

// One line in a box, elided to it, set by its capitals' height.
void draw_text(QPainter& painter, const QRectF& box, const QString& text, const TextStyle& style,
               Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter);
// The same, read from below: the line runs upwards.
void draw_upward(QPainter& painter, const QRectF& box, const QString& text, const TextStyle& style,
                 Qt::Alignment alignment = Qt::AlignCenter);
// Returns the height it took.
double draw_paragraph(QPainter& painter, const QPointF& top_left, double width, const QString& text,
                      const TextStyle& style, Qt::Alignment alignment = Qt::AlignLeft);

}  // namespace foldyard
