// How the window begins and ends, and its job file.

#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QScreen>

#include "window/job_drop.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

const QSize kUsualSize(1500, 920);

}  // namespace

void MainWindow::take_settings() {
  const auto& settings = documents_->settings();
  const auto dark = settings.is_dark();
  set_shade(dark ? (*dark ? Shade::dark : Shade::light) : shade_of(QApplication::palette()));
  resize(kUsualSize.boundedTo(screen()->availableSize() - QSize(20, 60)));
  restoreGeometry(settings.geometry());
  panel_table_->more()->setChecked(settings.shows_more_columns());
  connect(panel_table_->more(), &QCheckBox::toggled, this, [this](bool on) { documents_->settings().set_more_columns(on); });
  connect(new JobDrop(this), &JobDrop::dropped, documents_, &DocumentActions::open, Qt::QueuedConnection);
}

void MainWindow::start(const QString& file) {
  const bool is_there = documents_->restore(file) || (!file.isEmpty() && open_file(file));
  if (!is_there) open_with_demo();
  first_steps_->begin();
}

// The demo lies ready on the left; a newcomer puts it on the table themselves.
void MainWindow::open_with_demo() {
  const auto words = notice();
  begins_empty_ = !documents_->settings().is_guide_closed();
  open_demo();
  show_notice(words);
  if (shelf_->on_table() >= 0) return;
  plan_view_->show_nothing(tr("The table is empty. Put a roll of the shelf on it: press Enter, double-click it or drag it here."));
  ways_->hide();  // no fold way to choose yet
}

bool MainWindow::open_file(const QString& path) { return documents_->open_file(path); }
bool MainWindow::save_to(const QString& path) { return documents_->save_to(path); }
void MainWindow::open_demo() { documents_->open_demo(); }

void MainWindow::put_on_table() {
  shelf_->put_on_table(shelf_->roll());
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!documents_->may_leave()) return event->ignore();
  documents_->settings().set_geometry(saveGeometry());
  documents_->end();
  event->accept();
}

void MainWindow::show_title() {
  const auto name = document_.path().isEmpty() ? QString::fromStdString(document_.job().name)
                                               : QFileInfo(document_.path()).fileName();
  setWindowTitle((name.isEmpty() ? tr("New job") : name) + QLatin1String("[*]"));
  setWindowModified(document_.is_changed());
}

}  // namespace foldyard
