// The menu of the batch: all that its page can do, by keys too, and the shelf as a table
// for a spreadsheet.

#include <QAction>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenuBar>

#include "batch/order_words.h"
#include "file/safe_write.h"
#include "file/shelf_csv.h"
#include "measure/index.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

constexpr qint64 kMostBytes = 4 * 1024 * 1024;

}  // namespace

void MainWindow::make_batch_menu() {
  auto* menu = menuBar()->addMenu(tr("Bat&ch"));
  add_batch_entry(menu);
  menu->addSeparator();
  auto* in = menu->addAction(tr("&Cut from the chosen roll"), this, [this](bool on) {
    batch_page_->set_in_batch(shelf_->roll(), on ? InBatch::may : InBatch::never);
  });
  auto* must = menu->addAction(tr("Cut from it in &any case"), this, [this](bool on) {
    batch_page_->set_in_batch(shelf_->roll(), on ? InBatch::must : InBatch::may);
  });
  in->setShortcut(tr("Ctrl+Shift+B"));
  auto* keep = menu->addAction(tr("&Keep the chosen lay"), this, [this] { batch_page_->keep_lay(batch_page_->view()->chosen_lay()); });
  menu->addSeparator();
  auto* mark = menu->addAction(tr("&Mark lays as cut…"), batch_page_, &BatchPage::mark_as_cut);
  auto* tickets = menu->addAction(tr("&Tickets…"), batch_page_, &BatchPage::choose_and_write_tickets);
  menu->addSeparator();
  menu->addAction(tr("&Write the shelf for a spreadsheet…"), this, [this] { choose_and_write_shelf(); });
  menu->addAction(tr("Take the shelf &from a spreadsheet…"), this, [this] { choose_and_read_shelf(); });
  for (QAction* each : {in, must}) each->setCheckable(true);
  const auto show_state = [this, in, must, keep, mark, tickets] {
    const auto& rolls = document_.job().rolls;
    const bool is_any = shelf_->roll() >= 0 && shelf_->roll() < std::ssize(rolls);
    const InBatch how = is_any ? rolls[ix(shelf_->roll())].in_batch : InBatch::never;
    in->setEnabled(is_any);
    must->setEnabled(is_any);
    in->setChecked(how != InBatch::never);
    must->setChecked(how == InBatch::must);
    keep->setEnabled(batch_page_->isVisible() && batch_page_->view()->keeper()->isEnabled());
    mark->setEnabled(batch_page_->isVisible() && batch_page_->view()->marker()->isEnabled());
    tickets->setEnabled(batch_page_->isVisible() && batch_page_->view()->ticketer()->isEnabled());
  };
  connect(menu, &QMenu::aboutToShow, this, show_state);
  connect(&document_, &Document::changed, this, show_state);
  connect(shelf_, &Shelf::chosen, this, show_state);
}

void MainWindow::choose_and_write_shelf() {
  const auto path = QFileDialog::getSaveFileName(this, tr("Write the shelf"), QString(), tr("Table (*.csv)"));
  if (!path.isEmpty()) write_shelf_to(QFileInfo(path).suffix().isEmpty() ? path + QLatin1String(".csv") : path);
}

void MainWindow::choose_and_read_shelf() {
  const auto path = QFileDialog::getOpenFileName(this, tr("Take the shelf from a table"), QString(), tr("Table (*.csv)"));
  if (!path.isEmpty()) read_shelf_from(path);
}

bool MainWindow::write_shelf_to(const QString& path) {
  const auto problem = safe_write(path, shelf_csv(document_.job()));
  problem ? tell(*problem) : tell(QString());
  return !problem;
}

bool MainWindow::read_shelf_from(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly) || file.size() > kMostBytes) {
    tell(tr("%1 cannot be read; choose a table of at most 4 MiB.").arg(path));
    return false;
  }
  const auto next = with_shelf(document_.job(), file.readAll());
  const auto problem = next ? document_.edit(*next, tr("take the shelf from a spreadsheet")) : std::optional<Problem>(next.problem());
  tell(problem ? order_problem_text(*problem, next ? *next : document_.job()) : QString());
  return !problem;
}

}  // namespace foldyard
