#pragma once

// How the workshop cuts: the table, the cutter, what is lost, the pace, and the
// job's name and unit. Beside a value that is still an assumed one stands so.
//
// Nothing is changed until the dialog is accepted, and it can be accepted only
// while the job can stand (job/check_job.h). What is wrong stands below its
// field, or at the foot where it is about another.

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <map>

#include "document/document.h"
#include "fields/length_field.h"
#include "window/workshop_fields.h"

class QDialogButtonBox;
class QGridLayout;

namespace foldyard {

class WorkshopDialog : public QDialog {
  Q_OBJECT

 public:
  explicit WorkshopDialog(const Job& job, QWidget* parent = nullptr);

  // As it is now, whether it can stand or not.
  const Job& job() const { return job_; }
  QLineEdit* name() const { return name_; }
  QComboBox* unit() const { return unit_; }
  QCheckBox* both_sides() const { return both_sides_; }
  // key: as in a job file, "table.length".
  LengthField* length(const QString& key) const { return lengths_.at(key); }
  QDoubleSpinBox* number(const QString& key) const { return numbers_.at(key); }
  QString note(const QString& key) const { return notes_.at(key)->text(); }
  QLabel* caution() const { return caution_; }
  QLabel* name_reason() const { return name_reason_; }
  // What is wrong and belongs to no field here.
  QLabel* reason() const { return reason_; }
  QPushButton* ok() const;

 private:
  QWidget* side(const std::vector<WorkshopGroup>& groups);
  void add_group(QGridLayout* grid, WorkshopGroup group);
  void add_job_rows(QGridLayout* grid);
  void add_table_rows(QGridLayout* grid);
  void add_length(QGridLayout* grid, const WorkshopLength& each);
  void add_number(QGridLayout* grid, const WorkshopNumber& each);
  void add_row(QGridLayout* grid, const QString& label, QWidget* field, QWidget* focus, const QString& key);
  void arrange();
  void check();
  void fit();
  void show_values();
  void place(const Problem& problem);
  void show_may_accept();

  Job job_;
  bool stands_ = true;
  QWidget* inside_;
  QLineEdit* name_;
  QLabel* name_reason_;
  QComboBox* unit_;
  QCheckBox* both_sides_;
  std::map<QString, LengthField*> lengths_;
  std::map<QString, QDoubleSpinBox*> numbers_;
  std::map<QString, QLabel*> notes_;
  QLabel* caution_;
  QLabel* reason_;
  QDialogButtonBox* buttons_;
};

// Shows the dialog; what it changes is one step of the history.
void ask_workshop(Document& document, QWidget* parent);

}  // namespace foldyard
