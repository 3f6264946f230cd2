#pragma once

// The first steps of a newcomer, in one line above the work: each is a button
// that leads there, and is ticked when it was done. It goes when it is closed.

#include <QFrame>
#include <QPushButton>

#include <array>

namespace foldyard {

class GuideStrip : public QFrame {
  Q_OBJECT

 public:
  enum Step { roll, sewn, printed };
  static constexpr int kSteps = 3;

  explicit GuideStrip(QWidget* parent = nullptr);

  void tick(Step step, bool is_done = true);
  bool is_ticked(Step step) const { return done_[step]; }
  bool is_done() const;

  QPushButton* step(Step step) const { return steps_[step]; }
  QPushButton* own_roll() const { return own_roll_; }
  QPushButton* closer() const { return closer_; }

 signals:
  // The person wants to be led there.
  void wanted(int step);

 private:
  void show_step(Step step);

  std::array<bool, kSteps> done_ = {};
  std::array<QPushButton*, kSteps> steps_;
  QPushButton* own_roll_;
  QPushButton* closer_;
};

}  // namespace foldyard
