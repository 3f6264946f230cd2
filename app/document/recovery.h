#pragma once

// Recovery: the side files of all windows in one folder, and which of them is
// this window's.
//
// A window holds a lock on its side file as long as it lives. A side file whose
// window is gone was left by a crash: `left` lists them, `take` makes one this
// window's own. What cannot be read is put aside under another name and told;
// it never hinders. The document's own file is never touched.
//
// A lock counts only on the machine that made it, by the process that holds it.
// With an empty folder name nothing is kept and nothing found.
//
// Example: keep(side), then the program is killed; the next window's left()
// holds one side file, and take(left[0].id) gives the same job with crashes 1.

#include <QLockFile>
#include <QString>
#include <QStringList>

#include <memory>
#include <vector>

#include "document/side_file.h"

namespace foldyard {

struct LeftSide {
  QString id;
  SideFile side;
};

class Recovery {
 public:
  explicit Recovery(QString folder);

  bool is_on() const { return !folder_.isEmpty(); }

  // Writes this window's side file; side.crashes is put to this window's count.
  std::optional<Problem> keep(SideFile side);
  // Removes it: the job was saved, or is not wanted.
  void drop();

  // Newest first. Temporary files of writes that were killed an hour ago or
  // longer are removed from the folder.
  std::vector<LeftSide> left();
  // What the last `left` put aside: the names of the files.
  const QStringList& put_aside() const { return put_aside_; }

  // One crash more is written into it before it is given, so that a crash while
  // it is restored counts. Nothing where another window was faster.
  std::optional<SideFile> take(const QString& id);
  // Writes a left job as a job file of its own into `kept` beside the side
  // files, removes the side file, and gives the job file's path.
  Result<QString> keep_aside(const QString& id);

 private:
  using Lock = std::unique_ptr<QLockFile>;
  QString file(const QString& id, const char* ending) const;
  Lock lock(const QString& id) const;
  std::optional<SideFile> read(const QString& id);
  void put_aside(const QString& id);

  QString folder_;
  QString id_;
  Lock lock_;
  int crashes_ = 0;
  QStringList put_aside_;
};

}  // namespace foldyard
