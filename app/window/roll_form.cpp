#include "window/roll_form.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include "cloth/length_estimate.h"
#include "cloth/roll_edit.h"
#include "drawing/range_words.h"
#include "drawing/words.h"
#include "job/start_job.h"
#include "window/cloth_combo.h"
#include "window/field_text.h"
#include "window/measure_dialog.h"

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

bool is_metric(Unit unit) { return unit == Unit::mm || unit == Unit::cm || unit == Unit::m; }
Unit as_job(Unit unit) { return unit; }
Unit for_rolls(Unit unit) { return is_metric(unit) ? Unit::m : Unit::yard; }
Unit for_thickness(Unit) { return Unit::mm; }

const std::array<RollField, RollForm::kFields> kRollFields = {{
    {QT_TRANSLATE_NOOP("foldyard::RollForm", "&Width"), "width",
     QT_TRANSLATE_NOOP("foldyard::RollForm", "change the width of “%1”"),
     [](const Roll& r) { return r.fabric.width; }, [](Roll& r, Length l) { r = with_width(std::move(r), l); }, as_job},
    {QT_TRANSLATE_NOOP("foldyard::RollForm", "&Length"), "length",
     QT_TRANSLATE_NOOP("foldyard::RollForm", "change the length of “%1”"),
     [](const Roll& r) { return r.length; }, [](Roll& r, Length l) { r = with_length(std::move(r), l); }, for_rolls},
    {QT_TRANSLATE_NOOP("foldyard::RollForm", "&Selvedge"), "selvedge",
     QT_TRANSLATE_NOOP("foldyard::RollForm", "change the selvedge of “%1”"),
     [](const Roll& r) { return r.fabric.selvedge; }, [](Roll& r, Length l) { r.fabric.selvedge = l; }, as_job},
    {QT_TRANSLATE_NOOP("foldyard::RollForm", "&Thickness"), "thickness",
     QT_TRANSLATE_NOOP("foldyard::RollForm", "change the thickness of “%1”"),
     [](const Roll& r) { return r.fabric.thickness; }, [](Roll& r, Length l) { r.fabric.thickness = l; }, for_thickness},
}};

QString roll_title(const Roll& roll, Unit unit) {
  return QStringLiteral("%1 · %2 × %3")
      .arg(QString::fromStdString(roll.name), length_words(roll.fabric.width, unit),
           length_words(roll.length, for_rolls(unit)));
}

}  // namespace

RollForm::RollForm(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), chooser_(new ClothCombo(this)),
      one_way_(new QCheckBox(tr("&One-way nap or print"), this)), measure_(new QPushButton(tr("Meas&ured…"), this)),
      length_note_(new QLabel(this)), add_(new QPushButton(tr("A&dd a roll"), this)) {
  auto* layout = new QFormLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  layout->setRowWrapPolicy(QFormLayout::DontWrapRows);
  chooser_->setAccessibleName(tr("Roll"));
  chooser_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  chooser_->setMinimumContentsLength(16);
  layout->addRow(chooser_);
  for (int i = 0; i < kFields; ++i) {
    const auto label = tr(kRollFields[static_cast<std::size_t>(i)].label);
    auto* field = new LengthField(QString(label).remove(QLatin1Char('&')), this);
    fields_[static_cast<std::size_t>(i)] = field;
    auto* title = new QLabel(label, this);
    title->setBuddy(field->line());
    layout->addRow(title, field);
    connect(field, &LengthField::typed, this, [this, i](Length length) { take_length(i, length); });
    connect(field, &LengthField::left, &document_, &Document::end_field);
    if (QLatin1String(kRollFields[static_cast<std::size_t>(i)].key) == QLatin1String("length")) add_measure(layout);
  }
  one_way_->setToolTip(tr("The cloth looks different turned end for end, so it is never folded end to end."));
  add_->setMenu(cloth_menu());
  add_->setToolTip(tr("A roll of a kind of cloth, with starting values to be measured on your own"));
  auto* last = new QHBoxLayout;
  last->addWidget(one_way_, 1);
  last->addWidget(add_);
  layout->addRow(last);
  connect(chooser_, &QComboBox::activated, this, &RollForm::choose);
  connect(one_way_, &QCheckBox::clicked, this, &RollForm::take_nap);
  connect(&document_, &Document::changed, this, &RollForm::show_job);
  connect(&document_, &Document::opened, this, [this] { roll_ = 0; });
}

