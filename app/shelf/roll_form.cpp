#include "shelf/roll_form.h"

#include <QFormLayout>
#include <QHBoxLayout>

#include "cloth/roll_estimate.h"
#include "cloth/roll_edit.h"
#include "drawing/range_words.h"
#include "fields/field_text.h"
#include "job/yield_range.h"
#include "measure/index.h"
#include "shelf/measure_dialog.h"
#include "shelf/roll_words.h"

namespace foldyard {
namespace {

struct RollField {
  const char* label;
  const char* key;
  const char* words;
  Length (*get)(const Roll&);
  void (*set)(Roll&, Length);
  Unit (*unit)(Unit);
};

constexpr int kWidth = 0;
constexpr int kLength = 1;

const std::array<RollField, RollForm::kFields> kRollFields = {{
    {QT_TRANSLATE_NOOP("foldyard::RollForm", "&Width"), "width",
     QT_TRANSLATE_NOOP("foldyard::RollForm", "change the width of “%1”"),
     [](const Roll& r) { return r.fabric.width; }, [](Roll& r, Length l) { r = with_width(std::move(r), l); }, size_unit},
    {QT_TRANSLATE_NOOP("foldyard::RollForm", "&Length"), "length",
     QT_TRANSLATE_NOOP("foldyard::RollForm", "change the length of “%1”"),
     [](const Roll& r) { return r.length; }, [](Roll& r, Length l) { r = with_length(std::move(r), l); }, roll_unit},
    {QT_TRANSLATE_NOOP("foldyard::RollForm", "&Selvedge"), "selvedge",
     QT_TRANSLATE_NOOP("foldyard::RollForm", "change the selvedge of “%1”"),
     [](const Roll& r) { return r.fabric.selvedge; }, [](Roll& r, Length l) { r.fabric.selvedge = l; }, size_unit},
    {QT_TRANSLATE_NOOP("foldyard::RollForm", "&Thickness"), "thickness",
     QT_TRANSLATE_NOOP("foldyard::RollForm", "change the thickness of “%1”"),
     [](const Roll& r) { return r.fabric.thickness; }, [](Roll& r, Length l) { r.fabric.thickness = l; }, thickness_unit},
}};

}  // namespace

RollForm::RollForm(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), one_way_(new QCheckBox(tr("&One-way nap or print"), this)),
      measure_(new QPushButton(tr("Meas&ured…"), this)), length_note_(new QLabel(this)) {
  auto* layout = new QFormLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setVerticalSpacing(4);
  layout->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  layout->setRowWrapPolicy(QFormLayout::DontWrapRows);
  for (int i = 0; i < kFields; ++i) add_field(layout, i);
  layout->addRow(QString(), one_way_);
  length_note_->setWordWrap(true);
  length_note_->hide();
  measure_->setToolTip(tr("For a roll that nobody has unrolled: by its diameters, its turns or its weight."));
  one_way_->setToolTip(tr("The cloth looks different turned end for end, so it is never folded end to end."));
  connect(measure_, &QPushButton::clicked, this, &RollForm::ask_measure);
  connect(one_way_, &QCheckBox::clicked, this, &RollForm::take_nap);
}

void RollForm::add_field(QFormLayout* layout, int index) {
  const auto label = tr(kRollFields[ix(index)].label);
  auto* field = new LengthField(QString(label).remove(QLatin1Char('&')), this);
  fields_[ix(index)] = field;
  auto* title = new QLabel(label, this);
  title->setBuddy(field->line());
  layout->addRow(title, index == kLength ? length_row(field) : field);
  if (index == kLength) layout->addRow(QString(), length_note_);
  connect(field, &LengthField::typed, this, [this, index](Length length) { take_length(index, length); });
  connect(field, &LengthField::left, this, [this] {
    document_.end_field();
    width_.end();
  });
}

QWidget* RollForm::length_row(LengthField* field) {
  auto* row = new QWidget(this);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(field, 1);
  layout->addWidget(measure_, 0, Qt::AlignTop);
  return row;
}

void RollForm::show_roll(int roll) {
  const auto& job = document_.job();
  if (roll < 0 || roll >= static_cast<int>(job.rolls.size())) return;
  if (roll != roll_) {
    document_.end_field();
    width_.end();
    for (auto* field : fields_) field->line()->clear();
  }
  roll_ = roll;
  const Roll& shown = job.rolls[ix(roll)];
  for (std::size_t i = 0; i < fields_.size(); ++i)
    fields_[i]->show_length(i == kLength ? shown_length(shown, job.unit) : kRollFields[i].get(shown), kRollFields[i].unit(job.unit));
  one_way_->setChecked(shown.fabric.nap == Nap::one_way);
  show_length_note();
}

void RollForm::take_length(int index, Length length) {
  const auto& field = kRollFields[ix(index)];
  Job next = document_.job();
  auto& roll = next.rolls[ix(roll_)];
  if (index == kLength && is_estimated(roll) && length == shown_length(roll, next.unit)) return;  // as it was
  if (index == kWidth) roll = width_.typed(roll, length);
  else field.set(roll, length);
  const auto where = QStringLiteral("rolls[%1].%2").arg(roll_).arg(QLatin1String(field.key));
  const auto words = tr(field.words).arg(QString::fromStdString(roll.name));
  if (const auto problem = document_.edit(next, words, where))
    fields_[ix(index)]->refuse(problem_text(*problem, next));
}

void RollForm::ask_measure() {
  document_.end_field();
  MeasureDialog dialog(document_.job(), roll_, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const Job next = dialog.measured_job();
  const auto name = QString::fromStdString(next.rolls[ix(roll_)].name);
  document_.edit(next, tr("measure “%1”").arg(name));
}

void RollForm::show_length_note() {
  const Job& job = document_.job();
  const Roll& roll = job.rolls[ix(roll_)];
  QString words;
  if (roll.measured) {
    const Result<LengthEstimate> range = estimate_of(roll);
    if (range) words = estimate_words(*range, roll_unit(job.unit));
  }
  if (!words.isEmpty())
    words = roll.is_found ? tr("Found so long; estimated at %1.").arg(words)
                          : tr("Estimated: %1. Plans use the least of it.").arg(words);
  length_note_->setText(words);
  length_note_->setVisible(!words.isEmpty());
}

void RollForm::take_nap(bool one_way) {
  Job next = document_.job();
  auto& roll = next.rolls[ix(roll_)];
  roll.fabric.nap = one_way ? Nap::one_way : Nap::none;
  document_.edit(next, tr("change the nap of “%1”").arg(QString::fromStdString(roll.name)));
}

}  // namespace foldyard
