#include "batch/batch_view.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

#include "batch/fill_in_view.h"
#include "batch/pin_edits.h"
#include "batch/rolls_in_batch.h"
#include "measure/index.h"

namespace foldyard {
namespace {

QString tab_name(BatchTableKind kind) {
  switch (kind) {
    case BatchTableKind::made: return BatchView::tr("Made");
    case BatchTableKind::lacking: return BatchView::tr("Lacking");
    case BatchTableKind::lays: return BatchView::tr("Lays");
    case BatchTableKind::rolls: return BatchView::tr("Rolls");
    case BatchTableKind::webbing: return BatchView::tr("Webbing");
    case BatchTableKind::winding: return BatchView::tr("Boards");
    case BatchTableKind::to_buy: return BatchView::tr("To buy");
    case BatchTableKind::remnants: return BatchView::tr("Remnants");
    case BatchTableKind::money: return BatchView::tr("Money");
    default: return BatchView::tr("Sittings");
  }
}

}  // namespace

BatchView::BatchView(BatchPlanner& planner, QWidget* parent)
    : QWidget(parent), figures_(new BatchFigures), words_(new QLabel), fault_(new QLabel), rounds_(new RoundRow(planner)),
      tabs_(new QTabBar), model_(new WordsModel(this)), table_(words_view(model_, tr("Rolls"))), note_(new QLabel), stack_(new StackView),
      keep_(new QPushButton(tr("Keep this lay"))), must_(new QPushButton(tr("Must be cut"))),
      mark_(new QPushButton(tr("Mark as cut…"))), tickets_(new QPushButton(tr("Tickets…"))), copy_(new QPushButton(tr("Copy"))) {
  arrange();
  connect(tabs_, &QTabBar::currentChanged, this, &BatchView::show_table);
  connect(model_, &WordsModel::ticked, this, &BatchView::roll_ticked);
  connect(mark_, &QPushButton::clicked, this, &BatchView::mark_wanted);
  connect(tickets_, &QPushButton::clicked, this, &BatchView::tickets_wanted);
  connect(copy_, &QPushButton::clicked, this, &BatchView::copy);
  connect(keep_, &QPushButton::clicked, this, [this] { emit keep_wanted(chosen_lay()); });
  connect(must_, &QPushButton::clicked, this, [this](bool on) { emit must_wanted(chosen_roll(), on); });
  connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &BatchView::show_chosen);
  auto* keys = new QAction(tr("Copy the table"), table_);
  keys->setShortcut(QKeySequence::Copy);
  keys->setShortcutContext(Qt::WidgetShortcut);
  connect(keys, &QAction::triggered, this, &BatchView::copy);
  table_->addAction(keys);
}

