#include "window/workshop_dialog.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <cmath>

#include "fields/cloth_combo.h"
#include "fields/field_text.h"
#include "job/cautions.h"
#include "job/check_job.h"
#include "job/decimal.h"
#include "language/local_numbers.h"
#include "language/spoken.h"
#include "measure/index.h"
#include "measure/write_length.h"

namespace foldyard {
namespace {

constexpr std::array kUnits = {Unit::mm, Unit::cm, Unit::m, Unit::inch, Unit::yard};
constexpr int kNoteWidth = 140;
constexpr int kRoomForNotes = 240;
constexpr int kAroundNotes = 40;  // margins of the dialog and a scroll bar
constexpr int kFieldWidth = 120;

// A number without zeros at its end.
class PlainSpin : public QDoubleSpinBox {
 public:
  using QDoubleSpinBox::QDoubleSpinBox;
  QString textFromValue(double value) const override {
    const double parts = std::pow(10, decimals());
    return local_numbers(QString::fromStdString(write_decimal(std::llround(value * parts), decimals())));
  }
};

QString group_words(WorkshopGroup group) {
  switch (group) {
    case WorkshopGroup::job: return WorkshopDialog::tr("The job");
    case WorkshopGroup::table: return WorkshopDialog::tr("Table and cutter");
    case WorkshopGroup::losses: return WorkshopDialog::tr("What is lost and kept");
    default: return WorkshopDialog::tr("The maker's pace");
  }
}

QLabel* heading(const QString& words) {
  auto* label = new QLabel(words);
  QFont bold = label->font();
  bold.setBold(true);
  label->setFont(bold);
  return label;
}

QLabel* wrapped(const char* kind) {
  auto* label = new QLabel;
  label->setWordWrap(true);
  label->setProperty(kind, true);
  return label;
}

Unit unit_of(const WorkshopLength& each, Unit unit) { return each.is_small ? (is_imperial(unit) ? Unit::inch : Unit::mm) : unit; }

QString caution_words(const Job& job) {
  QStringList lines{spoken(height_caution(job))};
  for (const std::string_view line : cautions()) lines << spoken(line);
  return lines.join(QLatin1Char('\n'));
}

}  // namespace

WorkshopDialog::WorkshopDialog(const Job& job, QWidget* parent)
    : QDialog(parent), job_(job), inside_(new QWidget), name_(new QLineEdit), name_reason_(wrapped("fault")), unit_(new ClothCombo),
      both_sides_(new QCheckBox(tr("One can stand on both sides"))), caution_(wrapped("soft")), reason_(wrapped("fault")),
      buttons_(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel)) {
  setWindowTitle(tr("Table, cutter and pace"));
  arrange();
  connect(buttons_, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons_, &QDialogButtonBox::rejected, this, &QDialog::reject);
  check();
  fit();
}

QPushButton* WorkshopDialog::ok() const { return buttons_->button(QDialogButtonBox::Ok); }

void WorkshopDialog::arrange() {
  auto* both = new QHBoxLayout(inside_);
  both->setSpacing(24);
  both->addWidget(side({WorkshopGroup::job, WorkshopGroup::table}), 1);
  both->addWidget(side({WorkshopGroup::losses, WorkshopGroup::pace}), 1);
  auto* scroller = new QScrollArea;
  scroller->setWidget(inside_);
  scroller->setWidgetResizable(true);
  scroller->setFocusPolicy(Qt::NoFocus);
  scroller->setFrameShape(QFrame::NoFrame);
  ok()->setText(tr("Change the workshop"));
  buttons_->button(QDialogButtonBox::Cancel)->setText(tr("Cancel"));
  for (auto* button : buttons_->buttons()) button->setIcon({});
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(scroller, 1);
  layout->addWidget(reason_);
  layout->addWidget(buttons_);
}

// When the notes are filled in, which decide how high it is.
void WorkshopDialog::fit() {
  inside_->layout()->invalidate();  // it was asked before its notes had words
  const QSize room = QGuiApplication::primaryScreen()->availableSize() - QSize(40, 70);
  const int width = std::min(inside_->minimumSizeHint().width() + kRoomForNotes, room.width());
  resize(width, std::min(inside_->heightForWidth(width - kAroundNotes) + 90, room.height()));
}

QWidget* WorkshopDialog::side(const std::vector<WorkshopGroup>& groups) {
  auto* side = new QWidget;
  auto* grid = new QGridLayout(side);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setVerticalSpacing(5);
  grid->setColumnMinimumWidth(1, kFieldWidth);
  grid->setColumnMinimumWidth(2, kNoteWidth);
  grid->setColumnStretch(2, 1);
  for (const WorkshopGroup group : groups) add_group(grid, group);
  grid->setRowStretch(grid->rowCount(), 1);
  return side;
}

void WorkshopDialog::add_group(QGridLayout* grid, WorkshopGroup group) {
  grid->addWidget(heading(group_words(group)), grid->rowCount(), 0, 1, 3);
  if (group == WorkshopGroup::job) add_job_rows(grid);
  for (const WorkshopLength& each : workshop_lengths())
    if (each.group == group) add_length(grid, each);
  for (const WorkshopNumber& each : workshop_numbers())
    if (each.group == group) add_number(grid, each);
  if (group == WorkshopGroup::table) add_table_rows(grid);
}

