#pragma once

// Document: the job in the window, where it is kept, and its history.
//
// An edit gives a whole new Job. One that cannot stand (job/check_job.h) is
// refused and changes nothing; one that changes nothing leaves no trace in the
// history. Edits of one field that follow each other without end_field() are
// one step. Undo gives the job before, redo the job after, exactly.
//
// The history may hold steps of other kinds too, which do not touch the job. A
// document is unchanged while its job is the one that was opened or saved last,
// by whatever steps it came back to it.

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <optional>

#include "document/file_mark.h"
#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

class Document : public QObject {
  Q_OBJECT

 public:
  explicit Document(QObject* parent = nullptr);
  ~Document() override;

  const Job& job() const { return job_; }
  // Empty for a job that has no file yet.
  const QString& path() const { return path_; }
  QUndoStack& history() { return history_; }
  // What the file held when it was last read or written; nothing without a file.
  const std::optional<FileMark>& mark() const { return mark_; }
  // Whether the job is other than in its file.
  bool is_changed() const { return is_elsewhere_ || job_ != kept_; }

  // REQUIRES a job that stands. Begins a new history.
  void open(Job job, const QString& path, const std::optional<FileMark>& mark = {});
  // The same for a job that a crash left: it counts as changed until it is saved.
  void recover(Job job, const QString& path, const std::optional<FileMark>& mark);
  void set_saved(const QString& path, const std::optional<FileMark>& mark = {});
  void set_mark(const std::optional<FileMark>& mark) { mark_ = mark; }
  // The job is in no file as it is, undone or not, until it is saved.
  void count_as_changed();

  // words: for the history, "Change the width". field: which one, as in a job
  // file ("rolls[0].width").
  std::optional<Problem> edit(Job next, const QString& words, const QString& field = {});
  void end_field();

 signals:
  void changed();
  void opened();
  // Where the job is kept may have changed, or whether it is saved.
  void kept();

 private:
  friend class JobEdit;
  void set_job(const Job& job);
  void begin(Job job, const QString& path, const std::optional<FileMark>& mark, bool is_elsewhere);

  Job job_;
  Job kept_;  // as it was opened or saved last
  QString path_;
  std::optional<FileMark> mark_;
  bool is_elsewhere_ = false;
  QUndoStack history_;
  int field_session_ = 0;
};

}  // namespace foldyard
