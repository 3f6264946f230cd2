#include "printing/print_form.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "drawing/template_data.h"
#include "drawing/words.h"
#include "fields/cloth_combo.h"
#include "measure/index.h"

namespace foldyard {
namespace {

constexpr int kRowsShown = 4;
constexpr int kRowHeight = 24;  // large enough to be hit
const std::vector<Unit> kUnits = {Unit::mm, Unit::cm, Unit::m, Unit::inch, Unit::yard};

void add_choice(QListWidget* list, const QString& words, bool on) {
  auto* row = new QListWidgetItem(words, list);
  row->setSizeHint(QSize(0, kRowHeight));
  row->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
  row->setCheckState(on ? Qt::Checked : Qt::Unchecked);
}

void fit_rows(QListWidget* list) {
  const int rows = std::clamp(list->count(), 1, kRowsShown);
  list->setFixedHeight(rows * kRowHeight + 2 * list->frameWidth() + 4);
  list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

QLabel* label_for(QWidget* field, const QString& words) {
  auto* label = new QLabel(words);
  label->setBuddy(field);
  return label;
}

}  // namespace

PrintForm::PrintForm(const PrintSource& source, Paper paper, QWidget* parent)
    : QWidget(parent), source_(source), paper_(new ClothCombo), turn_(new ClothCombo), unit_(new ClothCombo),
      diagram_(new QCheckBox(tr("The cutting dia&gram"))), comparison_(new QCheckBox(tr("&Compare the fold ways"))),
      patterns_(new QListWidget), templates_(new QListWidget), first_(new QSpinBox), last_(new QSpinBox) {
  fill(paper);
  arrange();
  connect_all();
}

void PrintForm::fill(Paper paper) {
  for (Paper kind : kPapers) paper_->addItem(paper_name(kind), static_cast<int>(kind));
  paper_->setCurrentIndex(paper_->findData(static_cast<int>(paper)));
  turn_->addItems({tr("Portrait"), tr("Landscape")});
  for (Unit unit : kUnits) unit_->addItem(unit_words(unit));
  unit_->setCurrentIndex(static_cast<int>(std::find(kUnits.begin(), kUnits.end(), source_.job.unit) - kUnits.begin()));
  diagram_->setChecked(true);
  comparison_->setChecked(true);
  const Plan& plan = source_.plan();
  for (int i = 0; i < static_cast<int>(plan.patterns.size()); ++i)
    add_choice(patterns_,
               tr("%1: %2 × %3")
                   .arg(pattern_letter(i))
                   .arg(lengths_of(plan, i))
                   .arg(length_words(plan.patterns[ix(i)].length, source_.job.unit)),
               true);
  for (std::size_t i = 0; i < source_.job.panels.size(); ++i) add_choice(templates_, QString(), false);
  show_template_pages();
  fit_rows(patterns_);
  fit_rows(templates_);
  for (QSpinBox* box : {first_, last_}) {
    box->setRange(1, 1);
    box->setButtonSymbols(QAbstractSpinBox::NoButtons);
  }
}

void PrintForm::arrange() {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(2, 2, 6, 2);
  auto* form = new QFormLayout;
  form->addRow(label_for(paper_, tr("Pap&er")), paper_);
  form->addRow(label_for(turn_, tr("Or&ientation")), turn_);
  form->addRow(label_for(unit_, tr("&Lengths in")), unit_);
  column->addLayout(form);
  column->addWidget(diagram_);
  column->addWidget(comparison_);
  column->addWidget(label_for(patterns_, tr("Pages of pa&tterns")));
  column->addWidget(patterns_);
  column->addWidget(label_for(templates_, tr("Te&mplates in full size")));
  column->addWidget(templates_);
  auto* pages = new QHBoxLayout;
  pages->addWidget(label_for(first_, tr("P&ages")));
  pages->addWidget(first_);
  pages->addWidget(label_for(last_, tr("t&o")));
  pages->addWidget(last_);
  pages->addStretch(1);
  column->addLayout(pages);
  column->addStretch(1);
  patterns_->setAccessibleName(tr("Pages of patterns"));
  templates_->setAccessibleName(tr("Templates in full size"));
  first_->setAccessibleName(tr("First page"));
  last_->setAccessibleName(tr("Last page"));
}

void PrintForm::connect_all() {
  for (QComboBox* combo : {paper_, turn_, unit_}) {
    combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    combo->setMinimumContentsLength(8);
  }
  for (QComboBox* combo : {paper_, turn_, unit_})
    connect(combo, &QComboBox::currentIndexChanged, this, [this] {
      show_template_pages();
      emit options_changed();
    });
  connect(diagram_, &QCheckBox::toggled, this, [this](bool on) {
    comparison_->setEnabled(on);
    patterns_->setEnabled(on);
    emit options_changed();
  });
  connect(comparison_, &QCheckBox::toggled, this, &PrintForm::options_changed);
  for (QListWidget* list : {patterns_, templates_})
    connect(list, &QListWidget::itemChanged, this, &PrintForm::options_changed);
  connect(first_, &QSpinBox::valueChanged, this, [this](int page) {
    last_->setMinimum(page);
    emit range_changed();
  });
  connect(last_, &QSpinBox::valueChanged, this, [this](int page) {
    first_->setMaximum(page);
    emit range_changed();
  });
}

// Beside each panel how many pages its template takes on this paper.
void PrintForm::show_template_pages() {
  const QSignalBlocker quiet(templates_);
  const SheetOptions now = options();
  for (int i = 0; i < templates_->count(); ++i) {
    const auto pages = template_page_count(source_.job, source_.fabric(), i, now);
    templates_->item(i)->setText(tr("%1 %2: %3 pages")
                                     .arg(panel_code(i))
                                     .arg(QString::fromStdString(source_.job.panels[ix(i)].name))
                                     .arg(pages));
    templates_->item(i)->setToolTip(templates_->item(i)->text());
  }
}

std::vector<int> PrintForm::checked(const QListWidget& list) const {
  std::vector<int> rows;
  for (int i = 0; i < list.count(); ++i)
    if (list.item(i)->checkState() == Qt::Checked) rows.push_back(i);
  return rows;
}

SheetOptions PrintForm::options() const {
  SheetOptions options;
  options.paper = static_cast<Paper>(paper_->currentData().toInt());
  options.landscape = turn_->currentIndex() == 1;
  options.unit = kUnits[ix(std::max(0, unit_->currentIndex()))];
  options.diagram = diagram_->isChecked();
  options.comparison = comparison_->isChecked();
  options.patterns = checked(*patterns_);
  for (int panel : checked(*templates_))
    if (!template_problem(source_.job, source_.fabric(), panel, options)) options.templates.push_back(panel);
  return options;
}

std::optional<Problem> PrintForm::problem() const {
  const SheetOptions now = options();
  for (int panel : checked(*templates_))
    if (auto problem = template_problem(source_.job, source_.fabric(), panel, now)) return problem;
  if (!now.diagram && now.templates.empty())
    return Problem{"", tr("There is nothing to print").toStdString(), tr("tick the diagram or a template").toStdString()};
  return {};
}

PageRange PrintForm::range() const { return {first_->value() - 1, last_->value() - 1}; }

void PrintForm::set_pages(int pages) {
  const QSignalBlocker first(first_), last(last_);
  const bool to_end = last_->value() >= last_->maximum();
  const int most = std::max(1, pages);
  first_->setRange(1, most);
  last_->setRange(1, most);
  if (to_end) last_->setValue(most);
  first_->setMaximum(last_->value());
  last_->setMinimum(first_->value());
}

std::vector<QWidget*> PrintForm::fields() const {
  return {paper_, turn_, unit_, diagram_, comparison_, patterns_, templates_, first_, last_};
}

}  // namespace foldyard
