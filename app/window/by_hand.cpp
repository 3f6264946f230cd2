#include "window/by_hand.h"

#include <utility>

#include "drawing/words.h"
#include "job/hand_edit.h"
#include "measure/index.h"

namespace foldyard {
namespace {

QString snap_words(Snap snap) {
  switch (snap) {
    case Snap::yield_changes: return ByHand::tr("the yield changes here");
    case Snap::tape_mark: return ByHand::tr("tape mark");
    case Snap::none: break;
  }
  return {};
}

}  // namespace

ByHand::ByHand(QUndoStack& history, PlanView* view, WayTable* ways, QObject* parent)
    : QObject(parent), view_(view), ways_(ways), put_back_(new QPushButton(tr("&Back to the best folds"))),
      book_(history) {
  put_back_->setToolTip(tr("Takes out all that is set by hand for this way; fold lines can be dragged on the flat cloth"));
  put_back_->hide();
  view_->add_beside_figures(put_back_);
  view_->table()->set_lines_movable(true);
  connect_table();
  connect(put_back_, &QPushButton::clicked, this, &ByHand::put_back);
  connect(&hand_, &FoldHand::planned, this, &ByHand::receive);
  connect(&hand_, &FoldHand::refused, this, &ByHand::refuse);
  connect(&hand_, &FoldHand::settled, this, &ByHand::settle);
  connect(&book_, &HandBook::changed, this, &ByHand::follow);
  connect(view_, &PlanView::shown, this, &ByHand::shown);
}

void ByHand::connect_table() {
  ClothTable* table = view_->table();
  connect(table, &ClothTable::line_taken, this, [this] { is_held_ = true; });
  connect(table, &ClothTable::line_moved, this, [this](int line, Length to) {
    if (has_plan()) hand_.move(place().way, hand(), line, to);
  });
  connect(table, &ClothTable::line_left, this, &ByHand::leave);
  connect(table, &ClothTable::line_stepped, this, [this](int line, int steps) {
    const auto from = line_place(line);
    if (!from) return;
    is_leaving_ = true;
    hand_.step(place().way, moved_ ? moved_->hand : hand(), line, *from, steps);
  });
  connect(table, &ClothTable::pin_toggled, this, &ByHand::toggle_pin);
}

void ByHand::forget() {
  book_.forget();
  answer_.reset();
}

void ByHand::set_question(const Question& question) {
  known_.clear();
  let_go();
  hand_.set_question(question);
}

// Nothing that is shown or planned now goes into the history any more.
void ByHand::let_go() {
  hand_.drop();
  moved_.reset();
  wish_.reset();
  is_held_ = is_leaving_ = false;
}

HandSet::Place ByHand::place() const {
  const int roll = answer_ ? answer_->comparison.roll : 0;
  return {answer_->job.rolls[ix(roll)].name, ways_->ways()->way_at(row_)};
}

HandPlanPtr ByHand::plan_of(const FoldWay& way) const {
  if (!answer_) return nullptr;
  const HandSet::Place at{answer_->job.rolls[ix(answer_->comparison.roll)].name, way};
  const auto known = known_.find(at);
  const bool is_set = known != known_.end() && known->second->hand == hand_at(book_.set(), at);
  return is_set ? known->second : nullptr;
}

Hand ByHand::hand() const { return has_plan() ? hand_at(book_.set(), place()) : Hand{}; }

std::optional<Length> ByHand::line_place(int line) const {
  const Plan* plan = view_->plan();
  const int pattern = view_->pattern();
  if (!has_plan() || pattern < 0) return std::nullopt;
  const std::vector<Length>& lines = plan->patterns[ix(pattern)].fold.lines;
  if (line < 0 || line >= std::ssize(lines)) return std::nullopt;
  return lines[ix(line)];
}

void ByHand::show_row(const AnswerPtr& answer, int row) {
  if (answer != answer_ || row != row_) let_go();
  answer_ = answer;
  row_ = row;
  plan_as_set();
}

// The plan with what is set for this roll and way; the best until it is there.
void ByHand::plan_as_set() {
  let_go();
  const Hand set = answer_ && row_ >= 0 && ways_->ways()->plan(row_) ? hand_at(book_.set(), place()) : Hand{};
  const auto known = set.is_empty() ? known_.end() : known_.find(place());
  if (known != known_.end() && known->second->hand == set) return show(known->second);
  show_best();
  if (!set.is_empty()) hand_.plan(place().way, set);
}

void ByHand::show_best() {
  view_->show_plan(answer_, ways_->ways()->way_index(row_));
  put_back_->setVisible(!hand().is_empty());
  show_pins(nullptr);
}

void ByHand::receive(const HandPlanPtr& plan) {
  if (!has_plan() || plan->way != place().way) return;
  emit told(QString());
  if (wish_ && plan->hand == wish_->hand) return commit(plan, std::exchange(wish_, std::nullopt)->words);
  if (plan->moved >= 0) moved_ = plan;
  else if (plan->hand == hand()) known_[place()] = plan;
  show(plan);
}

void ByHand::refuse(const QString& reason) {
  wish_.reset();
  if (!moved_) view_->show_state({});
  emit told(reason);
}

void ByHand::wish(const Hand& hand, const QString& words) {
  let_go();
  if (hand.is_empty()) return book_.change(place(), hand, words);
  wish_ = Wish{hand, words};
  view_->show_state(tr("planning…"));
  hand_.plan(place().way, hand);
}

void ByHand::commit(const HandPlanPtr& plan, const QString& words) {
  known_[place()] = plan;
  book_.change(place(), plan->hand, words);
}

void ByHand::show(const HandPlanPtr& plan) {
  view_->show_by_hand({plan, &plan->plan});
  put_back_->show();
  show_pins(plan.get());
}

// Pins and the tick on the tape; where a line that was just moved came to rest.
void ByHand::show_pins(const HandPlan* plan) {
  BoardView* flat = view_->table()->flat();
  std::vector<bool> pins;
  if (plan)
    for (const auto& line : plan->hand.lines) pins.push_back(line.has_value());
  flat->set_pins(pins);
  if (!plan || plan->moved < 0) {
    flat->set_snap(Snap::none, {});
    return view_->show_state({});
  }
  const Length at = *plan->hand.lines[ix(plan->moved)];
  flat->set_snap(plan->snap, at);
  view_->show_state(tr("Fold line %1 at %2: %3")
                        .arg(plan->moved + 1)
                        .arg(length_words(at, answer_->job.unit), snap_words(plan->snap)));
}

void ByHand::leave() {
  is_held_ = false;
  is_leaving_ = true;
  if (!hand_.is_busy()) settle();
}

// The hand has let go and the last plan is there: the whole drag is one step.
void ByHand::settle() {
  if (is_held_ || !is_leaving_) return;
  is_leaving_ = false;
  if (!moved_ || !has_plan()) return;
  const HandPlanPtr plan = std::exchange(moved_, nullptr);
  const Length at = *plan->hand.lines[ix(plan->moved)];
  commit(plan, tr("Move fold line %1 to %2").arg(plan->moved + 1).arg(length_words(at, answer_->job.unit)));
}

// The way whose wishes changed comes onto the table, so that undo is seen.
void ByHand::follow(const HandSet::Place& changed) {
  if (!answer_ || answer_->job.rolls[ix(answer_->comparison.roll)].name != changed.roll) return;
  const int row = ways_->ways()->row_of(changed.way);
  if (row < 0) return;
  if (row == row_) return plan_as_set();
  ways_->setCurrentIndex(ways_->ways()->index(row, WayModel::way));
}

void ByHand::put_back() {
  if (!has_plan()) return;
  let_go();
  if (hand().is_empty()) return show_best();
  book_.change(place(), {}, tr("Back to the best folds"));
}

void ByHand::toggle_pin(int line) {
  const auto at = line_place(line);
  if (!at) return;
  const Hand set = hand();
  if (set.has_line(line))
    return wish(with_line(set, place().way, line, std::nullopt), tr("Take the pin out of fold line %1").arg(line + 1));
  wish(with_line(set, place().way, line, *at),
       tr("Pin fold line %1 at %2").arg(line + 1).arg(length_words(*at, answer_->job.unit)));
}

void ByHand::keep_length(std::optional<Length> length) {
  if (!has_plan()) return;
  Hand set = hand();
  set.length = length;
  wish(set, length ? tr("Keep lengths of %1").arg(length_words(*length, answer_->job.unit)) : tr("Let the lengths be free"));
}

void ByHand::want_at_least(const std::string& panel, std::int64_t copies) {
  if (!has_plan()) return;
  const QString name = QString::fromStdString(panel);
  wish(with_at_least(hand(), panel, copies),
       copies > 0 ? tr("At least %1 of “%2”").arg(copies).arg(name) : tr("Any number of “%1”").arg(name));
}

AnswerPtr ByHand::shown_answer() const {
  if (!answer_ || !view_->is_by_hand()) return answer_;
  auto changed = std::make_shared<Answer>(*answer_);
  changed->comparison.ways[ix(ways_->ways()->way_index(row_))].plan = *view_->plan();
  return changed;
}

}  // namespace foldyard
