#include "shelf/shelf.h"

#include <QKeyEvent>
#include <QSignalBlocker>
#include <QStyle>
#include <QVBoxLayout>

#include "fields/field_text.h"
#include "fields/flow_row.h"
#include "job/start_job.h"
#include "language/spoken.h"
#include "measure/index.h"
#include "shelf/roll_dialog.h"
#include "shelf/roll_edits.h"

namespace foldyard {
namespace {

constexpr int kLeastTarget = 26;  // pixels

}  // namespace

Shelf::Shelf(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), rolls_(new RollModel(document, this)), shown_(new RollFilter(rolls_)),
      search_(new QLineEdit(this)), list_(new RollList(shown_, this)), actions_(list_), words_(new QLabel(this)),
      put_(new QPushButton(tr("&Put on the table"), this)), add_(new QPushButton(tr("A&dd a roll"), this)),
      about_(new QPushButton(tr("All about it…"), this)), form_(new RollForm(document, this)),
      names_(names_of(document.job().rolls)) {
  search_->setPlaceholderText(tr("Find a roll: its name, “one-way”, “flaw”…"));
  search_->setAccessibleName(tr("Find a roll"));
  search_->setClearButtonEnabled(true);
  search_->installEventFilter(this);
  put_->setToolTip(tr("Plan this roll: Enter, a double click, or drag it onto the table"));
  add_->setMenu(cloth_menu());
  add_->setToolTip(tr("A roll of a kind of cloth, with starting values to be measured on your own"));
  about_->setToolTip(tr("Name, colour, repeat, shrinkage, flaws and all else of the chosen roll"));
  words_->setWordWrap(true);
  words_->hide();
  arrange();
  connect_all();
  begin_anew();
}

void Shelf::arrange() {
  auto* row = new FlowBar;
  for (QWidget* target : std::initializer_list<QWidget*>{search_, put_, add_, about_}) target->setMinimumHeight(kLeastTarget);
  for (QPushButton* button : {put_, add_, about_}) row->row()->addWidget(button);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(5);
  layout->addWidget(search_);
  layout->addWidget(list_, 1);
  layout->addWidget(words_);
  layout->addWidget(row);
  layout->addWidget(form_);
}

std::vector<QWidget*> Shelf::tab_order() const {
  return {search_, list_, put_, add_, about_, form_->field(0)->line(), form_->field(1)->line(), form_->measure(),
          form_->field(2)->line(), form_->field(3)->line(), form_->one_way()};
}

void Shelf::connect_all() {
  connect(&document_, &Document::opened, this, &Shelf::begin_anew);
  connect(&document_, &Document::changed, this, &Shelf::follow_job);
  connect(search_, &QLineEdit::textChanged, this, &Shelf::search_for);
  connect(list_, &RollList::wanted, this, &Shelf::put_on_table);
  connect(list_, &RollList::dropped, this, &Shelf::move);
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& now) {
    if (now.isValid() && !rolls_->is_following()) choose(shown_->roll_at(now));
  });
  connect(put_, &QPushButton::clicked, this, [this] {
    list_->setFocus();  // the button has nothing more to do
    put_on_table(roll_);
  });
  connect(about_, &QPushButton::clicked, this, &Shelf::ask_all);
  connect(actions_.put, &QAction::triggered, this, [this] { put_on_table(roll_); });
  connect(actions_.all_about, &QAction::triggered, this, &Shelf::ask_all);
  connect(actions_.measure, &QAction::triggered, form_, &RollForm::ask_measure);
  connect(actions_.copy, &QAction::triggered, this, &Shelf::copy);
  connect(actions_.take_away, &QAction::triggered, this, &Shelf::take_away);
  connect(actions_.up, &QAction::triggered, this, &Shelf::move_up);
  connect(actions_.down, &QAction::triggered, this, &Shelf::move_down);
  connect(actions_.find, &QAction::triggered, this, [this] {
    search_->setFocus();
    search_->selectAll();
  });
}

bool Shelf::eventFilter(QObject* watched, QEvent* event) {
  if (watched != search_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Down:
    case Qt::Key_Return:
    case Qt::Key_Enter: go_to_list(); return true;
    case Qt::Key_Escape: search_->clear(); return true;
    default: return false;
  }
}

void Shelf::go_to_list() {
  if (shown_->rowCount() == 0) return;
  if (!list_->currentIndex().isValid()) list_->setCurrentIndex(shown_->index(0, 0));
  list_->setFocus();
}

QMenu* Shelf::cloth_menu() {
  auto* menu = new QMenu(this);
  menu->setToolTipsVisible(true);
  for (const ClothKind& kind : cloth_kinds()) {
    auto* entry = menu->addAction(spoken(kind.name), this, [this, &kind] { add_roll(kind); });
    entry->setToolTip(spoken(kind.basis));
  }
  return menu;
}

// A job that is opened has its first roll chosen and on the table.
void Shelf::begin_anew() {
  roll_ = on_table_ = 0;
  names_ = names_of(document_.job().rolls);
  search_->clear();
  rolls_->set_on_table(on_table_);
  show_chosen();
}

