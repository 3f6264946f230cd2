#pragma once

// The window: the shelf of rolls and the panels on the left, the chosen plan on the
// cutting table, and below it the fold ways side by side: as cards, as a table,
// as points of cloth used against minutes. It wires the others together; what
// they do stands with them.

#include <QLabel>
#include <QMainWindow>
#include <QPushButton>
#include <QSplitter>
#include <QTimer>

#include "batch/batch_page.h"
#include "document/document.h"
#include "shelf/shelf.h"
#include "window/busy_row.h"
#include "window/by_hand.h"
#include "window/compare_large.h"
#include "window/document_actions.h"
#include "window/first_steps.h"
#include "window/frontier_view.h"
#include "window/panel_table.h"
#include "window/plan_view.h"
#include "window/planner.h"
#include "window/tape_heading.h"
#include "window/way_cards.h"
#include "window/way_table.h"
#include "window/window_colours.h"

namespace foldyard {

class PrintDialog;

class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  // places: where settings and side files are kept; none by themselves.
  explicit MainWindow(Compare compare = foldyard::compare, const Places& places = {});
  ~MainWindow() override;

  // Opens a job file; false, with the reason told, where it cannot be read.
  bool open_file(const QString& path);
  void open_demo();
  // At the start of the program: gives back what a crash left, opens the file
  // or, without one, the demo, and shows the first steps.
  void start(const QString& file);

  Document& document() { return document_; }
  Planner& planner() { return planner_; }
  DocumentActions* documents() const { return documents_; }
  FirstSteps* first_steps() const { return first_steps_; }
  ByHand* by_hand() const { return by_hand_; }
  FoldHand& fold_hand() { return by_hand_->fold_hand(); }
  Shelf* shelf() const { return shelf_; }
  PanelTable* panel_table() const { return panel_table_; }
  WayTable* way_table() const { return way_table_; }
  WayCards* way_cards() const { return way_cards_; }
  FrontierView* frontier_view() const { return frontier_view_; }
  QTabBar* way_tabs() const { return way_tabs_; }
  BatchPage* batch_page() const { return batch_page_; }
  QTabBar* page_tabs() const { return page_tabs_; }
  PlanView* plan_view() const { return plan_view_; }
  CompareLarge* compare_large() const { return compare_large_; }
  BusyRow* busy_row() const { return busy_row_; }
  QPushButton* aim_button(Aim aim) const { return aim == Aim::most_worth ? most_worth_ : less_time_; }
  // The words of the line at the foot; empty where all is well.
  QString notice() const { return notice_->text(); }
  void show_notice(const QString& words) { tell(words); }

  bool save_to(const QString& path);
  bool export_to(const QString& path);
  // The shelf as a table for a spreadsheet, and back; false, with the reason told.
  bool write_shelf_to(const QString& path);
  bool read_shelf_from(const QString& path);
  // Of the plan as it is shown; null, with the reason told, where there is none.
  PrintDialog* make_print_dialog();
  void copy_picture();
  void copy_table();
  void copy_cuts();

 public slots:
  // The page of the batch, or that of the chosen roll.
  void show_batch(bool shown);
  void set_aim(foldyard::Aim aim);
  void set_shade(foldyard::Shade shade);
  // Takes out what is set by hand for the plan on the table.
  void put_back() { by_hand_->put_back(); }
  // Plans the roll that is chosen; only at the first start the table is empty.
  void put_on_table();
  // Shows the pages of the plan that is shown, to print or to write.
  void print();

 signals:
  // A diagram was written or printed.
  void printed();

 protected:
  void closeEvent(QCloseEvent* event) override;

 private:
  void arrange();
  QWidget* left_side();
  QWidget* right_side();
  QWidget* with_batch(QWidget* roll_page);
  void add_batch_entry(QMenu* menu);
  void make_batch_menu();
  void choose_and_write_shelf();
  void choose_and_read_shelf();
  QWidget* ways_side();
  QWidget* table_page();
  QWidget* aim_row();
  void connect_all();
  void set_tab_order();
  void make_menus();
  void make_file_menu();
  void make_edit_menu();
  void make_view_menu();
  void make_help_menu();
  void open_with_demo();
  void take_settings();
  void make_roll_menu();
  void connect_shelf();
  void add_print_entries(QMenu* menu);
  void add_copy_entries(QMenu* menu);
  bool has_plan();

  void ask();
  void show_answer(const AnswerPtr& answer);
  void show_way(int row);
  void show_busy(bool busy);
  void show_title();
  void tell(const QString& words);
  void tell(const Problem& problem);

  void choose_and_export(const QString& ending);

  Document document_;
  Planner planner_;
  DocumentActions* documents_;
  FirstSteps* first_steps_ = nullptr;
  AnswerPtr answer_;
  bool begins_empty_ = false;  // the next job that is opened
  Aim aim_ = Aim::most_worth;

  Shelf* shelf_;
  PanelTable* panel_table_;
  WayTable* way_table_;
  WayCards* way_cards_;
  FrontierView* frontier_view_;
  QTabBar* way_tabs_;
  BatchPage* batch_page_ = nullptr;
  QTabBar* page_tabs_ = nullptr;  // the page of the roll, that of the batch
  PlanView* plan_view_;
  ByHand* by_hand_;
  CompareLarge* compare_large_;
  TapeHeading* plan_heading_;
  QSplitter* right_;
  QWidget* ways_ = nullptr;  // below the plan
  QTimer busy_;
  QPushButton* most_worth_;
  QPushButton* less_time_;
  QLabel* notice_;
  BusyRow* busy_row_;
};

}  // namespace foldyard
