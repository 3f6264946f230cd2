#include "window/cloth_style.h"

#include <QPainter>
#include <QStyleOption>

#include "window/window_colours.h"

namespace foldyard {
namespace {

constexpr double kSide = 15;
constexpr int kRoomOfBox = 17;  // its outline too

bool is_box(QStyle::PrimitiveElement element) {
  return element == QStyle::PE_IndicatorCheckBox || element == QStyle::PE_IndicatorItemViewItemCheck;
}

void draw_box(QPainter& painter, const QStyleOption& option) {
  const auto& colours = window_colours(shade_of(option.palette));
  QRectF box(0, 0, kSide, kSide);
  box.moveCenter(QRectF(option.rect).center());
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(colours.soft_ink, 1.2));
  painter.setBrush(colours.field);
  painter.drawRoundedRect(box, 2, 2);
  if (option.state & QStyle::State_On) draw_chalk_mark(painter, box.center(), colours.chalk);
}

}  // namespace

ClothStyle::ClothStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void ClothStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
  if (!is_box(element)) return QProxyStyle::drawPrimitive(element, option, painter, widget);
  painter->save();
  draw_box(*painter, *option);
  painter->restore();
}

int ClothStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
  if (metric == PM_IndicatorWidth || metric == PM_IndicatorHeight) return kRoomOfBox;
  return QProxyStyle::pixelMetric(metric, option, widget);
}

int ClothStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget, QStyleHintReturn* answer) const {
  if (hint == SH_DialogButtonBox_ButtonsHaveIcons) return 0;
  return QProxyStyle::styleHint(hint, option, widget, answer);
}

void draw_chalk_mark(QPainter& painter, const QPointF& centre, const QColor& colour) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(colour, 2.2, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(centre + QPointF(-4, 0), centre + QPointF(-1, 3.5));
  painter.drawLine(centre + QPointF(-1, 3.5), centre + QPointF(4, -4));
  painter.restore();
}

}  // namespace foldyard