void Shelf::follow_job() {
  const Job& job = document_.job();
  roll_ = followed(names_, roll_, job);
  on_table_ = followed(names_, on_table_, job);
  names_ = names_of(job.rolls);
  rolls_->set_on_table(on_table_);
  show_found();
  show_chosen();
}

void Shelf::choose(int roll) {
  if (roll == roll_ || roll < 0) return;
  roll_ = roll;
  show_chosen();
  emit chosen(roll);
}

void Shelf::put_on_table(int roll) {
  if (roll < 0 || roll >= rolls_->rowCount()) return;
  choose(roll);
  if (roll == on_table_) return;
  on_table_ = roll;
  rolls_->set_on_table(roll);
  show_state();
  emit put(roll);
}

void Shelf::clear_table() {
  if (on_table_ < 0) return;
  on_table_ = -1;
  rolls_->set_on_table(on_table_);
  show_state();
  emit put(on_table_);
}

// The list's own choice follows; one that the search hides stays chosen unseen.
void Shelf::show_chosen() {
  const QModelIndex index = shown_->index_of(roll_);
  if (index.isValid() && index != list_->currentIndex()) list_->setCurrentIndex(index);
  if (index.isValid()) list_->scrollTo(index);
  form_->show_roll(roll_);
  show_state();
}

void Shelf::show_state() {
  const int count = rolls_->rowCount();
  const bool is_any = roll_ >= 0 && roll_ < count;
  put_->setEnabled(is_any && roll_ != on_table_);
  actions_.put->setEnabled(put_->isEnabled());
  for (QAction* action : {actions_.all_about, actions_.measure, actions_.copy, actions_.take_away}) action->setEnabled(is_any);
  about_->setEnabled(is_any);
  add_->setEnabled(is_any);
  const int row = shown_->index_of(roll_).row();
  actions_.up->setEnabled(is_any && row > 0);
  actions_.down->setEnabled(is_any && row >= 0 && row + 1 < shown_->rowCount());
}

void Shelf::search_for(const QString& words) {
  shown_->set_words(words);
  show_found();
  show_chosen();
}

void Shelf::show_found() {
  const bool none = shown_->rowCount() == 0 && rolls_->rowCount() > 0;
  tell(none ? tr("No roll has “%1”; clear the line above to see all %2.").arg(search_->text().trimmed()).arg(rolls_->rowCount())
            : QString(), false);
}

void Shelf::tell(const QString& words, bool fault) {
  words_->setProperty("fault", fault);
  words_->style()->unpolish(words_);
  words_->style()->polish(words_);
  words_->setText(words);
  words_->setVisible(!words.isEmpty());
}

QString Shelf::name_of(int roll) const { return QString::fromStdString(document_.job().rolls[ix(roll)].name); }

bool Shelf::edit(const Job& next, const QString& words, int chosen_then) {
  document_.end_field();
  if (const auto problem = document_.edit(next, words)) {
    tell(problem_text(*problem, next), true);
    return false;
  }
  if (!shown_->index_of(chosen_then).isValid()) search_->clear();
  choose(chosen_then);
  return true;
}

void Shelf::add_roll(const ClothKind& kind) {
  Job next = document_.job();
  foldyard::add_roll(next, kind, next.rolls[ix(roll_)].length, spoken(kind.name).toStdString());
  edit(next, tr("add “%1”").arg(QString::fromStdString(next.rolls.back().name)), static_cast<int>(next.rolls.size()) - 1);
}

void Shelf::copy() { edit(with_copy(document_.job(), roll_), tr("duplicate “%1”").arg(name_of(roll_)), roll_ + 1); }

void Shelf::take_away() {
  const auto next = without_roll(document_.job(), roll_);
  if (!next) return tell(spoken(next.problem()), true);
  edit(*next, tr("take “%1” away").arg(name_of(roll_)), std::min(roll_, static_cast<int>(next->rolls.size()) - 1));
}

void Shelf::move(int roll, int before) {
  if (roll < 0 || roll >= rolls_->rowCount() || place_after_move(roll, before) == roll) return;
  edit(with_moved(document_.job(), roll, before), tr("move “%1”").arg(name_of(roll)), place_after_move(roll, before));
}

// Past the neighbour that is seen, so that it works in a narrowed list as well.
void Shelf::move_up() {
  const int row = shown_->index_of(roll_).row();
  if (row > 0) move(roll_, shown_->roll_at(shown_->index(row - 1, 0)));
}

void Shelf::move_down() {
  const int row = shown_->index_of(roll_).row();
  if (row >= 0 && row + 1 < shown_->rowCount()) move(roll_, shown_->roll_at(shown_->index(row + 1, 0)) + 1);
}

void Shelf::ask_all() {
  document_.end_field();
  RollDialog dialog(document_.job(), roll_, this);
  if (dialog.exec() != QDialog::Accepted) return;
  edit(dialog.edited_job(), tr("change “%1”").arg(name_of(roll_)), roll_);
}

}  // namespace foldyard
