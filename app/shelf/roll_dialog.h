#pragma once

// All about one roll: every field that a job has for it, lengths typed as people
// write them.
//
// Nothing is changed until the dialog is accepted, and it can be accepted only
// while the job with this roll can stand (job/check_job.h). What is wrong stands
// beside the field it is about, or at the foot where it is about none.

#include <QCheckBox>
#include <QDialog>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <map>

#include "fields/length_field.h"
#include "job/job.h"
#include "measure/index.h"
#include "measure/result.h"
#include "shelf/colour_choice.h"
#include "shelf/flaw_table.h"
#include "shelf/width_typing.h"

class QDialogButtonBox;
class QFormLayout;

namespace foldyard {

class RollDialog : public QDialog {
  Q_OBJECT

 public:
  // REQUIRES 0 ≤ roll < job.rolls.size().
  RollDialog(const Job& job, int roll, QWidget* parent = nullptr);

  // The job with the roll as it is now, its flaws in order, whether it can stand or not.
  Job edited_job() const;

  QLineEdit* name() const { return name_; }
  // key: as in a job file, "width", "repeat.along".
  LengthField* field(const QString& key) const { return fields_.at(key); }
  QCheckBox* one_way() const { return one_way_; }
  QCheckBox* railroaded() const { return railroaded_; }
  QCheckBox* symmetric() const { return symmetric_; }
  QDoubleSpinBox* shrinks_along() const { return shrinks_along_; }
  QDoubleSpinBox* shrinks_across() const { return shrinks_across_; }
  ColourChoice* colours() const { return colours_; }
  FlawTable* flaws() const { return flaws_; }
  QPushButton* measure() const { return measure_; }
  QPushButton* ok() const;
  QLabel* name_reason() const { return name_reason_; }
  // What is wrong and belongs to no field.
  QLabel* reason() const { return reason_; }

 private:
  Roll& edited() { return job_.rolls[ix(roll_)]; }
  void arrange();
  QWidget* cloth_side();
  QWidget* pattern_side();
  void add_length(QFormLayout* form, const QString& key);
  void add_shrinkage(QFormLayout* form, const QString& label, QDoubleSpinBox* box, std::int64_t& share);
  void connect_all();
  void take_length(const QString& key, Length length);
  void take_width(Length width);
  void ask_measure();
  void check();
  void show_lengths();
  void place(const Problem& problem);
  void place_in_roll(const QString& key, const QString& sentence, const Problem& problem);
  void show_may_accept();
  QString length_note() const;

  Job job_;
  int roll_;
  bool stands_ = true;
  WidthTyping width_;
  QLineEdit* name_;
  QLabel* name_reason_;
  std::map<QString, LengthField*> fields_;
  QPushButton* measure_;
  QLabel* length_note_;
  QCheckBox* one_way_;
  QCheckBox* railroaded_;
  QCheckBox* symmetric_;
  QDoubleSpinBox* shrinks_along_;
  QDoubleSpinBox* shrinks_across_;
  ColourChoice* colours_;
  FlawTable* flaws_;
  QLabel* reason_;
  QDialogButtonBox* buttons_;
};

}  // namespace foldyard
