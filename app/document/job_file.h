#pragma once

// The file in which a document is kept: opening, saving, and what other
// programs and other windows do with it meanwhile.
//
// Opening marks what the file held, saving what was written, so that
// change_on_disk can tell a change by another program. Nothing here overwrites
// a file in silence: ask change_on_disk before save_job_file.
//
// FileClaim says "open here" to other windows of this program by a lock file
// in a folder of the program (not beside the job), on this machine only.

#include <QLockFile>
#include <QString>

#include <memory>
#include <optional>

#include "document/document.h"
#include "measure/result.h"

namespace foldyard {

// What went wrong, and then the document is as it was.
std::optional<Problem> open_job_file(Document& document, const QString& path);
std::optional<Problem> save_job_file(Document& document, const QString& path);

// Takes what the file holds now as an edit: undo gives the job before.
std::optional<Problem> read_job_file_again(Document& document, const QString& words);

// FileChange::none for a document without a file.
FileChange change_on_disk(const Document& document);
// What is on the disk now is known and may be written over; the document
// counts as changed, since its file holds something else.
void accept_change(Document& document);

class FileClaim {
 public:
  // With an empty folder name every claim is had.
  explicit FileClaim(QString folder) : folder_(std::move(folder)) {}

  // Gives the last claim back. False: another window has the file open. Asked
  // again for the same file it tries again. Where no lock can be made, none is
  // looked for.
  bool claim(const QString& path);

 private:
  QString folder_;
  QString path_;
  std::unique_ptr<QLockFile> lock_;
};

}  // namespace foldyard
