#include "batch/stack_view.h"

#include <QPainter>

#include "drawing/palette.h"

namespace foldyard {
namespace {

constexpr int kLines = 8;
constexpr double kMargin = 8;

}  // namespace

StackView::StackView(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("The lay as it is stacked, top to bottom"));
  setFixedHeight(kLines * fontMetrics().height());
}

void StackView::show_stack(std::optional<StackData> stack) {
  stack_ = std::move(stack);
  const QString words = stack_ ? stack_band_words(*stack_).join(QStringLiteral("; ")) : QString();
  setAccessibleDescription(words);
  setToolTip(words);
  update();
}

QSize StackView::sizeHint() const { return {320, kLines * fontMetrics().height()}; }

// Paper stays light in the dark window too.
void StackView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette::paper());
  if (stack_) draw_stack(painter, QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, 0), *stack_);
}

}  // namespace foldyard
