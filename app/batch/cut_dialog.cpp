#include "batch/cut_dialog.h"

#include <QDate>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

#include "batch/fill_in_view.h"
#include "batch/order_words.h"
#include "drawing/batch_rows.h"
#include "drawing/words.h"
#include "fields/field_text.h"
#include "language/spoken.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
namespace {

// Which cells of a lay's row say what it is: number, lengths, size, yield.
std::vector<QStringList> short_rows(const BatchTable& table) {
  std::vector<QStringList> rows;
  for (const QStringList& row : table.rows) rows.push_back({row.value(0), row.value(1), row.value(2), row.constLast()});
  return rows;
}

// Of the rolls in these lays, as indices into Job::rolls, in their order.
std::set<int> rolls_in(const BatchPlan& plan, const std::vector<int>& lays) {
  std::set<int> rolls;
  for (const int lay : lays) {
    for (const StackedLength& length : plan.lays[ix(lay)].lengths)
      rolls.insert(plan_of(plan, length).roll);
  }
  return rolls;
}

QString panel_key(const CutPanels& cut) { return QStringLiteral("%1 %2").arg(cut.panel).arg(text(cut.cloth)); }

}  // namespace

CutDialog::CutDialog(const BatchAnswerPtr& answer, QWidget* parent)
    : QDialog(parent), answer_(answer), lays_(new WordsModel(this)),
      spoilt_(new FillInModel({tr("Panel"), tr("Cloth"), tr("Cut"), tr("Spoilt")}, this)),
      left_(new FillInModel({tr("Roll"), tr("Before"), tr("Left, as reckoned"), tr("Really left")}, this)),
      when_(new QLineEdit(QDate::currentDate().toString(Qt::ISODate))), reason_(new QLabel),
      all_(new QPushButton(tr("&All"))), none_(new QPushButton(tr("&None"))), confirmer_(new QPushButton(tr("Mark as cut"))) {
  setWindowTitle(tr("Mark as cut"));
  const BatchTable table = lays_table(*answer_);
  lays_->show({tr("Lay"), tr("Lengths, bottom to top"), tr("Each"), tr("Gives")}, short_rows(table),
              std::vector<bool>(table.rows.size(), true));
  arrange();
  connect(lays_, &WordsModel::ticked, this, &CutDialog::look);
  connect(spoilt_, &FillInModel::filled_in, this, &CutDialog::look);
  connect(left_, &FillInModel::filled_in, this, &CutDialog::look);
  connect(when_, &QLineEdit::textEdited, this, &CutDialog::look);
  connect(all_, &QPushButton::clicked, this, [this] { tick_all(true); });
  connect(none_, &QPushButton::clicked, this, [this] { tick_all(false); });
  look();
  resize(760, 640);
}

void CutDialog::arrange() {
  auto* form = new QFormLayout;
  auto* when = new QLabel(tr("&When"));
  when->setBuddy(when_);
  form->addRow(when, when_);
  reason_->setWordWrap(true);
  reason_->setProperty("fault", true);
  auto* buttons = new QDialogButtonBox;
  buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
  buttons->addButton(confirmer_, QDialogButtonBox::AcceptRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* ticks = new QHBoxLayout;
  ticks->addWidget(new QLabel(tr("Tick the lays that were cut.")), 1);
  ticks->addWidget(all_);
  ticks->addWidget(none_);
  auto* column = new QVBoxLayout(this);
  column->addLayout(ticks);
  column->addWidget(words_view(lays_, tr("Lays that were cut")), 3);
  column->addWidget(new QLabel(tr("Panels that came out spoilt; empty: none.")));
  column->addWidget(fill_in_view(spoilt_, tr("Spoilt panels")), 2);
  column->addWidget(new QLabel(tr("Measure the rolls, if you can; empty: as reckoned.")));
  column->addWidget(fill_in_view(left_, tr("What is left on the rolls")), 2);
  column->addLayout(form);
  column->addWidget(reason_);
  column->addWidget(buttons);
}

void CutDialog::tick_all(bool on) {
  for (int row = 0; row < lays_->rowCount(); ++row)
    if (lays_->ticks()[ix(row)] != on)
      lays_->setData(lays_->index(row, 0), on ? Qt::Checked : Qt::Unchecked, Qt::CheckStateRole);
}

CutReport CutDialog::as_planned() const {
  CutReport report{when_->text().trimmed().toStdString(), {}};
  for (int lay = 0; lay < lays_->rowCount(); ++lay)
    if (lays_->ticks()[ix(lay)]) report.lays.push_back(lay);
  return report;
}

QString CutDialog::words() const {
  const auto lays = static_cast<int>(as_planned().lays.size());
  return tr("mark %n lay(s) as cut", nullptr, lays);
}

void CutDialog::look() {
  next_.reset();
  refused_.clear();
  CutReport report = as_planned();
  auto after = mark_cut(answer_->job, answer_->plan, report);
  if (after) {
    show_rows(*after);
    read_spoilt(report);
    read_left(report);
    after = mark_cut(answer_->job, answer_->plan, report);
  }
  if (refused_.isEmpty() && !after) refused_ = order_problem_text(after.problem(), answer_->job);
  if (refused_.isEmpty()) next_ = *after;
  reason_->setText(refused_);
  reason_->setVisible(!refused_.isEmpty());
  confirmer_->setEnabled(next_.has_value());
}

// after: the job after cutting as planned, with a record of what was cut.
void CutDialog::show_rows(const Job& after) {
  const Job& job = answer_->job;
  std::vector<FillInModel::Row> panels;
  for (const CutPanels& cut : after.history.back().panels)
    panels.push_back({panel_key(cut), {text(job.panels[ix(cut.panel)].name), text(cut.cloth), QString::number(cut.count)}});
  std::vector<FillInModel::Row> rolls;
  for (const int at : rolls_in(answer_->plan, as_planned().lays)) {
    const Roll& roll = job.rolls[ix(at)];
    const auto found = std::find_if(after.rolls.begin(), after.rolls.end(), [&](const Roll& each) { return each.name == roll.name; });
    rolls.push_back({QString::number(at), {text(roll.name), length_words(roll.length, job.unit),
                                           found == after.rolls.end() ? tr("nothing to keep") : length_words(found->length, job.unit)}});
  }
  spoilt_->show(panels);
  left_->show(rolls);
}

void CutDialog::read_spoilt(CutReport& report) {
  std::map<QString, QString> reasons;
  const auto planned = mark_cut(answer_->job, answer_->plan, report);
  for (CutPanels cut : planned->history.back().panels) {
    const QString entry = spoilt_->entry(panel_key(cut));
    if (entry.isEmpty()) continue;
    const auto count = typed_count(entry);
    if (!count) reasons[panel_key(cut)] = order_problem_text(count.problem(), answer_->job);
    if (!count || *count == 0) continue;
    cut.count = *count;
    report.spoilt.push_back(cut);
  }
  spoilt_->set_reasons(reasons);
  if (!reasons.empty()) refused_ = reasons.begin()->second;
}

void CutDialog::read_left(CutReport& report) {
  std::map<QString, QString> reasons;
  for (const FillInModel::Row& row : left_->rows()) {
    const QString entry = left_->entry(row.key);
    if (entry.isEmpty()) continue;
    const auto length = typed_length(entry, answer_->job.unit);
    if (length) report.left.push_back({row.key.toInt(), *length});
    else reasons[row.key] = spoken(length.problem());
  }
  left_->set_reasons(reasons);
  if (refused_.isEmpty() && !reasons.empty()) refused_ = reasons.begin()->second;
}

}  // namespace foldyard
