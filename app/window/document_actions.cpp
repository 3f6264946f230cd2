#include "window/document_actions.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>

#include "document/new_job.h"
#include "file/read_job.h"
#include "window/own_roll_dialog.h"

namespace foldyard {
namespace {

QString name_of(const QString& path) { return QFileInfo(path).fileName(); }

}  // namespace

DocumentActions::DocumentActions(QWidget* window, Document& document, const Places& places)
    : QObject(window), window_(window), document_(document), settings_(places.settings), recovery_(places.recovery),
      autosave_(document, recovery_), claim_(places.recovery), strip_(new AskStrip) {
  connect(&autosave_, &Autosave::failed, this, &DocumentActions::told);
  connect(&document_, &Document::kept, this, &DocumentActions::claim);
  window_->installEventFilter(this);
}

void DocumentActions::add_entries(QMenu* file) {
  const auto add = [&](const QString& text, const QKeySequence& keys, auto act) {
    auto* action = file->addAction(text);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, act);
    return action;
  };
  add(tr("&New"), QKeySequence::New, &DocumentActions::begin_new);
  add(tr("&Begin with your own roll…"), {}, &DocumentActions::begin_with_own_roll);
  add(tr("&Open…"), QKeySequence::Open, &DocumentActions::choose_and_open);
  recent_ = file->addMenu(tr("Open &recent"));
  connect(recent_, &QMenu::aboutToShow, this, &DocumentActions::fill_recent);
  add(tr("Open the &demo"), {}, [this] { if (may_leave()) open_demo(); });
  restore_next_ = add(tr("Restore another &unsaved job"), {}, &DocumentActions::restore_next);
  restore_next_->setVisible(false);
  connect(file, &QMenu::aboutToShow, this, &DocumentActions::offer_left);
  file->addSeparator();
  add(tr("&Save"), QKeySequence::Save, &DocumentActions::save);
  add(tr("Save &as…"), QKeySequence::SaveAs, &DocumentActions::choose_and_save);
}

bool DocumentActions::open_file(const QString& path) {
  const auto problem = open_job_file(document_, path);
  tell(problem);
  if (problem) return false;
  add_recent(document_.path());
  return true;
}

void DocumentActions::open(const QString& path) {
  if (may_leave()) open_file(path);
}

void DocumentActions::open_demo() {
  QFile file(QStringLiteral(":/demo.json"));
  if (!file.open(QIODevice::ReadOnly))
    return emit told(tr("The demo job is missing from the program; install it again."));
  const auto job = read_job(file.readAll());
  if (!job) return tell(job.problem());
  document_.open(*job, {});
}

void DocumentActions::begin(const Job& job) {
  document_.open(job, {});
  document_.count_as_changed();
  emit begun();
}

void DocumentActions::begin_new() {
  if (may_leave()) document_.open(new_job(unit_of(QLocale::system())), {});
}

void DocumentActions::begin_with_own_roll() {
  OwnRollDialog dialog(unit_of(QLocale::system()), window_);
  if (dialog.exec() == QDialog::Accepted && may_leave()) begin(dialog.job());
}

void DocumentActions::choose_and_open() {
  if (!may_leave()) return;
  const auto path = QFileDialog::getOpenFileName(window_, tr("Open a job"), QFileInfo(document_.path()).path(),
                                                 tr("Jobs (*.foldyard *.json);;All files (*)"));
  if (!path.isEmpty()) open_file(path);
}

bool DocumentActions::save() {
  if (document_.path().isEmpty()) return choose_and_save();
  if (change_on_disk(document_) == FileChange::changed) {
    ask_about_change(FileChange::changed, true);
    return false;
  }
  return save_to(document_.path());
}

bool DocumentActions::choose_and_save() {
  const auto path = QFileDialog::getSaveFileName(window_, tr("Save the job"), document_.path(), tr("Jobs (*.foldyard *.json)"));
  if (path.isEmpty()) return false;
  return save_to(QFileInfo(path).suffix().isEmpty() ? path + QLatin1String(".foldyard") : path);
}

bool DocumentActions::save_to(const QString& path) {
  const auto problem = save_job_file(document_, path);
  tell(problem);
  if (problem) return false;
  strip_->take_back(QStringLiteral("disk"));
  add_recent(document_.path());
  return true;
}

bool DocumentActions::may_leave() {
  if (!document_.is_changed()) return true;
  QMessageBox question(QMessageBox::Question, tr("Unsaved changes"), tr("The job has changes that are not saved."),
                       QMessageBox::NoButton, window_);
  auto* keep = question.addButton(tr("&Save"), QMessageBox::AcceptRole);
  auto* drop = question.addButton(tr("&Discard the changes"), QMessageBox::DestructiveRole);
  question.addButton(tr("&Go on editing"), QMessageBox::RejectRole);
  question.exec();
  if (question.clickedButton() == keep) return save();
  return question.clickedButton() == drop;
}

void DocumentActions::add_recent(const QString& path) { settings_.add_recent(path); }

// A file that is gone says so, and choosing it takes it off the list.
void DocumentActions::fill_recent() {
  recent_->clear();
  int number = 0;
  for (const QString& path : settings_.recent()) {
    const bool is_there = QFileInfo(path).isFile();
    const QString words = tr("%1  in %2").arg(name_of(path), QFileInfo(path).path()).replace(QLatin1Char('&'), QLatin1String("&&"));
    auto* action = recent_->addAction(
        QStringLiteral("&%1  %2").arg(++number % 10).arg(is_there ? words : tr("Missing, take off the list: %1").arg(words)));
    connect(action, &QAction::triggered, this, [this, path, is_there] { is_there ? open(path) : settings_.take_recent(path); });
  }
  if (number > 0) recent_->addSeparator();
  auto* clear = recent_->addAction(number > 0 ? tr("&Clear the list") : tr("No job was opened yet"));
  clear->setEnabled(number > 0);
  connect(clear, &QAction::triggered, this, [this] { settings_.clear_recent(); });
}

}  // namespace foldyard
