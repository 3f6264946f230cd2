#pragma once

// The shelf: the rolls of the job, a line to find one, what can be done with them,
// and the numbers of the chosen one.
//
// Chosen is the roll that is looked at and edited; on the table is the one that is
// planned. Choosing alone puts nothing on the table. Both belong to the window,
// not to the job: they follow their rolls by name through every edit, undone ones
// too. Whatever changes the job is one step in its history.

#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QWidget>

#include "cloth/cloth_kinds.h"
#include "shelf/roll_form.h"
#include "shelf/roll_list.h"
#include "shelf/shelf_actions.h"

class QVBoxLayout;

namespace foldyard {

class Shelf : public QWidget {
  Q_OBJECT

 public:
  explicit Shelf(Document& document, QWidget* parent = nullptr);

  int roll() const { return roll_; }
  // −1: the table is empty.
  int on_table() const { return on_table_; }
  void choose(int roll);
  void clear_table();

  QLineEdit* search() const { return search_; }
  RollList* list() const { return list_; }
  RollModel* rolls() const { return rolls_; }
  RollForm* form() const { return form_; }
  QPushButton* putter() const { return put_; }
  // Opens a menu of kinds of cloth.
  QPushButton* adder() const { return add_; }
  QPushButton* teller() const { return about_; }
  const ShelfActions& actions() const { return actions_; }
  // Its widgets in reading order.
  std::vector<QWidget*> tab_order() const;
  // Why something was refused, or that nothing was found.
  QLabel* words() const { return words_; }

  // A new roll of this kind of cloth, as long as the chosen one; it is chosen.
  void add_roll(const ClothKind& kind);

 public slots:
  void put_on_table(int roll);
  void copy();
  void take_away();
  // To before another roll; the number of rolls: to the end.
  void move(int roll, int before);
  void move_up();
  void move_down();
  void ask_all();

 signals:
  void chosen(int roll);
  // Another roll lies on the table; −1: none.
  void put(int roll);

 protected:
  // In the line to find a roll: down or Enter goes to the list, Escape clears it.
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void go_to_list();
  void arrange();
  void connect_all();
  QMenu* cloth_menu();
  void begin_anew();
  void follow_job();
  bool edit(const Job& next, const QString& words, int chosen_then);
  void show_chosen();
  void show_state();
  void search_for(const QString& words);
  void show_found();
  void tell(const QString& words, bool fault);
  QString name_of(int roll) const;

  Document& document_;
  RollModel* rolls_;
  RollFilter* shown_;
  QLineEdit* search_;
  RollList* list_;
  ShelfActions actions_;
  QLabel* words_;
  QPushButton* put_;
  QPushButton* add_;
  QPushButton* about_;
  RollForm* form_;
  std::vector<std::string> names_;
  int roll_ = 0;
  int on_table_ = 0;
};

}  // namespace foldyard
