#pragma once

// Document: the job in the window, where it is kept, and its history.
//
// An edit gives a whole new Job. One that cannot stand (job/check_job.h) is
// refused and changes nothing; one that changes nothing leaves no trace in the
// history. Edits of one field that follow each other without end_field() are
// one step. Undo gives the job before, redo the job after, exactly.

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <optional>

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

class Document : public QObject {
  Q_OBJECT

 public:
  explicit Document(QObject* parent = nullptr);

  const Job& job() const { return job_; }
  // Empty for a job that has no file yet.
  const QString& path() const { return path_; }
  QUndoStack& history() { return history_; }
  bool is_changed() const { return !history_.isClean(); }

  // REQUIRES a job that stands. Begins a new history.
  void open(Job job, const QString& path);
  void set_saved(const QString& path);

  // words: for the history, "Change the width". field: which one, as in a job
  // file ("rolls[0].width").
  std::optional<Problem> edit(Job next, const QString& words, const QString& field = {});
  void end_field();

 signals:
  void changed();
  void opened();

 private:
  friend class JobEdit;
  void set_job(const Job& job);

  Job job_;
  QString path_;
  QUndoStack history_;
  int field_session_ = 0;
};

}  // namespace foldyard