void BatchView::arrange() {
  for (QLabel* label : {words_, fault_, note_}) label->setWordWrap(true);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  fault_->setProperty("fault", true);
  note_->setProperty("soft", true);
  fault_->hide();
  tabs_->setAccessibleName(tr("Table of the batch"));
  tabs_->setExpanding(false);
  tabs_->setDrawBase(false);
  tabs_->setUsesScrollButtons(true);
  mark_->setToolTip(tr("Tell what was cut: the shelf becomes shorter, and the panels are on hand"));
  tickets_->setToolTip(tr("Write the papers for the cutting table as PDF, SVG or PNG"));
  copy_->setToolTip(tr("Copy the table that is shown, for a spreadsheet"));
  keep_->setToolTip(tr("The lengths of the chosen lay are cut so, whatever else is planned"));
  must_->setToolTip(tr("The batch cuts from the chosen roll in any case"));
  must_->setCheckable(true);
  auto* buttons = new QHBoxLayout;
  for (QPushButton* button : {keep_, must_, mark_, tickets_, copy_}) buttons->addWidget(button);
  buttons->addStretch(1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(figures_);
  layout->addWidget(words_);
  layout->addWidget(fault_);
  layout->addWidget(rounds_);
  layout->addWidget(tabs_);
  layout->addWidget(table_, 1);
  layout->addWidget(stack_);
  layout->addWidget(note_);
  layout->addLayout(buttons);
}

void BatchView::show_answer(const Job& job, const BatchAnswerPtr& answer) {
  const int before = table_->currentIndex().row();
  answer_ = answer;
  is_of_job_ = answer && answer->job == job;
  const TickedTable rolls = rolls_in_batch(job, is_of_job_ ? answer.get() : nullptr);
  ticks_ = rolls.ticks;
  musts_.clear();
  for (const Roll& roll : job.rolls) musts_.push_back(roll.in_batch == InBatch::must);
  tables_ = tables_with_rolls(rolls.table);
  figures_->show_answer(answer.get());
  words_->setText(answer ? batch_words(*answer) : QString());
  words_->setVisible(answer != nullptr);
  mark_->setEnabled(is_of_job_ && !answer->plan.lays.empty());
  tickets_->setEnabled(is_of_job_);
  show_tabs();
  show_table();
  if (before >= 0) table_->setCurrentIndex(model_->index(std::min(before, model_->rowCount() - 1), 0));
}

// The rolls' own table stands where that of the plan's rolls would.
std::vector<BatchTable> BatchView::tables_with_rolls(const BatchTable& rolls) const {
  std::vector<BatchTable> tables = answer_ ? batch_tables(*answer_) : std::vector<BatchTable>();
  const auto place = std::find_if(tables.begin(), tables.end(), [](const BatchTable& table) { return table.kind == BatchTableKind::rolls; });
  if (place == tables.end()) tables.push_back(rolls);
  else *place = rolls;
  return tables;
}

void BatchView::show_fault(const QString& reason) {
  fault_->setText(reason);
  fault_->setVisible(!reason.isEmpty());
}

// The table that was chosen stays chosen, wherever it stands now.
void BatchView::show_tabs() {
  const QSignalBlocker quiet(tabs_);
  const QVariant before = tabs_->tabData(tabs_->currentIndex());
  while (tabs_->count() > static_cast<int>(tables_.size())) tabs_->removeTab(tabs_->count() - 1);
  while (tabs_->count() < static_cast<int>(tables_.size())) tabs_->addTab(QString());
  int chosen = 0;
  for (int i = 0; i < tabs_->count(); ++i) {
    const auto kind = tables_[ix(i)].kind;
    tabs_->setTabText(i, tab_name(kind));
    tabs_->setTabData(i, static_cast<int>(kind));
    if (before.isValid() && before.toInt() == static_cast<int>(kind)) chosen = i;
  }
  tabs_->setCurrentIndex(chosen);
}

void BatchView::show_table() {
  const int tab = tabs_->currentIndex();
  if (tab < 0 || tab >= static_cast<int>(tables_.size())) return;
  const BatchTable& table = tables_[ix(tab)];
  model_->show(table.head, table.rows, table.kind == BatchTableKind::rolls ? ticks_ : std::vector<bool>());
  table_->setAccessibleName(table.heading);
  table_->setAccessibleDescription(table.note);
  note_->setText(table.kind == BatchTableKind::rolls ? tr("A roll that is not ticked stays out of the batch.") : table.note);
  note_->setVisible(!note_->text().isEmpty());
  if (table.kind == BatchTableKind::lays) table_->setCurrentIndex(model_->index(0, 0));
  show_chosen();
}

BatchTableKind BatchView::shown_kind() const {
  const int tab = tabs_->currentIndex();
  return tab < 0 || tab >= static_cast<int>(tables_.size()) ? BatchTableKind::made : tables_[ix(tab)].kind;
}

int BatchView::chosen_in(BatchTableKind kind) const { return shown_kind() == kind ? table_->currentIndex().row() : -1; }

void BatchView::show_chosen() {
  const int lay = chosen_lay(), roll = chosen_roll();
  const bool is_lay = answer_ && lay >= 0 && lay < std::ssize(answer_->plan.lays);
  stack_->setVisible(shown_kind() == BatchTableKind::lays);
  stack_->show_stack(is_lay ? std::optional<StackData>(stack_data(*answer_, lay)) : std::nullopt);
  keep_->setVisible(shown_kind() == BatchTableKind::lays);
  keep_->setEnabled(is_lay && is_of_job_ && can_keep(answer_->job, answer_->plan, lay));
  must_->setVisible(shown_kind() == BatchTableKind::rolls);
  must_->setEnabled(roll >= 0 && roll < std::ssize(musts_));
  must_->setChecked(must_->isEnabled() && musts_[ix(roll)]);
}

void BatchView::choose(BatchTableKind kind) {
  for (int i = 0; i < tabs_->count(); ++i)
    if (tabs_->tabData(i).toInt() == static_cast<int>(kind)) tabs_->setCurrentIndex(i);
}

void BatchView::copy() const { QGuiApplication::clipboard()->setText(model_->tab_separated()); }

}  // namespace foldyard
