#include "shelf/roll_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QRegularExpression>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <cmath>

#include "cloth/flaw_order.h"
#include "cloth/roll_estimate.h"
#include "cloth/roll_edit.h"
#include "drawing/range_words.h"
#include "fields/field_text.h"
#include "job/check_job.h"
#include "job/yield_range.h"
#include "language/spoken.h"
#include "measure/index.h"
#include "shelf/measure_dialog.h"
#include "shelf/roll_words.h"

namespace foldyard {
namespace {

struct LengthKey {
  const char* key;
  const char* label;
  Length (*get)(const Roll&);
  void (*set)(Roll&, Length);
  Unit (*unit)(Unit);
};

const std::array<LengthKey, 8> kLengths = {{
    {"width", QT_TRANSLATE_NOOP("foldyard::RollDialog", "&Width"), [](const Roll& r) { return r.fabric.width; },
     [](Roll& r, Length l) { r = with_width(std::move(r), l); }, size_unit},
    {"length", QT_TRANSLATE_NOOP("foldyard::RollDialog", "&Length"), [](const Roll& r) { return r.length; },
     [](Roll& r, Length l) { r = with_length(std::move(r), l); }, roll_unit},
    {"selvedge", QT_TRANSLATE_NOOP("foldyard::RollDialog", "&Selvedge, each side"),
     [](const Roll& r) { return r.fabric.selvedge; }, [](Roll& r, Length l) { r.fabric.selvedge = l; }, size_unit},
    {"thickness", QT_TRANSLATE_NOOP("foldyard::RollDialog", "&Thickness of a ply"),
     [](const Roll& r) { return r.fabric.thickness; }, [](Roll& r, Length l) { r.fabric.thickness = l; }, thickness_unit},
    {"repeat.along", QT_TRANSLATE_NOOP("foldyard::RollDialog", "Repeats &along every"),
     [](const Roll& r) { return r.fabric.repeat.along; }, [](Roll& r, Length l) { r.fabric.repeat.along = l; }, size_unit},
    {"repeat.start_along", QT_TRANSLATE_NOOP("foldyard::RollDialog", "the first &begins at"),
     [](const Roll& r) { return r.fabric.repeat.start_along; },
     [](Roll& r, Length l) { r.fabric.repeat.start_along = l; }, size_unit},
    {"repeat.across", QT_TRANSLATE_NOOP("foldyard::RollDialog", "Repeats a&cross every"),
     [](const Roll& r) { return r.fabric.repeat.across; }, [](Roll& r, Length l) { r.fabric.repeat.across = l; }, size_unit},
    {"repeat.start_across", QT_TRANSLATE_NOOP("foldyard::RollDialog", "the first be&gins at"),
     [](const Roll& r) { return r.fabric.repeat.start_across; },
     [](Roll& r, Length l) { r.fabric.repeat.start_across = l; }, size_unit},
}};

const LengthKey& length_of(const QString& key) {
  return *std::find_if(kLengths.begin(), kLengths.end(), [&](const LengthKey& l) { return key == QLatin1String(l.key); });
}

constexpr double kMostShrinkage = 50;  // percent

// What a screen reader says of a field beside which the same words stand twice.
QString spoken(const QString& key, QString label) {
  if (key == QLatin1String("repeat.start_along")) return RollDialog::tr("First repeat along begins at");
  if (key == QLatin1String("repeat.start_across")) return RollDialog::tr("First repeat across begins at");
  return label.remove(QLatin1Char('&'));
}

QLabel* heading(const QString& words, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  QFont bold = label->font();
  bold.setBold(true);
  label->setFont(bold);
  return label;
}

}  // namespace

RollDialog::RollDialog(const Job& job, int roll, QWidget* parent)
    : QDialog(parent), job_(job), roll_(roll), name_(new QLineEdit(this)), name_reason_(new QLabel(this)),
      measure_(new QPushButton(tr("Meas&ured…"), this)), length_note_(new QLabel(this)),
      one_way_(new QCheckBox(tr("One-way na&p or print"), this)), railroaded_(new QCheckBox(tr("&Railroaded: the pattern runs across"), this)),
      symmetric_(new QCheckBox(tr("Looks the same &mirrored"), this)), shrinks_along_(new QDoubleSpinBox(this)),
      shrinks_across_(new QDoubleSpinBox(this)), colours_(new ColourChoice(this)),
      flaws_(new FlawTable(edited(), job.unit, this)), reason_(new QLabel(this)),
      buttons_(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this)) {
  const Roll& shown = edited();
  setWindowTitle(tr("All about “%1”").arg(QString::fromStdString(shown.name)));
  name_->setText(QString::fromStdString(shown.name));
  one_way_->setChecked(shown.fabric.nap == Nap::one_way);
  railroaded_->setChecked(shown.fabric.railroaded);
  symmetric_->setChecked(shown.fabric.repeat.symmetric);
  colours_->show_colour(QString::fromStdString(shown.fabric.colour));
  arrange();
  connect_all();
  check();
}

