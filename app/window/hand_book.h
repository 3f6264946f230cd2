#pragma once

// HandBook: what is set by hand for the plans in the window, kept in the history
// of the document beside its edits.
//
// It is no part of the job. One change is one step of the history, with words; a
// change that changes nothing leaves no trace. Undo gives the set before, redo the
// set after, exactly. It must live as long as the history holds its steps.

#include <QObject>
#include <QUndoStack>

#include "job/hand.h"

namespace foldyard {

class HandBook : public QObject {
  Q_OBJECT

 public:
  explicit HandBook(QUndoStack& history, QObject* parent = nullptr);

  const HandSet& set() const { return set_; }
  // words: for the history, "Move fold line 1 to 40.5 cm".
  void change(const HandSet::Place& place, const Hand& hand, const QString& words);
  // Another document: nothing is set, and nothing of it is in the history.
  void forget();

 signals:
  // By a change, an undo or a redo.
  void changed(const foldyard::HandSet::Place& place);

 private:
  friend class HandEdit;
  void put(const HandSet& set, const HandSet::Place& place);

  QUndoStack& history_;
  HandSet set_;
};

}  // namespace foldyard
