#pragma once

// ClothTable: one length on the cutting table. The flat cloth with its fold
// lines on the left, the folded cloth on the real table beside it, the section
// through its plies below. Pointing at a panel in one lights up all its copies
// in the others, and the section follows the pointer.
//
// A fold line dragged on the flat cloth, or stepped with the keyboard, is only
// told: who listens plans again and shows the answer here.

#include <QSplitter>
#include <QWidget>

#include "table/board_view.h"
#include "table/section_strip.h"

namespace foldyard {

class ClothTable : public QWidget {
  Q_OBJECT

 public:
  explicit ClothTable(QWidget* parent = nullptr);

  // Null: the table is empty and says what to do.
  void show_cloth(const LaidClothPtr& cloth);
  void set_dark(bool dark);
  void set_measuring(bool on);
  void set_lines_movable(bool on);
  void set_empty_words(const QString& words);

  BoardView* flat() const { return flat_; }
  BoardView* folded() const { return folded_; }
  SectionStrip* section() const { return section_; }
  int lit() const { return folded_->lit(); }

 public slots:
  void zoom_in();
  void zoom_out();
  void fit();

 signals:
  void line_taken(int line);
  void line_moved(int line, foldyard::Length to);
  void line_left(int line);
  void line_stepped(int line, int steps);
  void pin_toggled(int line);
  void menu_wanted(int line, int patch, const QPoint& global);

 private:
  void light(int patch, Length along_folded);
  void share_room();
  BoardView* active() const;

  BoardView* flat_;
  BoardView* folded_;
  SectionStrip* section_;
  QSplitter* split_;
  class Empty;
  Empty* empty_;
};

}  // namespace foldyard
