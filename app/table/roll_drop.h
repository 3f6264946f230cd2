#pragma once

// A roll that is dragged within the window, and a place that takes it.
//
// A roll goes by its place in the job, under a type of our own that holds only
// within one running program. Anything else is refused, and the pointer shows so.

#include <QLabel>
#include <QObject>

#include <memory>
#include <optional>

class QDropEvent;
class QMimeData;

namespace foldyard {

std::unique_ptr<QMimeData> roll_to_drag(int roll);
// Nothing where it is no roll of this program.
std::optional<int> dragged_roll(const QMimeData& dragged);

// Makes a widget take rolls: it is framed while one is over it, and `dropped`
// tells which was let go.
class RollDrop : public QObject {
  Q_OBJECT

 public:
  explicit RollDrop(QWidget* place);
  // What stands over the place while a roll is held there.
  QLabel* hint() const { return hint_; }

 signals:
  void dropped(int roll);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  bool take(QDropEvent& event, bool let_go);

  QWidget* place_;
  QLabel* hint_;
};

}  // namespace foldyard
