#include "window/hand_book.h"

#include <QUndoCommand>

#include "job/hand_edit.h"

namespace foldyard {

class HandEdit : public QUndoCommand {
 public:
  HandEdit(HandBook& book, HandSet::Place place, HandSet after, const QString& words)
      : QUndoCommand(words), book_(book), place_(std::move(place)), before_(book.set()), after_(std::move(after)) {}

  void undo() override { book_.put(before_, place_); }
  void redo() override { book_.put(after_, place_); }

 private:
  HandBook& book_;
  HandSet::Place place_;
  HandSet before_;
  HandSet after_;
};

HandBook::HandBook(QUndoStack& history, QObject* parent) : QObject(parent), history_(history) {}

void HandBook::change(const HandSet::Place& place, const Hand& hand, const QString& words) {
  HandSet after = with_hand(set_, place, hand);
  if (after != set_) history_.push(new HandEdit(*this, place, std::move(after), words));
}

void HandBook::forget() { set_ = {}; }

void HandBook::put(const HandSet& set, const HandSet::Place& place) {
  set_ = set;
  emit changed(place);
}

}  // namespace foldyard
