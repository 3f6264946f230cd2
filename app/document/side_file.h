#pragma once

// The side file of a document: what it holds while it is not saved, so that a
// crash, a power cut or a kill loses at most its last few edits.
//
// Its first line names the format and the SHA-256 of all that follows; the rest
// is JSON with the job as a job file has it. A side file that was cut short or
// changed in any byte is refused, and so is a job that cannot stand.
//
// crashes: how many starts in a row have restored the job and not ended well.

#include <QByteArray>
#include <QDateTime>
#include <QString>

#include <optional>

#include "document/file_mark.h"
#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

struct SideFile {
  Job job;
  QString path;                  // the document's own file; empty for none
  std::optional<FileMark> mark;  // what that file held when it was opened
  QDateTime time;                // when the job was kept; to the millisecond
  int crashes = 0;
};

// REQUIRES a job that stands.
QByteArray write_side_file(const SideFile& side);
Result<SideFile> read_side_file(const QByteArray& bytes);

}  // namespace foldyard
