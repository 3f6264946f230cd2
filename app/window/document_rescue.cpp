// What keeps a job from getting lost: a crash, another program, another window.

#include <QEvent>
#include <QFileInfo>
#include <QLocale>

#include <algorithm>

#include "window/document_actions.h"

namespace foldyard {
namespace {

QString name_of(const SideFile& side) {
  if (!side.path.isEmpty()) return QFileInfo(side.path).fileName();
  return side.job.name.empty() ? DocumentActions::tr("New job") : QString::fromStdString(side.job.name);
}

QString time_words(const QDateTime& time) { return QLocale().toString(time.toLocalTime(), QLocale::ShortFormat); }

}  // namespace

bool DocumentActions::restore(const QString& file) {
  const QString wanted = file.isEmpty() ? QString() : QFileInfo(file).absoluteFilePath();
  const auto left = recovery_.left();
  for (const QString& name : recovery_.put_aside())
    strip_->tell(name, tr("An unsaved job could not be read again; what is left of it is kept as %1.").arg(name));
  const auto found = std::find_if(left.begin(), left.end(), [&](const LeftSide& each) {
    return wanted.isEmpty() || each.side.path == wanted;
  });
  if (found == left.end()) return false;
  if (found->side.crashes == 0) return restore_side(*found);
  ask_again(*found);
  return false;
}

bool DocumentActions::restore_side(const LeftSide& left) {
  const auto side = recovery_.take(left.id);
  if (!side) return false;
  document_.recover(side->job, side->path, side->mark);
  strip_->tell(QStringLiteral("restored"),
               tr("The program ended without saving. “%1” is back as it was at %2; it is not saved yet.")
                   .arg(name_of(*side), time_words(side->time)));
  look_at_file();
  return true;
}

void DocumentActions::ask_again(const LeftSide& left) {
  const QString& path = left.side.path;
  std::vector<AskStrip::Choice> choices = {
      {tr("Restore it"), [this, left] { if (may_leave()) restore_side(left); }},
      {tr("Keep it aside"), [this, left] { keep_aside(left, false); }}};
  if (QFileInfo(path).isFile())
    choices.insert(choices.begin() + 1, {tr("Open the saved file"), [this, left] { keep_aside(left, true); }});
  strip_->ask(QStringLiteral("again"),
              tr("The program ended twice without saving “%1”. The unsaved job of %2 is still there.")
                  .arg(name_of(left.side), time_words(left.side.time)),
              std::move(choices));
}

void DocumentActions::keep_aside(const LeftSide& left, bool open_saved) {
  const auto path = recovery_.keep_aside(left.id);
  if (!path) return tell(path.problem());
  add_recent(*path);
  strip_->tell(QStringLiteral("aside"), tr("The unsaved job is kept as %1.").arg(*path));
  if (open_saved) open(left.side.path);
}

void DocumentActions::offer_left() { restore_next_->setVisible(!recovery_.left().empty()); }

void DocumentActions::restore_next() {
  const auto left = recovery_.left();
  if (!left.empty() && may_leave()) restore_side(left.front());
}

bool DocumentActions::eventFilter(QObject* watched, QEvent* event) {
  if (watched == window_ && event->type() == QEvent::WindowActivate) look_at_file();
  return false;
}

void DocumentActions::look_at_file() {
  claim();
  const auto change = change_on_disk(document_);
  if (change == FileChange::none) strip_->take_back(QStringLiteral("disk"));
  else ask_about_change(change, false);
}

void DocumentActions::ask_about_change(FileChange change, bool is_saving) {
  const QString path = document_.path();
  const auto keep = [this] {
    accept_change(document_);
    autosave_.keep_now();
  };
  const AskStrip::Choice mine = is_saving ? AskStrip::Choice{tr("Save mine over it"), [this, path] { save_to(path); }}
                                          : AskStrip::Choice{tr("Keep mine"), keep};
  const QString name = QFileInfo(path).fileName();
  if (change == FileChange::removed)
    return strip_->ask(QStringLiteral("disk"), tr("%1 is no longer there: it was moved or removed.").arg(name), {mine});
  const QString words = is_saving ? tr("Not saved: %1 was changed by another program at %2.") : tr("%1 was changed by another program at %2.");
  strip_->ask(QStringLiteral("disk"), words.arg(name, time_words(QFileInfo(path).lastModified())),
              {{tr("Read it again"), [this] { read_again(); }}, mine});
}

// Reading it again can be undone, so that nothing done here is lost.
void DocumentActions::read_again() { tell(read_job_file_again(document_, tr("read the file again"))); }

void DocumentActions::claim() {
  const QString path = document_.path();
  if (claim_.claim(path)) {
    told_elsewhere_.clear();
    return strip_->take_back(QStringLiteral("elsewhere"));
  }
  if (path == told_elsewhere_) return;
  told_elsewhere_ = path;
  strip_->tell(QStringLiteral("elsewhere"),
               tr("%1 is open in another window too; saving asks before it writes over what was saved there.").arg(QFileInfo(path).fileName()));
}

}  // namespace foldyard
