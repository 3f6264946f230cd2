// The shelf in the window: its menu, and how a roll comes onto the table.

#include <QMenuBar>

#include "table/roll_drop.h"
#include "window/main_window.h"
#include "window/range_line.h"

namespace foldyard {

void MainWindow::make_roll_menu() {
  auto* menu = menuBar()->addMenu(tr("&Roll"));
  for (QAction* action : shelf_->actions().in_order()) {
    if (action) menu->addAction(action);
    else menu->addSeparator();
  }
}

void MainWindow::connect_shelf() {
  connect(documents_, &DocumentActions::begun, this, [this] { show_batch(false); });
  connect(shelf_, &Shelf::put, this, [this] {
    show_batch(false);
    way_table_->forget_choice();
    ask();
  });
  auto* drop = new RollDrop(plan_view_);
  connect(drop, &RollDrop::dropped, shelf_, &Shelf::put_on_table);
  auto* line = new RangeLine;
  plan_view_->add_under_figures(line);
  connect(plan_view_, &PlanView::shown, line, [this, line] {
    const int row = way_table_->row();
    line->show_way(answer_, answer_ && row >= 0 ? way_table_->ways()->way_index(row) : -1);
  });
}

}  // namespace foldyard
