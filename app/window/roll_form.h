#pragma once

// The roll chooser, a menu of kinds of cloth to add a roll from, and the
// numbers of the chosen roll.
//
// Which roll is chosen belongs to the window, not to the job; it stays the
// same number when the job changes, as long as there is such a roll.

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QWidget>

#include <array>

#include "cloth/cloth_kinds.h"
#include "document/document.h"
#include "window/length_field.h"

class QFormLayout;

namespace foldyard {

class RollForm : public QWidget {
  Q_OBJECT

 public:
  explicit RollForm(Document& document, QWidget* parent = nullptr);

  int roll() const { return roll_; }
  void choose(int roll);
  QComboBox* chooser() const { return chooser_; }
  LengthField* field(int index) const { return fields_[static_cast<std::size_t>(index)]; }
  QCheckBox* one_way() const { return one_way_; }
  QPushButton* measure() const { return measure_; }
  // What is said of the length: how it is known.
  QLabel* length_note() const { return length_note_; }
  // Opens a menu of kinds of cloth.
  QPushButton* adder() const { return add_; }

  // A new roll of this kind of cloth, as long as the chosen one; it is chosen.
  void add_roll(const ClothKind& kind);

  static constexpr int kFields = 4;

 signals:
  void chosen(int roll);
  // Why a roll could not be added.
  void refused(const QString& reason);

 private:
  void show_job();
  void show_chooser();
  QMenu* cloth_menu();
  void take_length(int index, Length length);
  void take_nap(bool one_way);
  void add_measure(QFormLayout* layout);
  void ask_measure();
  void show_length_note();

  Document& document_;
  QComboBox* chooser_;
  std::array<LengthField*, kFields> fields_{};
  QCheckBox* one_way_;
  QPushButton* measure_;
  QLabel* length_note_;
  QPushButton* add_;
  int roll_ = 0;
};

}  // namespace foldyard
