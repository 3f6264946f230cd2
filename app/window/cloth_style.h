#pragma once

// The style of the window's controls: check boxes with a plain outline and a
// chalk mark, so that they are seen in both shades, and no pictures on the buttons
// of dialogs; all else as it is.

#include <QProxyStyle>

namespace foldyard {

class ClothStyle : public QProxyStyle {
  Q_OBJECT

 public:
  ClothStyle();

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
  int pixelMetric(PixelMetric metric, const QStyleOption* option = nullptr, const QWidget* widget = nullptr) const override;
  int styleHint(StyleHint hint, const QStyleOption* option = nullptr, const QWidget* widget = nullptr,
                QStyleHintReturn* answer = nullptr) const override;
};

// A chalk mark around a centre, as on cloth.
void draw_chalk_mark(QPainter& painter, const QPointF& centre, const QColor& colour);

}  // namespace foldyard
