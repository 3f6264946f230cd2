#pragma once

// A combo box drawn as a field with a plain triangle, in the window's colours.

#include <QComboBox>

namespace foldyard {

class ClothCombo : public QComboBox {
  Q_OBJECT

 public:
  using QComboBox::QComboBox;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace foldyard
