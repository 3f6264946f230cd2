#include "window/picture_view.h"

#include <QAccessible>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>

#include "drawing/palette.h"

namespace foldyard {
namespace {

constexpr double kZoomStep = 1.25;
constexpr double kFarthest = 1;
constexpr double kNearest = 8;
constexpr double kMargin = 8;  // pixels of paper around the picture

}  // namespace

class PictureView::Paper : public QWidget {
 public:
  using QWidget::QWidget;

  void show_picture(Paint paint) {
    paint_ = std::move(paint);
    update();
  }

 protected:
  void paintEvent(QPaintEvent* event) override {
    QPainter painter(this);
    painter.fillRect(event->rect(), palette::paper());
    if (!paint_) return;
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    paint_(painter, QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin));
  }

 private:
  Paint paint_;
};

PictureView::PictureView(const QString& name, QWidget* parent) : QScrollArea(parent), paper_(new Paper(this)) {
  setWidget(paper_);
  setWidgetResizable(false);
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(name);
  setMinimumSize(240, 160);
}

void PictureView::show(Paint paint, const QString& words) {
  paper_->show_picture(std::move(paint));
  if (words == accessibleDescription()) return;
  setAccessibleDescription(words);
  QAccessibleEvent news(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&news);
}

void PictureView::zoom_in() { set_zoom(zoom_ * kZoomStep); }
void PictureView::zoom_out() { set_zoom(zoom_ / kZoomStep); }
void PictureView::fit() { set_zoom(1); }

void PictureView::set_zoom(double zoom) {
  zoom_ = std::clamp(zoom, kFarthest, kNearest);
  size_paper();
}

void PictureView::size_paper() {
  const QSize room = maximumViewportSize();
  QSize fitting = room.expandedTo(kLeast);
  if (fitting.height() > room.height() && fitting.width() == room.width())
    fitting.rwidth() -= verticalScrollBar()->sizeHint().width();
  paper_->resize(zoom_ > 1 ? (QSizeF(fitting) * zoom_).toSize() : fitting);
}

void PictureView::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  size_paper();
}

void PictureView::wheelEvent(QWheelEvent* event) {
  if (!(event->modifiers() & Qt::ControlModifier)) return QScrollArea::wheelEvent(event);
  event->angleDelta().y() > 0 ? zoom_in() : zoom_out();
  event->accept();
}

}  // namespace foldyard
