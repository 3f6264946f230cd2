#include "document/file_mark.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

#include "file/read_job.h"

namespace foldyard {

std::optional<FileMark> mark_of_file(const QString& path) {
  const QFileInfo info(path);
  if (!info.isFile()) return std::nullopt;
  FileMark mark{info.size(), {}, info.lastModified()};
  if (mark.size > kLargestJobFile) return mark;
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
  const QByteArray bytes = file.read(kLargestJobFile + 1);
  mark.size = bytes.size();
  mark.hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
  return mark;
}

FileChange change_since(const FileMark& mark, const QString& path) {
  const auto now = mark_of_file(path);
  if (!now) return QFileInfo::exists(path) ? FileChange::changed : FileChange::removed;
  if (now->size != mark.size || now->hash != mark.hash) return FileChange::changed;
  const bool is_told_by_time = now->hash.isEmpty();
  return is_told_by_time && now->time != mark.time ? FileChange::changed : FileChange::none;
}

}  // namespace foldyard
