#pragma once

// The ground of the window: a plain weave, faint enough to carry any text.

#include <QWidget>

namespace foldyard {

class Linen : public QWidget {
  Q_OBJECT

 public:
  using QWidget::QWidget;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace foldyard