QPushButton* RollDialog::ok() const { return buttons_->button(QDialogButtonBox::Ok); }

void RollDialog::arrange() {
  auto* inside = new QWidget(this);
  auto* both = new QHBoxLayout;
  both->setSpacing(24);
  both->addWidget(cloth_side(), 1);
  both->addWidget(pattern_side(), 1);
  auto* column = new QVBoxLayout(inside);
  column->addLayout(both);
  column->addWidget(heading(tr("Flaws, from the free end and the left edge"), inside));
  column->addWidget(flaws_, 1);
  auto* scroller = new QScrollArea(this);
  scroller->setWidget(inside);
  scroller->setWidgetResizable(true);
  scroller->setFocusPolicy(Qt::NoFocus);
  scroller->setFrameShape(QFrame::NoFrame);
  ok()->setText(tr("Change the roll"));
  buttons_->button(QDialogButtonBox::Cancel)->setText(tr("Cancel"));
  for (auto* button : buttons_->buttons()) button->setIcon({});
  reason_->setWordWrap(true);
  reason_->setProperty("fault", true);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(scroller, 1);
  layout->addWidget(reason_);
  layout->addWidget(buttons_);
  const QSize room = QGuiApplication::primaryScreen()->availableSize() - QSize(40, 70);
  resize(QSize(inside->sizeHint().width() + 40, inside->sizeHint().height() + 100).boundedTo(room));
  for (QPushButton* button : {measure_, colours_->other(), flaws_->adder(), flaws_->taker()}) button->setAutoDefault(false);
}

QWidget* RollDialog::cloth_side() {
  auto* side = new QWidget(this);
  auto* form = new QFormLayout(side);
  form->setContentsMargins(0, 0, 0, 0);
  auto* named = new QVBoxLayout;
  named->setSpacing(2);
  named->addWidget(name_);
  named->addWidget(name_reason_);
  name_->setAccessibleName(tr("Name"));
  name_reason_->setWordWrap(true);
  name_reason_->setProperty("fault", true);
  auto* title = new QLabel(tr("&Name"), side);
  title->setBuddy(name_);
  form->addRow(title, named);
  for (const char* key : {"width", "selvedge", "thickness", "length"}) add_length(form, QString::fromLatin1(key));
  length_note_->setWordWrap(true);
  length_note_->setProperty("soft", true);
  form->addRow(QString(), measure_);
  form->addRow(QString(), length_note_);
  form->addRow(tr("Colour"), colours_);
  return side;
}

QWidget* RollDialog::pattern_side() {
  auto* side = new QWidget(this);
  auto* form = new QFormLayout(side);
  form->setContentsMargins(0, 0, 0, 0);
  form->addRow(one_way_);
  form->addRow(railroaded_);
  for (const char* key : {"repeat.along", "repeat.start_along", "repeat.across", "repeat.start_across"})
    add_length(form, QString::fromLatin1(key));
  form->addRow(QString(), symmetric_);
  add_shrinkage(form, tr("Shr&inks along by"), shrinks_along_, edited().fabric.shrinkage.along);
  add_shrinkage(form, tr("Shrinks acr&oss by"), shrinks_across_, edited().fabric.shrinkage.across);
  auto* none = new QLabel(tr("0 where nothing repeats or shrinks."), side);
  none->setProperty("soft", true);
  form->addRow(QString(), none);
  return side;
}

void RollDialog::add_length(QFormLayout* form, const QString& key) {
  const QString label = tr(length_of(key).label);
  auto* field = new LengthField(spoken(key, label), this);
  fields_[key] = field;
  auto* title = new QLabel(label, this);
  title->setBuddy(field->line());
  form->addRow(title, field);
  connect(field, &LengthField::typed, this, [this, key](Length length) { take_length(key, length); });
  connect(field->line(), &QLineEdit::textEdited, this, &RollDialog::show_may_accept);
}

void RollDialog::add_shrinkage(QFormLayout* form, const QString& label, QDoubleSpinBox* box, std::int64_t& share) {
  box->setRange(0, kMostShrinkage);
  box->setDecimals(2);
  box->setSingleStep(0.5);
  box->setMinimumHeight(26);
  box->setButtonSymbols(QAbstractSpinBox::NoButtons);
  box->setSuffix(tr(" %"));
  box->setAccessibleName(QString(label).remove(QLatin1Char('&')));
  box->setValue(static_cast<double>(share) / 100);
  auto* title = new QLabel(label, this);
  title->setBuddy(box);
  form->addRow(title, box);
  connect(box, &QDoubleSpinBox::valueChanged, this, [this, &share](double value) {
    share = std::llround(value * 100);
    check();
  });
}

