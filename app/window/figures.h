#pragma once

// The figures that decide, large: how many panels, how much of the cloth ends
// in them, how many minutes it takes; each with a word below.

#include <QLabel>
#include <QWidget>

#include <array>

#include "job/plan.h"

namespace foldyard {

class Figures : public QWidget {
  Q_OBJECT

 public:
  explicit Figures(QWidget* parent = nullptr);

  // Null: no plan, no figures.
  void show_plan(const Plan* plan);
  // by hand: how the figures differ from another plan's ("−2", "+4 min").
  void show_against(const Plan& plan, const Plan& other);
  QString text(int index) const { return values_[static_cast<std::size_t>(index)]->text(); }
  enum Index { panels, use, minutes, count };

 private:
  std::array<QLabel*, count> values_{};
  std::array<QLabel*, count> words_{};
};

}  // namespace foldyard
