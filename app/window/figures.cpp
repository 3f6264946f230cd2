#include "window/figures.h"

#include <QVBoxLayout>

#include <cmath>
#include <numeric>

#include "drawing/words.h"
#include "fields/flow_row.h"
#include "fields/reading_order.h"
#include "job/roll_of.h"
#include "language/local_numbers.h"
#include "measure/index.h"

namespace foldyard {
namespace {

std::int64_t panels_of(const Plan& plan) {
  return std::accumulate(plan.yield.begin(), plan.yield.end(), std::int64_t{0});
}

QString signed_text(double value, int places) {
  const QString text = QString::number(std::abs(value), 'f', places);
  if (text.toDouble() == 0) return QStringLiteral("±0");
  return (value < 0 ? QStringLiteral("−") : QStringLiteral("+")) + local_numbers(text);
}

double in_squares(Area area, Unit unit) {
  const double yard = Length::inches64(64 * 36).in_mm() / 1000;
  const bool yards = unit == Unit::inch || unit == Unit::yard;
  return area.in_square_metres() / (yards ? yard * yard : 1);
}

}  // namespace

Area waste_of(const Job& job, const Plan& plan) {
  const Length width = roll_of(job, plan).fabric.width;
  const Area kept = plan.remnant_kept ? width * plan.remnant.size() : Area();
  return plan.cloth - plan.used - kept;
}

QString area_words(Area area, Unit unit) {
  const bool yards = unit == Unit::inch || unit == Unit::yard;
  return (yards ? Figures::tr("%1 sq yd") : Figures::tr("%1 m²")).arg(local_number(in_squares(area, unit), 2));
}

std::array<QString, 4> figures_of(const Job& job, const Plan& plan) {
  return {QString::number(panels_of(plan)), use_words(plan.used, plan.cloth), area_words(waste_of(job, plan), job.unit),
          minutes_words(plan.time)};
}

std::array<QString, 4> differences(const Job& job, const Plan& plan, const Plan& other) {
  return {signed_text(static_cast<double>(panels_of(plan) - panels_of(other)), 0),
          signed_text(use_percent(plan.used, plan.cloth) - use_percent(other.used, other.cloth), 1),
          signed_text(in_squares(waste_of(job, plan), job.unit) - in_squares(waste_of(job, other), job.unit), 2),
          signed_text(plan.time.in_minutes() - other.time.in_minutes(), 0)};
}

namespace {

QString name_of(int figure, int panels) {
  switch (figure) {
    case Figures::panels: return Figures::tr("panel(s)", nullptr, panels);
    case Figures::use: return Figures::tr("of the cloth used");
    case Figures::waste: return Figures::tr("of waste");
    default: return Figures::tr("to cut it");
  }
}

}  // namespace

Figures::Figures(QWidget* parent) : QWidget(parent) {
  auto* row = new FlowRow(this, 26);
  row->setContentsMargins(4, 0, 4, 0);
  for (std::size_t i = 0; i < count; ++i) {
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    values_[i] = new QLabel;
    values_[i]->setProperty("figure", true);
    words_[i] = new QLabel(name_of(static_cast<int>(i), 0));
    words_[i]->setProperty("soft", true);
    column->addWidget(values_[i]);
    column->addWidget(words_[i]);
    row->add(column);
  }
}

void Figures::show_plan(const Job& job, const Plan* plan) {
  setVisible(plan != nullptr);
  if (!plan) return;
  const auto figures = figures_of(job, *plan);
  for (std::size_t i = 0; i < count; ++i) {
    values_[i]->setText(in_own_order(figures[i]));
    words_[i]->setText(name_of(static_cast<int>(i), figures[panels].toInt()));
  }
}

void Figures::show_against(const Job& job, const Plan& plan, const Plan& other) {
  show_plan(job, &plan);
  const auto figures = figures_of(job, plan);
  const auto differ = differences(job, plan, other);
  for (std::size_t i = 0; i < count; ++i)
    words_[i]->setText(tr("%1 (%2)").arg(name_of(static_cast<int>(i), figures[panels].toInt()), differ[i]));
}

}  // namespace foldyard
