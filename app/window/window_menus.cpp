// The menus of the window and what their entries do with diagrams.

#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenuBar>

#include "window/hand_menu.h"
#include "window/language_menu.h"
#include "window/main_window.h"
#include "window/menu_entry.h"
#include "window/sheet_export.h"
#include "window/workshop_dialog.h"

namespace foldyard {
namespace {

QString with_ending(const QString& path, const QString& ending) {
  return QFileInfo(path).suffix().isEmpty() ? path + ending : path;
}

}  // namespace

void MainWindow::make_menus() {
  make_file_menu();
  make_edit_menu();
  make_roll_menu();
  make_view_menu();
  menuBar()->addMenu(new HandMenu(by_hand_, plan_view_, this));
  make_batch_menu();
  make_help_menu();
}

void MainWindow::make_file_menu() {
  auto* menu = menuBar()->addMenu(tr("&File"));
  documents_->add_entries(menu);
  menu->addSeparator();
  add_print_entries(menu);
  menu->addSeparator();
  entry(menu, tr("&Quit"), QKeySequence::Quit, this, [this] { close(); });
}

void MainWindow::make_edit_menu() {
  auto* menu = menuBar()->addMenu(tr("&Edit"));
  auto& history = document_.history();
  auto* undo = history.createUndoAction(this, tr("&Undo"));
  auto* redo = history.createRedoAction(this, tr("&Redo"));
  undo->setShortcut(QKeySequence::Undo);
  redo->setShortcut(QKeySequence::Redo);
  // Connected behind those of the actions, so these words stay.
  connect(&history, &QUndoStack::undoTextChanged, undo,
          [undo](const QString& edit) { undo->setText(edit.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(edit)); });
  connect(&history, &QUndoStack::redoTextChanged, redo,
          [redo](const QString& edit) { redo->setText(edit.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(edit)); });
  menu->addAction(undo);
  menu->addAction(redo);
  menu->addSeparator();
  add_copy_entries(menu);
  menu->addSeparator();
  entry(menu, tr("&Add a panel"), tr("Ctrl+Shift+N"), panel_table_, [this] { panel_table_->add_panel(); });
  entry(menu, tr("&Take the panel away"), tr("Ctrl+Shift+Del"), panel_table_, [this] { panel_table_->take_away(); });
  menu->addSeparator();
  entry(menu, tr("Table, &cutter and pace…"), tr("Ctrl+Shift+W"), this, [this] { ask_workshop(document_, this); });
}

void MainWindow::make_view_menu() {
  auto* menu = menuBar()->addMenu(tr("&View"));
  entry(menu, tr("Best for &most worth"), tr("Ctrl+1"), this, [this] { set_aim(Aim::most_worth); });
  entry(menu, tr("Best for worth &less time"), tr("Ctrl+2"), this, [this] { set_aim(Aim::worth_less_time); });
  menu->addSeparator();
  entry(menu, tr("&Nearer"), QKeySequence::ZoomIn, plan_view_, [this] { plan_view_->zoom_in(); });
  entry(menu, tr("&Farther"), QKeySequence::ZoomOut, plan_view_, [this] { plan_view_->zoom_out(); });
  entry(menu, tr("Fit the &cloth"), tr("Ctrl+0"), plan_view_, [this] { plan_view_->fit(); });
  auto* measure = menu->addAction(tr("Mea&sure between two points"));
  measure->setCheckable(true);
  measure->setShortcut(tr("Ctrl+M"));
  connect(measure, &QAction::toggled, plan_view_->table(), &ClothTable::set_measuring);
  menu->addSeparator();
  entry(menu, tr("&Pin the way to compare, or take it out"), {}, compare_large_, [this] {
    show_batch(false);
    compare_large_->toggle(way_table_->row());
  });
  entry(menu, tr("Compare lar&ge, or back"), {}, compare_large_, [this] {
    show_batch(false);
    compare_large_->set_shown(!compare_large_->is_shown());
  });
  menu->addSeparator();
  auto* dark = menu->addAction(tr("&Dark colours"));
  dark->setCheckable(true);
  dark->setChecked(documents_->settings().is_dark().value_or(shade_of(palette()) == Shade::dark));
  connect(dark, &QAction::toggled, this, [this](bool on) {
    set_shade(on ? Shade::dark : Shade::light);
    documents_->settings().set_dark(on);
  });
  auto* language = new LanguageMenu(documents_->settings(), this);
  menu->addMenu(language);
  connect(language, &LanguageMenu::chosen, this, [this](const QString& words) { tell(words); });
}

void MainWindow::make_help_menu() { first_steps_->add_entries(menuBar()->addMenu(tr("&Help"))); }

void MainWindow::choose_and_export(const QString& ending) {
  const auto path = QFileDialog::getSaveFileName(this, tr("Write the cutting diagram"), QString(),
                                                 tr("Diagram (*%1)").arg(ending));
  if (!path.isEmpty()) export_to(with_ending(path, ending));
}

bool MainWindow::export_to(const QString& path) {
  const int row = way_table_->row();
  if (!answer_ || row < 0 || !way_table_->ways()->plan(row)) {
    tell(tr("There is no plan to draw yet; choose a fold way that is possible."));
    return false;
  }
  const auto problem = export_sheet(*by_hand_->shown_answer(), way_table_->ways()->way_index(row), path);
  problem ? tell(*problem) : tell(QString());
  if (!problem) emit printed();
  return !problem;
}

}  // namespace foldyard
