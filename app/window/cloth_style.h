#pragma once

// The style of the window's controls: check boxes with a plain outline and a
// chalk mark, so that they are seen in both shades; all else as it is.

#include <QProxyStyle>

namespace foldyard {

class ClothStyle : public QProxyStyle {
  Q_OBJECT

 public:
  ClothStyle();

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
};

// A chalk mark around a centre, as on cloth.
void draw_chalk_mark(QPainter& painter, const QPointF& centre, const QColor& colour);

}  // namespace foldyard
