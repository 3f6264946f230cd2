#include "shelf/measure_dialog.h"

#include <QDoubleSpinBox>
#include <QEvent>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QStyle>
#include <QVBoxLayout>

#include <cmath>

#include "cloth/calibration.h"
#include "cloth/roll_estimate.h"
#include "drawing/range_words.h"
#include "drawing/words.h"
#include "job/check_job.h"
#include "fields/cloth_combo.h"
#include "fields/field_text.h"
#include "fields/room_for_words.h"
#include "language/spoken.h"
#include "measure/index.h"
#include "shelf/roll_words.h"

namespace foldyard {
namespace {

// What stands in the fields before anything is measured: sizes of a common roll.
// Common practice, no source.
constexpr MeasuredLength kOuter{Length::mm(200), Length::mm(5)};
constexpr MeasuredLength kTube{Length::mm(50), Length::mm(2)};
constexpr MeasuredCount kTurns{75, 1};
constexpr ByWeight kWeight{{20'000, 100}, {500, 100}, {4000, 200}};

Roll& roll_at(Job& job, int roll) { return job.rolls[ix(roll)]; }

// Diameters are small whatever the job's unit.
Unit diameter_unit(Unit unit) {
  if (unit == Unit::yard) return Unit::inch;
  return unit == Unit::m ? Unit::cm : unit;
}

}  // namespace

MeasureDialog::MeasureDialog(const Job& job, int roll, QWidget* parent)
    : QDialog(parent), job_(job), roll_(roll), ways_(new ClothCombo(this)),
      pages_(new QStackedWidget(this)), result_(new QLabel(this)),
      found_(new QCheckBox(this)), correct_(new QPushButton(this)),
      buttons_(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this)) {
  setWindowTitle(tr("Measure “%1”").arg(QString::fromStdString(roll_at(job_, roll_).name)));
  begin();
  build();
  show_figures();
}

void MeasureDialog::begin() {
  const Roll& roll = roll_at(job_, roll_);
  const Length tenth = Length::mm(1) / 10;  // of a millimetre, as a calliper reads
  const MeasuredLength ply{roll.fabric.thickness, (roll.fabric.thickness / 10 + tenth - Length::units(1)) / tenth * tenth};
  figures_ = {{kOuter, kTube, ply}, {kTurns, kOuter, kTube}, kWeight};
  if (roll.measured) take(*roll.measured);
}

void MeasureDialog::build() {
  auto* layout = new QVBoxLayout(this);
  ways_->addItems({tr("By its diameters"), tr("By counting its turns"), tr("By its weight")});
  ways_->setAccessibleName(tr("Way of measuring"));
  for (QWidget* page : {diameters_page(), turns_page(), weight_page()}) pages_->addWidget(page);
  const Roll& roll = roll_at(job_, roll_);
  const QString length = length_words(roll.length, roll_unit(job_.unit));
  found_->setText(tr("It was &unrolled and is %1 long").arg(length));
  found_->setChecked(roll.is_found);
  found_->setVisible(roll.is_found);
  correct_->setText(tr("&Put the figures right by the %1 found").arg(length));
  correct_->setVisible(roll.is_found);
  result_->setWordWrap(true);
  result_->setMinimumHeight(3 * fontMetrics().lineSpacing());
  result_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  for (QWidget* widget : std::initializer_list<QWidget*>{ways_, pages_, correct_, found_, result_, buttons_})
    layout->addWidget(widget);
  if (roll.measured) ways_->setCurrentIndex(static_cast<int>(roll.measured->index()));
  pages_->setCurrentIndex(ways_->currentIndex());
  connect(ways_, &QComboBox::currentIndexChanged, pages_, &QStackedWidget::setCurrentIndex);
  connect(ways_, &QComboBox::currentIndexChanged, this, &MeasureDialog::show_figures);
  connect(found_, &QCheckBox::toggled, this, &MeasureDialog::show_result);
  connect(correct_, &QPushButton::clicked, this, &MeasureDialog::put_right);
  connect(buttons_, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons_, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

bool MeasureDialog::event(QEvent* event) {
  const bool is_done = QDialog::event(event);
  if (event->type() == QEvent::LayoutRequest) grow_for_words(*this);
  return is_done;
}

QWidget* MeasureDialog::diameters_page() {
  auto* page = new QWidget(this);
  auto* grid = new QGridLayout(page);
  add_length(grid, tr("&Across the roll"), figures_.diameters.outer, diameter_unit(job_.unit));
  add_length(grid, tr("Across the &tube"), figures_.diameters.tube, diameter_unit(job_.unit));
  add_length(grid, tr("One ply, as &wound"), figures_.diameters.thickness, Unit::mm);
  return page;
}

QWidget* MeasureDialog::turns_page() {
  auto* page = new QWidget(this);
  auto* grid = new QGridLayout(page);
  add_count(grid, tr("Turns on the &rim"), figures_.turns.turns, 0, {});
  add_length(grid, tr("&Across the roll"), figures_.turns.outer, diameter_unit(job_.unit));
  add_length(grid, tr("Across the &tube"), figures_.turns.tube, diameter_unit(job_.unit));
  return page;
}

QWidget* MeasureDialog::weight_page() {
  auto* page = new QWidget(this);
  auto* grid = new QGridLayout(page);
  add_count(grid, tr("&Roll with its tube"), figures_.weight.roll, 3, tr(" kg"));
  add_count(grid, tr("Bare &tube"), figures_.weight.tube, 3, tr(" kg"));
  add_count(grid, tr("&Cloth"), figures_.weight.per_square_metre, 1, tr(" g/m²"));
  return page;
}

void MeasureDialog::add_row(QGridLayout* grid, const QString& label, QWidget* value, QWidget* give) {
  const int row = grid->rowCount();
  auto* title = new QLabel(label, this);
  title->setBuddy(value);
  title->setMinimumHeight(value->sizeHint().height());
  grid->addWidget(title, row, 0, Qt::AlignTop);
  grid->addWidget(value, row, 1, Qt::AlignTop);
  auto* sign = new QLabel(QStringLiteral("±"), this);
  sign->setMinimumHeight(title->minimumHeight());
  grid->addWidget(sign, row, 2, Qt::AlignTop);
  grid->addWidget(give, row, 3, Qt::AlignTop);
  grid->setColumnStretch(1, 3);
  grid->setColumnStretch(3, 2);
}

void MeasureDialog::add_length(QGridLayout* grid, const QString& label, MeasuredLength& figure,
                               Unit unit) {
  const QString name = QString(label).remove(QLatin1Char('&'));
  auto* value = length_field(name, figure.value, unit);
  add_row(grid, label, value, length_field(tr("%1, give").arg(name), figure.give, unit));
  value->setFocusProxy(value->line());
}

LengthField* MeasureDialog::length_field(const QString& name, Length& length, Unit unit) {
  auto* field = new LengthField(name, this);
  fields_.push_back(field);
  show_.push_back([field, &length, unit] { field->show_length(length, unit); });
  connect(field, &LengthField::typed, this, [this, &length](Length typed) {
    length = typed;
    show_result();
  });
  connect(field->line(), &QLineEdit::textEdited, this, &MeasureDialog::show_result);
  connect(field, &LengthField::left, this, &MeasureDialog::show_figures);
  return field;
}

void MeasureDialog::add_count(QGridLayout* grid, const QString& label, MeasuredCount& figure,
                              int places, const QString& unit) {
  const QString name = QString(label).remove(QLatin1Char('&'));
  add_row(grid, label, count_field(name, figure.value, places, unit),
          count_field(tr("%1, give").arg(name), figure.give, places, unit));
}

// The spin box shows a decimal; the figure is the whole number of its last place.
QWidget* MeasureDialog::count_field(const QString& name, std::int64_t& count, int places,
                                    const QString& unit) {
  auto* field = new QDoubleSpinBox(this);
  const double whole = std::pow(10, places);
  field->setAccessibleName(name);
  field->setDecimals(places);
  field->setRange(0, places == 0 ? 50'000 : 100'000);
  field->setSingleStep(places == 3 ? 0.1 : 1);
  field->setSuffix(unit);
  field->setButtonSymbols(QAbstractSpinBox::NoButtons);
  show_.push_back([field, &count, whole] {
    const QSignalBlocker quiet(field);
    field->setValue(static_cast<double>(count) / whole);
  });
  connect(field, &QDoubleSpinBox::valueChanged, this, [this, &count, whole](double value) {
    count = std::llround(value * whole);
    show_result();
  });
  return field;
}

std::vector<LengthField*> MeasureDialog::shown_fields() const {
  std::vector<LengthField*> shown;
  for (LengthField* field : fields_)
    if (pages_->currentWidget()->isAncestorOf(field)) shown.push_back(field);
  return shown;
}

RollMeasure MeasureDialog::measure() const {
  switch (ways_->currentIndex()) {
    case 1: return figures_.turns;
    case 2: return figures_.weight;
    default: return figures_.diameters;
  }
}

// Both diameters stand on two pages and are the same roll's.
void MeasureDialog::take(const RollMeasure& measure) {
  if (const auto* m = std::get_if<ByDiameters>(&measure)) {
    figures_.diameters = *m;
    figures_.turns.outer = m->outer;
    figures_.turns.tube = m->tube;
  } else if (const auto* n = std::get_if<ByTurns>(&measure)) {
    figures_.turns = *n;
    figures_.diameters.outer = n->outer;
    figures_.diameters.tube = n->tube;
  } else {
    figures_.weight = std::get<ByWeight>(measure);
  }
}

void MeasureDialog::put_right() {
  const Roll& roll = roll_at(job_, roll_);
  const Result<RollMeasure> right = corrected(measure(), roll.length + roll.cut_since, roll.fabric.width);
  if (!right) return;
  take(*right);
  show_figures();
}

Job MeasureDialog::measured_job() const {
  Job next = job_;
  Roll& roll = roll_at(next, roll_);
  if (roll.measured != measure()) roll.cut_since = {};
  roll.measured = measure();
  roll.is_found = found_->isChecked();
  const Result<LengthEstimate> range = estimate_of(roll);
  if (range && !roll.is_found) roll.length = range->least;
  return next;
}

void MeasureDialog::show_figures() {
  for (const auto& show : show_) show();
  show_result();
}

void MeasureDialog::show_result() {
  QString reason;
  for (const LengthField* field : shown_fields())
    if (reason.isEmpty()) reason = field->reason();
  const Roll& roll = roll_at(job_, roll_);
  const Result<LengthEstimate> range = estimate_of(roll, measure());
  if (reason.isEmpty() && !range)
    reason = spoken(Problem{"", range.problem().what, range.problem().next});
  if (reason.isEmpty()) {
    const Job next = measured_job();
    if (const auto problem = check_job(next)) reason = problem_text(*problem, next);
  }
  ok()->setEnabled(reason.isEmpty());
  result_->setProperty("fault", !reason.isEmpty());
  result_->style()->unpolish(result_);
  result_->style()->polish(result_);
  if (!reason.isEmpty()) return result_->setText(reason);
  const QString words = estimate_words(*range, roll_unit(job_.unit));
  result_->setText(found_->isChecked()
                       ? tr("%1; plans use the length found.").arg(words)
                       : tr("%1; plans use the least of it.").arg(words));
}

}  // namespace foldyard
