#include "document/document.h"

#include <QUndoCommand>

#include "job/check_job.h"

namespace foldyard {

// The job before and the job after; following edits of one field are joined.
class JobEdit : public QUndoCommand {
 public:
  JobEdit(Document& document, Job after, const QString& words, QString key)
      : QUndoCommand(words), document_(document), before_(document.job()), after_(std::move(after)),
        key_(std::move(key)) {}

  void undo() override { document_.set_job(before_); }
  void redo() override { document_.set_job(after_); }
  int id() const override { return key_.isEmpty() ? -1 : 1; }

  bool mergeWith(const QUndoCommand* other) override {
    const auto* later = static_cast<const JobEdit*>(other);
    if (later->key_ != key_) return false;
    after_ = later->after_;
    setObsolete(before_ == after_);
    return true;
  }

 private:
  Document& document_;
  Job before_;
  Job after_;
  QString key_;
};

Document::Document(QObject* parent) : QObject(parent) {}

// The history says that it is cleared as it goes; nobody is to act on that.
Document::~Document() { history_.disconnect(); }

void Document::open(Job job, const QString& path, const std::optional<FileMark>& mark) {
  begin(std::move(job), path, mark, false);
}

void Document::recover(Job job, const QString& path, const std::optional<FileMark>& mark) {
  begin(std::move(job), path, mark, true);
}

// is_elsewhere comes first, so that an emptied history is not taken for a saved job.
void Document::begin(Job job, const QString& path, const std::optional<FileMark>& mark, bool is_elsewhere) {
  is_elsewhere_ = is_elsewhere;
  job_ = std::move(job);
  kept_ = job_;
  path_ = path;
  mark_ = mark;
  history_.clear();
  emit opened();
  emit kept();
  emit changed();
}

void Document::set_saved(const QString& path, const std::optional<FileMark>& mark) {
  path_ = path;
  mark_ = mark;
  is_elsewhere_ = false;
  kept_ = job_;
  history_.setClean();
  emit kept();
}

void Document::count_as_changed() {
  is_elsewhere_ = true;
  emit kept();
}

std::optional<Problem> Document::edit(Job next, const QString& words, const QString& field) {
  if (const auto problem = check_job(next)) return problem;
  if (next == job_) return std::nullopt;
  const auto key = field.isEmpty() ? field : field + QLatin1Char('#') + QString::number(field_session_);
  history_.push(new JobEdit(*this, std::move(next), words, key));
  return std::nullopt;
}

void Document::end_field() { ++field_session_; }

void Document::set_job(const Job& job) {
  job_ = job;
  emit changed();
}

}  // namespace foldyard
