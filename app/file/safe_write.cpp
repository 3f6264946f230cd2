#include "file/safe_write.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <cerrno>
#include <cstdlib>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace foldyard {
namespace {

constexpr const char* kInPlace =
    to_say("the file is saved, but a power cut could still take it: the disk reported a fault");

Problem problem_of(const std::string& where, int error) {
  switch (error) {
    case ENOSPC:
    case EFBIG:
    case EDQUOT:
      return {where, say("the disk is full"), say("make room or save elsewhere")};
    case EACCES:
    case EPERM:
      return {where, say("writing is not allowed there"), say("ask for the right to write or save elsewhere")};
    case EROFS:
      return {where, say("the disk can only be read"), say("save elsewhere")};
    case ENOENT:
    case ENOTDIR:
      return {where, say("the folder does not exist"), say("make it or save elsewhere")};
    case ENAMETOOLONG:
      return {where, say("the file name is too long"), say("choose a shorter one")};
    default:
      return {where, say("the disk reported a fault and the file was not saved"), say("save elsewhere")};
  }
}

struct Target {
  std::string path;  // links followed
  std::optional<mode_t> mode;
};

Result<Target> find_target(const std::string& path) {
  struct stat own;
  if (lstat(path.c_str(), &own) != 0) {
    if (errno == ENOENT) return Target{path, {}};
    return problem_of(path, errno);
  }
  char* real = realpath(path.c_str(), nullptr);
  if (!real) return Problem{path, say("this is a link to nothing"), say("remove the link or save elsewhere")};
  const Target target{real, {}};
  std::free(real);
  struct stat found;
  if (stat(target.path.c_str(), &found) != 0) return problem_of(path, errno);
  if (!S_ISREG(found.st_mode)) {
    return Problem{path, say("this is a folder or a device, not a file"), say("choose another name")};
  }
  if (faccessat(AT_FDCWD, target.path.c_str(), W_OK, AT_EACCESS) != 0) {
    return Problem{path, say("the file is write-protected"), say("allow writing or save elsewhere")};
  }
  return Target{target.path, found.st_mode & 07777};
}

std::string folder_of(const std::string& path) {
  const std::size_t slash = path.rfind('/');
  if (slash == std::string::npos) return ".";
  return slash == 0 ? "/" : path.substr(0, slash);
}

// Closes and, unless it was moved away, removes the file at the end.
class TemporaryFile {
 public:
  explicit TemporaryFile(const std::string& folder) {
    for (int i = 0; i < 1000 && descriptor_ < 0; ++i) {
      path_ = folder + "/.foldyard-" + std::to_string(getpid()) + "-" + std::to_string(i);
      descriptor_ = open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
      if (descriptor_ < 0 && errno != EEXIST) return;
    }
  }
  ~TemporaryFile() {
    if (descriptor_ >= 0) close(descriptor_);
    if (!moved_ && was_opened_) unlink(path_.c_str());
  }
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;

  bool is_open() { return was_opened_ = descriptor_ >= 0; }

  // Each gives 0 or the error number.
  int write_all(const QByteArray& bytes) const {
    qsizetype done = 0;
    while (done < bytes.size()) {
      const ssize_t n = write(descriptor_, bytes.constData() + done,
                              static_cast<std::size_t>(bytes.size() - done));
      if (n < 0 && errno != EINTR) return errno;
      if (n == 0) return EIO;
      if (n > 0) done += n;
    }
    return 0;
  }
  int keep_mode(std::optional<mode_t> mode) const {
    return mode && fchmod(descriptor_, *mode) != 0 ? errno : 0;
  }
  int finish() {
    if (fsync(descriptor_) != 0) return errno;
    const int closed = close(descriptor_);
    descriptor_ = -1;
    return closed != 0 ? errno : 0;
  }
  int move_to(const std::string& path) {
    if (rename(path_.c_str(), path.c_str()) != 0) return errno;
    moved_ = true;
    return 0;
  }

 private:
  std::string path_;
  int descriptor_ = -1;
  bool was_opened_ = false;
  bool moved_ = false;
};

// A folder that cannot be forced (some network disks) is no fault.
int force_folder(const std::string& folder) {
  const int descriptor = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (descriptor < 0) return 0;
  const int error = fsync(descriptor) != 0 && errno != EINVAL ? errno : 0;
  close(descriptor);
  return error;
}

// Up to and with the move: 0 or the error number.
int put_in_place(const Target& target, const QByteArray& bytes) {
  TemporaryFile file(folder_of(target.path));
  if (!file.is_open()) return errno;
  if (const int error = file.write_all(bytes)) return error;
  if (const int error = file.keep_mode(target.mode)) return error;
  if (const int error = file.finish()) return error;
  return file.move_to(target.path);
}

}  // namespace

std::optional<Problem> safe_write(const QString& path, const QByteArray& bytes) {
  const std::string where = QFile::encodeName(path).toStdString();
  const Result<Target> target = find_target(where);
  if (!target) return target.problem();
  if (const int error = put_in_place(*target, bytes)) return problem_of(where, error);
  const std::string folder = folder_of(target->path);
  remove_litter(QFile::decodeName(folder.c_str()));
  if (force_folder(folder) == 0) return {};
  return Problem{where, say(kInPlace), say("save once more, or elsewhere")};
}

bool is_in_place(const Problem& problem) { return problem.what == kInPlace; }

void remove_litter(const QString& folder) {
  const auto an_hour_ago = QDateTime::currentDateTime().addSecs(-3600);
  const QDir there(folder);
  for (const QFileInfo& info : there.entryInfoList({QStringLiteral(".foldyard-*")}, QDir::Files | QDir::Hidden))
    if (info.lastModified() < an_hour_ago) QFile::remove(info.filePath());
}

}  // namespace foldyard
