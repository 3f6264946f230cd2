#pragma once

// The figures that decide, large: how many panels, how much of the cloth ends
// in them, how much of it is waste, how many minutes it takes; each with a word
// below.

#include <QLabel>
#include <QWidget>

#include <array>

#include "job/job.h"
#include "job/plan.h"
#include "measure/index.h"

namespace foldyard {

// All cloth that ends neither in panels nor in a remnant that is kept.
Area waste_of(const Job& job, const Plan& plan);
// "0.62 m²"; in square yards where the job is in inches or yards.
QString area_words(Area area, Unit unit);

// Its figures, one after another ("41", "92.4 %", "0.62 m²", "38 min"), and how
// they differ from another plan's ("−2", "−3.1", "+0.4", "+4").
std::array<QString, 4> figures_of(const Job& job, const Plan& plan);
std::array<QString, 4> differences(const Job& job, const Plan& plan, const Plan& other);

class Figures : public QWidget {
  Q_OBJECT

 public:
  explicit Figures(QWidget* parent = nullptr);

  // Null: no plan, no figures.
  void show_plan(const Job& job, const Plan* plan);
  // by hand: how the figures differ from another plan's ("−2", "+4 min").
  void show_against(const Job& job, const Plan& plan, const Plan& other);
  QString text(int index) const { return values_[ix(index)]->text(); }
  enum Index { panels, use, waste, minutes, count };
  QString words(int index) const { return words_[ix(index)]->text(); }

 private:
  std::array<QLabel*, count> values_{};
  std::array<QLabel*, count> words_{};
};

}  // namespace foldyard
