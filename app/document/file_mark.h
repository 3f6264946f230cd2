#pragma once

// FileMark: what a job file held when it was last read or written, so that a
// change by another program is noticed.
//
// Only what the file holds counts: a file that was written again with the same
// bytes, or got another time, has not changed. The time serves for words. A
// file larger than any job file is told apart by its size and time alone; no
// byte of it is read.
//
// Example: marked with "a", then written anew with "b": FileChange::changed;
// with "a" again: FileChange::none.

#include <QByteArray>
#include <QDateTime>
#include <QString>

#include <optional>

namespace foldyard {

struct FileMark {
  qint64 size = 0;     // bytes
  QByteArray hash;     // SHA-256 of the bytes
  QDateTime time;      // when it was last written
};

enum class FileChange { none, changed, removed };

// Nothing where there is no regular file that can be read.
std::optional<FileMark> mark_of_file(const QString& path);
FileChange change_since(const FileMark& mark, const QString& path);

}  // namespace foldyard
