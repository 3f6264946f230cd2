#include "document/autosave.h"

#include "language/spoken.h"

namespace foldyard {

Autosave::Autosave(Document& document, Recovery& recovery, QObject* parent)
    : QObject(parent), document_(document), recovery_(recovery) {
  timer_.setSingleShot(true);
  timer_.setInterval(kMs);
  connect(&timer_, &QTimer::timeout, this, &Autosave::keep_now);
  connect(&document_.history(), &QUndoStack::indexChanged, this, &Autosave::count_edit);
  connect(&document_, &Document::kept, this, &Autosave::follow_file);
}

void Autosave::count_edit() {
  if (!document_.is_changed()) return rest();
  if (++edits_ >= kEdits) return keep_now();
  if (!timer_.isActive()) timer_.start();
}

// A job that was opened or saved has nothing to keep; one that was recovered has.
void Autosave::follow_file() { document_.is_changed() ? keep_now() : rest(); }

void Autosave::keep_now() {
  timer_.stop();
  edits_ = 0;
  const auto problem =
      recovery_.keep({document_.job(), document_.path(), document_.mark(), QDateTime::currentDateTime(), 0});
  if (problem && !has_failed_)
    emit failed(tr("Changes cannot be kept for the case of a crash: %1").arg(spoken(*problem)));
  has_failed_ = problem.has_value();
}

void Autosave::rest() {
  timer_.stop();
  edits_ = 0;
  recovery_.drop();
}

void Autosave::end() { rest(); }

}  // namespace foldyard