void WorkshopDialog::add_job_rows(QGridLayout* grid) {
  auto* named = new QWidget;
  auto* column = new QVBoxLayout(named);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(name_);
  column->addWidget(name_reason_);
  name_->setText(QString::fromStdString(job_.name));
  add_row(grid, tr("Name of the job"), named, name_, {});
  for (const Unit unit : kUnits) unit_->addItem(QString::fromStdString(unit_name(unit)));
  for (std::size_t i = 0; i < kUnits.size(); ++i)
    if (kUnits[i] == job_.unit) unit_->setCurrentIndex(static_cast<int>(i));
  unit_->setToolTip(tr("For what is shown; lengths may be typed in any unit"));
  add_row(grid, tr("Unit"), unit_, unit_, {});
  connect(name_, &QLineEdit::textEdited, this, [this](const QString& text) {
    job_.name = text.trimmed().toStdString();
    check();
  });
  connect(unit_, &QComboBox::currentIndexChanged, this, [this](int at) {
    job_.unit = kUnits[ix(at)];
    check();
  });
}

void WorkshopDialog::add_table_rows(QGridLayout* grid) {
  both_sides_->setChecked(job_.table.both_sides);
  both_sides_->setToolTip(tr("The reach of the cutter then counts from either long side"));
  const int row = grid->rowCount();
  grid->addWidget(both_sides_, row, 0, 1, 2);
  grid->addWidget(notes_[QStringLiteral("table.both_sides")] = wrapped("soft"), row, 2);
  connect(both_sides_, &QCheckBox::toggled, this, [this](bool on) {
    job_.table.both_sides = on;
    check();
  });
  grid->addWidget(caution_, grid->rowCount(), 0, 1, 3);
}

void WorkshopDialog::add_row(QGridLayout* grid, const QString& label, QWidget* field, QWidget* focus, const QString& key) {
  const int row = grid->rowCount();
  focus->setAccessibleName(label);
  auto* title = new QLabel(label);
  title->setBuddy(focus);
  grid->addWidget(title, row, 0);
  grid->addWidget(field, row, 1, 1, key.isEmpty() ? 2 : 1);
  if (key.isEmpty()) return;
  grid->addWidget(notes_[key] = wrapped("soft"), row, 2);
}

void WorkshopDialog::add_length(QGridLayout* grid, const WorkshopLength& each) {
  const QString key = QString::fromLatin1(each.key), label = tr(each.label);
  auto* field = new LengthField(label);
  lengths_[key] = field;
  field->line()->setToolTip(tr(each.help) + QLatin1Char('\n') + tr("Default: %1").arg(basis_of(key)));
  add_row(grid, label, field, field->line(), key);
  connect(field, &LengthField::typed, this, [this, of = each.of](Length length) {
    of(job_) = length;
    check();
  });
  connect(field->line(), &QLineEdit::textEdited, this, &WorkshopDialog::show_may_accept);
}

void WorkshopDialog::add_number(QGridLayout* grid, const WorkshopNumber& each) {
  const QString key = QString::fromLatin1(each.key);
  auto* box = new PlainSpin;
  numbers_[key] = box;
  const double parts = std::pow(10, each.places);
  box->setDecimals(each.places);
  box->setRange(static_cast<double>(each.limit.least) / parts, static_cast<double>(each.limit.most) / parts);
  box->setValue(static_cast<double>(each.get(job_)) / parts);
  if (*each.suffix) box->setSuffix(tr(each.suffix));
  box->setMinimumHeight(26);
  box->setButtonSymbols(QAbstractSpinBox::NoButtons);
  box->setToolTip(tr(each.help) + QLatin1Char('\n') + tr("Default: %1").arg(basis_of(key)));
  add_row(grid, tr(each.label), box, box, key);
  connect(box, &QDoubleSpinBox::valueChanged, this, [this, set = each.set, parts](double value) {
    set(job_, std::llround(value * parts));
    check();
  });
}

void WorkshopDialog::show_values() {
  for (const WorkshopLength& each : workshop_lengths())
    lengths_.at(QString::fromLatin1(each.key))->show_length(each.of(job_), unit_of(each, job_.unit));
  for (const auto& [key, note] : notes_) note->setText(assumption_note(job_, key));
  caution_->setText(caution_words(job_));
}

void WorkshopDialog::check() {
  show_values();
  name_reason_->clear();
  reason_->clear();
  const auto problem = check_job(job_);
  stands_ = !problem;
  if (problem) place(*problem);
  name_reason_->setVisible(!name_reason_->text().isEmpty());
  reason_->setVisible(!reason_->text().isEmpty());
  show_may_accept();
}

// Beside its field the place need not be named again.
void WorkshopDialog::place(const Problem& problem) {
  const auto sentence = spoken(Problem{"", problem.what, problem.next});
  const auto field = lengths_.find(QString::fromStdString(problem.where));
  if (field != lengths_.end()) field->second->refuse(sentence);
  else if (problem.where == "name") name_reason_->setText(sentence);
  else reason_->setText(problem_text(problem, job_));
}

void WorkshopDialog::show_may_accept() {
  bool may = stands_;
  for (const auto& [key, field] : lengths_) may = may && field->reason().isEmpty();
  ok()->setEnabled(may);
}

void ask_workshop(Document& document, QWidget* parent) {
  document.end_field();
  WorkshopDialog dialog(document.job(), parent);
  if (dialog.exec() == QDialog::Accepted) document.edit(dialog.job(), WorkshopDialog::tr("change the workshop"));
}

}  // namespace foldyard
