#include "window/own_roll_dialog.h"

#include <QDialogButtonBox>
#include <QEvent>
#include <QFormLayout>
#include <QVBoxLayout>

#include "document/new_job.h"
#include "fields/cloth_combo.h"
#include "fields/field_text.h"
#include "fields/room_for_words.h"
#include "job/check_job.h"
#include "language/spoken.h"
#include "language/utf8.h"

namespace foldyard {
namespace {

constexpr int kRoomForReasons = 560;  // so that what is wrong with a size takes few lines

}  // namespace

// The sizes to begin with are usual ones: 150 cm by 10 m, 54 in by 10 yd.
OwnRollDialog::OwnRollDialog(Unit unit, QWidget* parent)
    : QDialog(parent), unit_(unit), width_(unit == Unit::cm ? Length::mm(1500) : Length::inches64(54 * 64)),
      length_(unit == Unit::cm ? Length::mm(10'000) : Length::inches64(360 * 64)),
      width_field_(new LengthField(tr("Width of the roll"))), length_field_(new LengthField(tr("Length on the roll"))),
      goods_(new ClothCombo), reason_(new QLabel), confirmer_(new QPushButton(tr("Make the plan"))) {
  setWindowTitle(tr("Your own roll"));
  for (const auto& each : ready_goods()) goods_->addItem(spoken(each.name), text(each.key));
  goods_->setAccessibleName(tr("What you sew"));
  reason_->setWordWrap(true);
  reason_->setProperty("fault", true);
  arrange();
  width_field_->show_length(width_, unit_ == Unit::cm ? Unit::cm : Unit::inch);
  length_field_->show_length(length_, unit_ == Unit::cm ? Unit::m : Unit::yard);
  follow(width_field_, width_);
  follow(length_field_, length_);
  connect(goods_, &QComboBox::currentIndexChanged, this, &OwnRollDialog::look);
  look();
}

void OwnRollDialog::arrange() {
  setMinimumWidth(kRoomForReasons);
  auto* form = new QFormLayout;
  const auto add = [&](const QString& words, QWidget* field, QWidget* focus) {
    auto* label = new QLabel(words);
    label->setBuddy(focus);
    form->addRow(label, field);
  };
  add(tr("&Width, selvedge to selvedge"), width_field_, width_field_->line());
  add(tr("&Length on the roll"), length_field_, length_field_->line());
  add(tr("What you &sew"), goods_, goods_);
  auto* buttons = new QDialogButtonBox;
  buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole)->setAutoDefault(false);
  buttons->addButton(confirmer_, QDialogButtonBox::AcceptRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* column = new QVBoxLayout(this);
  column->addLayout(form);
  column->addWidget(reason_);
  column->addWidget(buttons);
  confirmer_->setDefault(true);  // only inside its dialog does that make Return its key
  width_field_->line()->setFocus();
  width_field_->line()->selectAll();
}

void OwnRollDialog::follow(LengthField* field, Length& length) {
  connect(field, &LengthField::typed, this, [this, &length](Length typed) {
    length = typed;
    look();
  });
  connect(field->line(), &QLineEdit::textEdited, this, &OwnRollDialog::look);
}

bool OwnRollDialog::event(QEvent* event) {
  const bool is_done = QDialog::event(event);
  if (event->type() == QEvent::LayoutRequest) grow_for_words(*this);
  return is_done;
}

Job OwnRollDialog::job() const {
  const auto* goods = goods_by_key(goods_->currentData().toString().toStdString());
  return own_job(unit_, width_, length_, *goods);
}

// What is wrong with the text of a field stands below the field.
void OwnRollDialog::look() {
  const bool is_told = !width_field_->reason().isEmpty() || !length_field_->reason().isEmpty();
  const Job made = job();
  const auto problem = check_job(made);
  confirmer_->setEnabled(!is_told && !problem);
  reason_->setText(problem && !is_told ? problem_text(*problem, made) : QString());
}

}  // namespace foldyard
