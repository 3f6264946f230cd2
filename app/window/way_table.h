#pragma once

// The comparison as a table in which one fold way is chosen.
//
// The chosen way stays chosen when a new answer comes; until a person has
// chosen one, the best is.

#include <QLabel>
#include <QTableView>

#include <optional>

#include "window/way_model.h"

namespace foldyard {

class WayTable : public QTableView {
  Q_OBJECT

 public:
  explicit WayTable(QWidget* parent = nullptr);

  void show_answer(const AnswerPtr& answer);
  // Back to the best way, for another roll or another job.
  void forget_choice() { choice_.reset(); }
  WayModel* ways() const { return model_; }
  // −1 before the first answer.
  int row() const { return currentIndex().row(); }

 signals:
  void chosen(int row);

 private:
  void take_row(const QModelIndex& current);

  WayModel* model_;
  std::optional<FoldWay> choice_;
  bool is_showing_ = false;
};

}  // namespace foldyard
