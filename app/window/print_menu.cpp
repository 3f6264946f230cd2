// The entries of the window's menus that print the plan and copy it.

#include <QAction>
#include <QMenu>

#include "fields/trade_icon.h"
#include "printing/clipboard.h"
#include "printing/print_dialog.h"
#include "printing/sheet_file.h"
#include "window/main_window.h"
#include "window/menu_entry.h"

namespace foldyard {
void MainWindow::add_print_entries(QMenu* menu) {
  entry(menu, tr("Pr&int…"), QKeySequence::Print, this, [this] { print(); })->setIcon(trade_icon(TradeIcon::paper));
  entry(menu, tr("Diagram as &PDF…"), tr("Ctrl+E"), this, [this] { choose_and_export(QStringLiteral(".pdf")); });
  entry(menu, tr("Diagram as S&VG…"), tr("Ctrl+Shift+E"), this,
        [this] { choose_and_export(QStringLiteral(".svg")); });
  entry(menu, tr("Diagram as PN&G…"), {}, this, [this] { choose_and_export(QStringLiteral(".png")); });
}

// A field that is typed in takes Ctrl+C for its text before the window does.
void MainWindow::add_copy_entries(QMenu* menu) {
  entry(menu, tr("Copy the &picture"), QKeySequence::Copy, this, [this] { copy_picture(); });
  entry(menu, tr("Copy the ta&ble"), tr("Ctrl+Shift+C"), this, [this] { copy_table(); });
  entry(menu, tr("Copy the cut &list"), {}, this, [this] { copy_cuts(); });
}

bool MainWindow::has_plan() {
  if (answer_ && plan_view_->plan()) return true;
  tell(tr("There is no plan to draw yet; choose a fold way that is possible."));
  return false;
}

PrintDialog* MainWindow::make_print_dialog() {
  if (!has_plan()) return nullptr;
  const AnswerPtr answer = by_hand_->shown_answer();
  auto* dialog = new PrintDialog({answer->job, answer->comparison, way_table_->ways()->way_index(way_table_->row())},
                                 usual_paper(), this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &PrintDialog::printed, this, &MainWindow::printed);
  tell(QString());
  return dialog;
}

void MainWindow::print() {
  if (auto* dialog = make_print_dialog()) dialog->open();
}

void MainWindow::copy_picture() {
  if (!has_plan()) return;
  const CopiedPicture picture{answer_->job, *plan_view_->plan(), plan_view_->pattern()};
  tell(put_on_clipboard(picture_data(picture, logicalDpiX() * devicePixelRatioF()))
           ? QString()
           : tr("The picture could not be copied; write the diagram as PNG."));
}

void MainWindow::copy_table() {
  if (has_plan()) put_on_clipboard(table_data(comparison_table(answer_->job, by_hand_->shown_answer()->comparison)));
}

void MainWindow::copy_cuts() {
  if (!has_plan()) return;
  const int pattern = plan_view_->pattern();
  if (pattern < 0) return tell(tr("The cuts are those of a pattern; choose its tab first."));
  tell(QString());
  put_on_clipboard(table_data(cut_table_of(answer_->job, *plan_view_->plan(), pattern)));
}

}  // namespace foldyard
