#include "fields/cloth_combo.h"

#include <QPainterPath>
#include <QStylePainter>

namespace foldyard {
namespace {

constexpr int kArrowRoom = 20;

}  // namespace

void ClothCombo::paintEvent(QPaintEvent*) {
  QStylePainter painter(this);
  QStyleOptionComboBox option;
  initStyleOption(&option);
  option.subControls = QStyle::SC_ComboBoxFrame;
  painter.drawComplexControl(QStyle::CC_ComboBox, option);
  const QRect text = rect().adjusted(6, 0, -kArrowRoom, 0);
  painter.setPen(palette().color(QPalette::Text));
  painter.drawText(text, Qt::AlignLeft | Qt::AlignVCenter,
                   fontMetrics().elidedText(currentText(), Qt::ElideRight, text.width()));
  const QPointF tip(width() - kArrowRoom / 2.0, height() / 2.0 + 3);
  QPainterPath arrow(tip);
  arrow.lineTo(tip + QPointF(-5, -6));
  arrow.lineTo(tip + QPointF(5, -6));
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillPath(arrow, palette().color(QPalette::Text));
}

}  // namespace foldyard
