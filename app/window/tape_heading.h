#pragma once

// A heading on a piece of measuring tape: ticks along its lower edge, every
// fifth longer, every tenth with its number, as a maker's tape has them.

#include <QLabel>

namespace foldyard {

class TapeHeading : public QLabel {
  Q_OBJECT

 public:
  explicit TapeHeading(const QString& text, QWidget* parent = nullptr);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace foldyard
