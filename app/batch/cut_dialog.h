#pragma once

// "Mark as cut": which lays of the plan were cut, what was spoilt, and what really is
// left on each roll. It makes the next Job (job/mark_cut.h), which can be taken once
// it is confirmed; while there is none the reason stands in the dialog.

#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <optional>

#include "batch/batch_planner.h"
#include "batch/fill_in_model.h"
#include "batch/words_model.h"
#include "job/mark_cut.h"

namespace foldyard {

class CutDialog : public QDialog {
  Q_OBJECT

 public:
  // REQUIRES an answer with lays. Every lay is ticked at first.
  explicit CutDialog(const BatchAnswerPtr& answer, QWidget* parent = nullptr);

  // The job after cutting; REQUIRES that it can be confirmed.
  const Job& job() const { return *next_; }
  // For the history: "mark 3 lays as cut".
  QString words() const;
  WordsModel* lays() const { return lays_; }
  FillInModel* spoilt() const { return spoilt_; }
  FillInModel* left() const { return left_; }
  QPushButton* confirmer() const { return confirmer_; }
  QString reason() const { return reason_->text(); }

 private:
  void arrange();
  void look();
  // The lays that are ticked, as planned.
  CutReport as_planned() const;
  void show_rows(const Job& after);
  void read_spoilt(CutReport& report);
  void read_left(CutReport& report);
  void tick_all(bool on);

  BatchAnswerPtr answer_;
  std::optional<Job> next_;
  WordsModel* lays_;
  FillInModel* spoilt_;
  FillInModel* left_;
  QLineEdit* when_;
  QLabel* reason_;
  QPushButton* all_;
  QPushButton* none_;
  QPushButton* confirmer_;
  QString refused_;
};

}  // namespace foldyard
