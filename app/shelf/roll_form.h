#pragma once

// The numbers of one roll that are asked for most: width, length, selvedge,
// thickness, nap; and how its length is known. All else is in roll_dialog.h.
//
// Which roll is shown belongs to whoever shows it (shelf/shelf.h).

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include <array>

#include "document/document.h"
#include "fields/length_field.h"
#include "measure/index.h"
#include "shelf/width_typing.h"

class QFormLayout;

namespace foldyard {

class RollForm : public QWidget {
  Q_OBJECT

 public:
  explicit RollForm(Document& document, QWidget* parent = nullptr);

  int roll() const { return roll_; }
  // The job's roll as it is now. Of another roll than before: what was typed and
  // refused is dropped.
  void show_roll(int roll);
  LengthField* field(int index) const { return fields_[ix(index)]; }
  QCheckBox* one_way() const { return one_way_; }
  QPushButton* measure() const { return measure_; }
  // What is said of the length: how it is known.
  QLabel* length_note() const { return length_note_; }

  static constexpr int kFields = 4;

 public slots:
  void ask_measure();

 private:
  QWidget* length_row(LengthField* field);
  void add_field(QFormLayout* layout, int index);
  void take_length(int index, Length length);
  void take_nap(bool one_way);
  void show_length_note();

  Document& document_;
  std::array<LengthField*, kFields> fields_{};
  QCheckBox* one_way_;
  QPushButton* measure_;
  QLabel* length_note_;
  WidthTyping width_;
  int roll_ = 0;
};

}  // namespace foldyard
