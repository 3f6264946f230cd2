#pragma once

// Asks what was measured of a roll that nobody has unrolled, and says at once what
// length that means.
//
// Three ways of measuring, each figure with its give. Nothing is changed until the
// dialog is accepted, and it can be accepted only while the figures make a job that
// stands (job/check_job.h). For a roll whose length was found it offers to put the
// least sure figure right, and to keep the length found.

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>

#include <functional>
#include <vector>

#include "job/job.h"
#include "fields/length_field.h"

class QGridLayout;

namespace foldyard {

class MeasureDialog : public QDialog {
  Q_OBJECT

 public:
  // REQUIRES 0 ≤ roll < job.rolls.size().
  MeasureDialog(const Job& job, int roll, QWidget* parent = nullptr);

  // The job with what is measured so far, whether it can stand or not.
  Job measured_job() const;

  QComboBox* ways() const { return ways_; }
  QCheckBox* found() const { return found_; }
  QPushButton* correct() const { return correct_; }
  QPushButton* ok() const { return buttons_->button(QDialogButtonBox::Ok); }
  QLabel* result() const { return result_; }
  // The length fields of the way shown: value, give, value, give … from the top.
  std::vector<LengthField*> shown_fields() const;

 protected:
  bool event(QEvent* event) override;

 private:
  struct Figures {
    ByDiameters diameters;
    ByTurns turns;
    ByWeight weight;
  };

  void begin();
  void build();
  QWidget* diameters_page();
  QWidget* turns_page();
  QWidget* weight_page();
  void add_length(QGridLayout* grid, const QString& label, MeasuredLength& figure, Unit unit);
  void add_count(QGridLayout* grid, const QString& label, MeasuredCount& figure, int places,
                 const QString& unit);
  void add_row(QGridLayout* grid, const QString& label, QWidget* value, QWidget* give);
  LengthField* length_field(const QString& name, Length& length, Unit unit);
  QWidget* count_field(const QString& name, std::int64_t& count, int places, const QString& unit);
  RollMeasure measure() const;
  void take(const RollMeasure& measure);
  void put_right();
  void show_figures();
  void show_result();

  Job job_;
  int roll_;
  Figures figures_;
  QComboBox* ways_;
  QStackedWidget* pages_;
  QLabel* result_;
  QCheckBox* found_;
  QPushButton* correct_;
  QDialogButtonBox* buttons_;
  std::vector<std::function<void()>> show_;  // each puts one figure into its field
  std::vector<LengthField*> fields_;
};

}  // namespace foldyard
