#pragma once

// ByHand: what a person sets for the plan on the table, and how it is shown.
//
// Fold lines, dragged or stepped, are pinned; while the hand moves, the plan
// follows, and when it lets go, the whole drag is one step of the history. The
// other pins, the length of all lengths and at least so many of a panel, are set
// at once. What is set belongs to one roll and one way; each comes back when its
// way is chosen again. A wish that cannot be met is told in one sentence, and the
// last good plan stays.

#include <QObject>
#include <QPushButton>

#include <map>
#include <optional>

#include "window/fold_hand.h"
#include "window/hand_book.h"
#include "window/plan_view.h"
#include "window/way_table.h"

namespace foldyard {

class ByHand : public QObject {
  Q_OBJECT

 public:
  // history: lives longer.
  ByHand(QUndoStack& history, PlanView* view, WayTable* ways, QObject* parent = nullptr);

  FoldHand& fold_hand() { return hand_; }
  HandBook& book() { return book_; }
  QPushButton* put_back_button() const { return put_back_; }

  // Another document: nothing is set.
  void forget();
  // Another job, roll or aim is asked for.
  void set_question(const Question& question);
  // A row of the comparison is on the table: with what was set for it.
  void show_row(const AnswerPtr& answer, int row);
  // What is on the table, in place of the best plan of its way.
  AnswerPtr shown_answer() const;

  // What is set for the plan on the table.
  Hand hand() const;
  bool has_plan() const { return answer_ && view_->plan(); }
  // What is on the table is of this answer, and its job; null before the first.
  const AnswerPtr& answer() const { return answer_; }
  const Job* job() const { return answer_ ? &answer_->job : nullptr; }
  // The plan with what is set for a way of the roll on the table; null where
  // nothing is, or it was not planned yet.
  HandPlanPtr plan_of(const FoldWay& way) const;

 public slots:
  void put_back();
  // Pins a line where it lies, or takes its pin out.
  void toggle_pin(int line);
  // None: lengths are free again.
  void keep_length(std::optional<foldyard::Length> length);
  void want_at_least(const std::string& panel, std::int64_t copies);

 signals:
  // In one sentence, why something cannot be; empty: all is well.
  void told(const QString& words);
  // Another plan is on the table, or another wish is set.
  void shown();

 private:
  void connect_table();
  void leave();
  void let_go();
  void settle();
  void receive(const HandPlanPtr& plan);
  void refuse(const QString& reason);
  // Planned first; what can be had goes into the history.
  void wish(const Hand& hand, const QString& words);
  void commit(const HandPlanPtr& plan, const QString& words);
  void show(const HandPlanPtr& plan);
  void show_best();
  void show_pins(const HandPlan* plan);
  void follow(const HandSet::Place& place);
  void plan_as_set();
  HandSet::Place place() const;
  std::optional<Length> line_place(int line) const;

  PlanView* view_;
  WayTable* ways_;
  QPushButton* put_back_;
  HandBook book_;
  FoldHand hand_;
  AnswerPtr answer_;
  int row_ = -1;
  std::map<HandSet::Place, HandPlanPtr> known_;  // of this question
  HandPlanPtr moved_;  // shown, not yet in the history
  struct Wish {
    Hand hand;
    QString words;
  };
  std::optional<Wish> wish_;  // being planned
  bool is_held_ = false;     // the hand is on a line
  bool is_leaving_ = false;  // it let go, and the last plan is on its way
};

}  // namespace foldyard