void RollDialog::connect_all() {
  connect(name_, &QLineEdit::textEdited, this, [this](const QString& name) {
    edited().name = name.trimmed().toStdString();
    check();
  });
  connect(one_way_, &QCheckBox::toggled, this, [this](bool on) {
    edited().fabric.nap = on ? Nap::one_way : Nap::none;
    check();
  });
  connect(railroaded_, &QCheckBox::toggled, this, [this](bool on) {
    edited().fabric.railroaded = on;
    check();
  });
  connect(symmetric_, &QCheckBox::toggled, this, [this](bool on) {
    edited().fabric.repeat.symmetric = on;
    check();
  });
  connect(colours_, &ColourChoice::chosen, this, [this](const QString& colour) {
    edited().fabric.colour = colour.toStdString();
    check();
  });
  connect(flaws_->model(), &FlawModel::changed, this, [this] {
    width_.end();
    check();
  });
  connect(fields_.at(QStringLiteral("width")), &LengthField::left, this, [this] { width_.end(); });
  connect(measure_, &QPushButton::clicked, this, &RollDialog::ask_measure);
  connect(buttons_, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons_, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

// A flaw over the whole width goes with the width that is meant, not with each that is
// on the way to it.
void RollDialog::take_length(const QString& key, Length length) {
  if (key == QLatin1String("length") && is_estimated(edited()) && length == shown_length(edited(), job_.unit)) return check();
  if (key == QLatin1String("width")) take_width(length);
  else length_of(key).set(edited(), length);
  check();
}

void RollDialog::take_width(Length width) {
  const auto flaws = edited().flaws;
  edited() = width_.typed(edited(), width);
  if (flaws != edited().flaws) flaws_->model()->show_anew();
}

void RollDialog::ask_measure() {
  MeasureDialog dialog(edited_job(), roll_, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const Job measured = dialog.measured_job();
  edited() = measured.rolls[ix(roll_)];
  flaws_->model()->show_anew();
  width_.end();
  check();
}

Job RollDialog::edited_job() const {
  Job next = job_;
  put_in_order(next.rolls[ix(roll_)].flaws);
  return next;
}

void RollDialog::show_lengths() {
  for (auto& [key, field] : fields_) {
    const bool is_length = key == QLatin1String("length");
    field->show_length(is_length ? shown_length(edited(), job_.unit) : length_of(key).get(edited()), length_of(key).unit(job_.unit));
  }
  length_note_->setText(length_note());
  length_note_->setVisible(!length_note_->text().isEmpty());
}

QString RollDialog::length_note() const {
  const Roll& roll = job_.rolls[ix(roll_)];
  if (!roll.measured) return {};
  const Result<LengthEstimate> range = estimate_of(roll);
  if (!range) return {};
  const QString words = estimate_words(*range, roll_unit(job_.unit));
  return roll.is_found ? tr("Found so long; estimated at %1.").arg(words)
                       : tr("Estimated: %1. Plans use the least of it.").arg(words);
}

void RollDialog::check() {
  show_lengths();
  name_reason_->clear();
  reason_->clear();
  const auto problem = check_unordered_job(job_);
  stands_ = !problem;
  const bool on_flaw = problem && problem->where.find(".flaws[") != std::string::npos;
  if (!on_flaw) flaws_->model()->blame_none();
  if (problem) place(*problem);
  name_reason_->setVisible(!name_reason_->text().isEmpty());
  reason_->setVisible(!reason_->text().isEmpty());
  show_may_accept();
}

// Beside a field of this roll the place need not be named again. Of two rolls with one
// name the job names the second, whichever is edited.
void RollDialog::place(const Problem& problem) {
  const QString where = QString::fromStdString(problem.where), mine = QStringLiteral("rolls[%1].").arg(roll_);
  static const QRegularExpression kName(QStringLiteral("^rolls\\[\\d+\\]\\.name$"));
  if (kName.match(where).hasMatch()) return name_reason_->setText(spoken(Problem{"", problem.what, problem.next}));
  if (!where.startsWith(mine)) return reason_->setText(problem_text(problem, job_));
  place_in_roll(where.mid(mine.size()), spoken(Problem{"", problem.what, problem.next}), problem);
}

void RollDialog::place_in_roll(const QString& key, const QString& sentence, const Problem& problem) {
  static const QRegularExpression kFlaw(QStringLiteral("^flaws\\[(\\d+)\\]\\.(\\w+)$"));
  const auto flaw = kFlaw.match(key);
  const auto field = fields_.find(key.startsWith(QLatin1String("measured")) ? QStringLiteral("length") : key);
  if (flaw.hasMatch()) flaws_->model()->blame(flaw.captured(1).toInt(), flaw.captured(2), sentence);
  else if (field != fields_.end()) field->second->refuse(sentence);
  else reason_->setText(problem_text(problem, job_));
}

void RollDialog::show_may_accept() {
  bool may = stands_ && !flaws_->model()->has_drafts();
  for (const auto& [key, field] : fields_) may = may && field->reason().isEmpty();
  ok()->setEnabled(may);
  measure_->setEnabled(may);
}

}  // namespace foldyard