QMenu* RollForm::cloth_menu() {
  auto* menu = new QMenu(this);
  menu->setToolTipsVisible(true);
  for (const ClothKind& kind : cloth_kinds()) {
    const auto words = [](std::string_view text) {
      return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    };
    auto* entry = menu->addAction(words(kind.name), this, [this, &kind] { add_roll(kind); });
    entry->setToolTip(words(kind.basis));
  }
  return menu;
}

void RollForm::add_roll(const ClothKind& kind) {
  Job next = document_.job();
  foldyard::add_roll(next, kind, next.rolls[static_cast<std::size_t>(roll_)].length);
  const int added = static_cast<int>(next.rolls.size()) - 1;
  const auto words = tr("add “%1”").arg(QString::fromStdString(next.rolls.back().name));
  if (const auto problem = document_.edit(next, words)) {
    emit refused(problem_text(*problem, next));
    return;
  }
  choose(added);
}

void RollForm::choose(int roll) {
  if (roll == roll_) return;
  roll_ = roll;
  document_.end_field();
  for (auto* field : fields_) field->line()->clear();
  show_job();
  emit chosen(roll);
}

void RollForm::show_job() {
  const auto& job = document_.job();
  if (job.rolls.empty()) return;
  roll_ = std::min(roll_, static_cast<int>(job.rolls.size()) - 1);
  show_chooser();
  const auto& roll = job.rolls[static_cast<std::size_t>(roll_)];
  for (std::size_t i = 0; i < fields_.size(); ++i)
    fields_[i]->show_length(kRollFields[i].get(roll), kRollFields[i].unit(job.unit));
  one_way_->setChecked(roll.fabric.nap == Nap::one_way);
  show_length_note();
}

void RollForm::show_chooser() {
  const QSignalBlocker quiet(chooser_);
  const auto& job = document_.job();
  chooser_->clear();
  for (const auto& roll : job.rolls) chooser_->addItem(roll_title(roll, job.unit));
  chooser_->setCurrentIndex(roll_);
  chooser_->setToolTip(chooser_->currentText());
}

void RollForm::take_length(int index, Length length) {
  const auto& field = kRollFields[static_cast<std::size_t>(index)];
  Job next = document_.job();
  auto& roll = next.rolls[static_cast<std::size_t>(roll_)];
  field.set(roll, length);
  const auto where = QStringLiteral("rolls[%1].%2").arg(roll_).arg(QLatin1String(field.key));
  const auto words = tr(field.words).arg(QString::fromStdString(roll.name));
  if (const auto problem = document_.edit(next, words, where))
    fields_[static_cast<std::size_t>(index)]->refuse(problem_text(*problem, next));
}

void RollForm::add_measure(QFormLayout* layout) {
  measure_->setToolTip(tr("For a roll that nobody has unrolled: by its diameters, its turns or its weight."));
  length_note_->setWordWrap(true);
  length_note_->hide();
  layout->addRow(QString(), measure_);
  layout->addRow(QString(), length_note_);
  connect(measure_, &QPushButton::clicked, this, &RollForm::ask_measure);
}

void RollForm::ask_measure() {
  document_.end_field();
  MeasureDialog dialog(document_.job(), roll_, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const Job next = dialog.measured_job();
  const auto name = QString::fromStdString(next.rolls[static_cast<std::size_t>(roll_)].name);
  document_.edit(next, tr("measure “%1”").arg(name));
}

void RollForm::show_length_note() {
  const Job& job = document_.job();
  const Roll& roll = job.rolls[static_cast<std::size_t>(roll_)];
  QString words;
  if (roll.measured) {
    const Result<LengthEstimate> range = estimate(*roll.measured, roll.fabric.width);
    if (range) words = estimate_words(*range, for_rolls(job.unit));
  }
  if (!words.isEmpty())
    words = roll.is_found ? tr("Found so long; estimated at %1.").arg(words)
                          : tr("Estimated: %1. Plans use the least of it.").arg(words);
  length_note_->setText(words);
  length_note_->setVisible(!words.isEmpty());
}

void RollForm::take_nap(bool one_way) {
  Job next = document_.job();
  auto& roll = next.rolls[static_cast<std::size_t>(roll_)];
  roll.fabric.nap = one_way ? Nap::one_way : Nap::none;
  document_.edit(next, tr("change the nap of “%1”").arg(QString::fromStdString(roll.name)));
}

}  // namespace foldyard
