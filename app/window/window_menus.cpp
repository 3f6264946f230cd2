// The menus of the window and what their entries do with files.

#include <QAction>
#include <QCloseEvent>
#include <QFileDialog>
#include <QMenuBar>
#include <QMessageBox>

#include "file/safe_write.h"
#include "file/write_job.h"
#include "window/main_window.h"
#include "window/sheet_export.h"

namespace foldyard {
namespace {

QAction* entry(QMenu* menu, const QString& text, const QKeySequence& keys, QObject* owner,
               const std::function<void()>& act) {
  auto* action = menu->addAction(text);
  action->setShortcut(keys);
  QObject::connect(action, &QAction::triggered, owner, act);
  return action;
}

QString with_ending(const QString& path, const QString& ending) {
  return QFileInfo(path).suffix().isEmpty() ? path + ending : path;
}

}  // namespace

void MainWindow::make_menus() {
  make_file_menu();
  make_edit_menu();
  make_roll_menu();
  make_view_menu();
}

void MainWindow::make_file_menu() {
  auto* menu = menuBar()->addMenu(tr("&File"));
  entry(menu, tr("&Open…"), QKeySequence::Open, this, [this] { choose_and_open(); });
  entry(menu, tr("Open the &demo"), {}, this, [this] { if (may_leave()) open_demo(); });
  menu->addSeparator();
  entry(menu, tr("&Save"), QKeySequence::Save, this, [this] { save(); });
  entry(menu, tr("Save &as…"), QKeySequence::SaveAs, this, [this] { choose_and_save(); });
  menu->addSeparator();
  entry(menu, tr("Diagram as &PDF…"), tr("Ctrl+E"), this, [this] { choose_and_export(QStringLiteral(".pdf")); });
  entry(menu, tr("Diagram as S&VG…"), tr("Ctrl+Shift+E"), this,
        [this] { choose_and_export(QStringLiteral(".svg")); });
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
  menu->addAction(undo);
  menu->addAction(redo);
  menu->addSeparator();
  entry(menu, tr("&Add a panel"), tr("Ctrl+Shift+N"), panel_table_, [this] { panel_table_->add_panel(); });
  entry(menu, tr("&Take the panel away"), tr("Ctrl+Shift+Del"), panel_table_, [this] { panel_table_->take_away(); });
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
  auto* dark = menu->addAction(tr("&Dark colours"));
  dark->setCheckable(true);
  dark->setChecked(shade_of(palette()) == Shade::dark);
  connect(dark, &QAction::toggled, this, [this](bool on) { set_shade(on ? Shade::dark : Shade::light); });
}

void MainWindow::choose_and_open() {
  if (!may_leave()) return;
  const auto path = QFileDialog::getOpenFileName(this, tr("Open a job"), QFileInfo(document_.path()).path(),
                                                 tr("Jobs (*.json);;All files (*)"));
  if (!path.isEmpty()) open_file(path);
}

bool MainWindow::save() { return document_.path().isEmpty() ? choose_and_save() : save_to(document_.path()); }

bool MainWindow::choose_and_save() {
  const auto path = QFileDialog::getSaveFileName(this, tr("Save the job"), document_.path(), tr("Jobs (*.json)"));
  return !path.isEmpty() && save_to(with_ending(path, QStringLiteral(".json")));
}

bool MainWindow::save_to(const QString& path) {
  if (const auto problem = safe_write(path, write_job(document_.job()))) {
    tell(*problem);
    return false;
  }
  document_.set_saved(path);
  tell(QString());
  show_title();
  return true;
}

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
  const auto problem = export_sheet(*shown_answer(), way_table_->ways()->way_index(row), path);
  problem ? tell(*problem) : tell(QString());
  return !problem;
}

bool MainWindow::may_leave() {
  if (!document_.is_changed()) return true;
  QMessageBox question(QMessageBox::Question, tr("Unsaved changes"),
                       tr("The job has changes that are not saved."), QMessageBox::NoButton, this);
  auto* keep = question.addButton(tr("&Save"), QMessageBox::AcceptRole);
  auto* drop = question.addButton(tr("&Discard the changes"), QMessageBox::DestructiveRole);
  question.addButton(tr("&Go on editing"), QMessageBox::RejectRole);
  question.exec();
  if (question.clickedButton() == keep) return save();
  return question.clickedButton() == drop;
}

void MainWindow::closeEvent(QCloseEvent* event) { may_leave() ? event->accept() : event->ignore(); }

}  // namespace foldyard
