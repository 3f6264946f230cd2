#include "document/job_file.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>

#include "file/read_job.h"
#include "file/safe_write.h"
#include "file/write_job.h"

namespace foldyard {
namespace {

QString claim_name(const QString& path) {
  const QFileInfo info(path);
  const QString whole = info.exists() ? info.canonicalFilePath() : info.absoluteFilePath();
  return QString::fromLatin1(QCryptographicHash::hash(whole.toUtf8(), QCryptographicHash::Sha256).toHex().left(32)) +
         QLatin1String(".open");
}

}  // namespace

// Marked first: what changes while it is read is then taken for a change.
std::optional<Problem> open_job_file(Document& document, const QString& path) {
  const QString absolute = QFileInfo(path).absoluteFilePath();
  const auto mark = mark_of_file(absolute);
  auto job = load_job(path);
  if (!job) return job.problem();
  document.open(*std::move(job), absolute, mark);
  return std::nullopt;
}

std::optional<Problem> save_job_file(Document& document, const QString& path) {
  if (auto problem = safe_write(path, write_job(document.job()))) return problem;
  const QString absolute = QFileInfo(path).absoluteFilePath();
  document.set_saved(absolute, mark_of_file(absolute));
  return std::nullopt;
}

std::optional<Problem> read_job_file_again(Document& document, const QString& words) {
  const QString path = document.path();
  const auto mark = mark_of_file(path);
  auto job = load_job(path);
  if (!job) return job.problem();
  if (auto problem = document.edit(*std::move(job), words)) return problem;
  document.set_saved(path, mark);
  return std::nullopt;
}

FileChange change_on_disk(const Document& document) {
  if (document.path().isEmpty() || !document.mark()) return FileChange::none;
  return change_since(*document.mark(), document.path());
}

void accept_change(Document& document) {
  document.set_mark(mark_of_file(document.path()));
  document.count_as_changed();
}

bool FileClaim::claim(const QString& path) {
  if (path == path_ && lock_) return true;
  lock_.reset();
  path_ = path;
  if (folder_.isEmpty() || path.isEmpty()) return true;
  QDir().mkpath(folder_);
  auto lock = std::make_unique<QLockFile>(QDir(folder_).filePath(claim_name(path)));
  lock->setStaleLockTime(0);
  if (!lock->tryLock(0)) return lock->error() != QLockFile::LockFailedError;
  lock_ = std::move(lock);
  return true;
}

}  // namespace foldyard
