#pragma once

// Asks the two sizes of the maker's own roll and what they sew, and makes a job
// of it (document/new_job.h). It cannot be confirmed while there is no such
// job; the reason stands in it.

#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QPushButton>

#include "job/job.h"
#include "fields/length_field.h"

namespace foldyard {

class OwnRollDialog : public QDialog {
  Q_OBJECT

 public:
  explicit OwnRollDialog(Unit unit, QWidget* parent = nullptr);

  LengthField* width_field() const { return width_field_; }
  LengthField* length_field() const { return length_field_; }
  QComboBox* goods() const { return goods_; }
  QPushButton* confirmer() const { return confirmer_; }
  QString reason() const { return reason_->text(); }
  // Stands, once it is confirmed.
  Job job() const;

 protected:
  bool event(QEvent* event) override;

 private:
  void arrange();
  void follow(LengthField* field, Length& length);
  void look();

  Unit unit_;
  Length width_;
  Length length_;
  LengthField* width_field_;
  LengthField* length_field_;
  QComboBox* goods_;
  QLabel* reason_;
  QPushButton* confirmer_;
};

}  // namespace foldyard
