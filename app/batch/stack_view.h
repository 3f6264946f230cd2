#pragma once

// The picture of a lay as it is stacked (drawing/stack_picture.h); its words are its
// accessible description.

#include <QWidget>

#include <optional>

#include "drawing/stack_picture.h"

namespace foldyard {

class StackView : public QWidget {
  Q_OBJECT

 public:
  explicit StackView(QWidget* parent = nullptr);

  // Nothing: no picture.
  void show_stack(std::optional<StackData> stack);
  const std::optional<StackData>& stack() const { return stack_; }
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::optional<StackData> stack_;
};

}  // namespace foldyard
