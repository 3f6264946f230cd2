#include "document/recovery.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUuid>

#include <algorithm>

#include "file/read_job.h"
#include "file/safe_write.h"
#include "file/write_job.h"
#include "language/tr.h"

namespace foldyard {
namespace {

constexpr char kSide[] = ".side";
constexpr char kLock[] = ".lock";
constexpr char kDamaged[] = ".damaged";
// A side file is a job file as one text: at worst every byte is written as two.
constexpr qint64 kLargestSideFile = 2 * kLargestJobFile + 64 * 1024;

QString new_id() { return QUuid::createUuid().toString(QUuid::WithoutBraces); }

QString free_name(const QDir& folder, const QString& name) {
  for (int number = 1;; ++number) {
    const auto path = folder.filePath(number == 1 ? name + QLatin1String(".json")
                                                  : QStringLiteral("%1 %2.json").arg(name).arg(number));
    if (!QFileInfo::exists(path)) return path;
  }
}

// The job's name as a file's: letters, figures, spaces and - of it.
QString file_name(const SideFile& side) {
  QString name = side.path.isEmpty() ? QString::fromStdString(side.job.name) : QFileInfo(side.path).completeBaseName();
  name.removeIf([](QChar c) { return !c.isLetterOrNumber() && c != QLatin1Char(' ') && c != QLatin1Char('-'); });
  return name.trimmed().isEmpty() ? tr("job") : name.trimmed();
}

Problem no_longer_there() {
  return {"", tr("the unsaved job is no longer there").toStdString(), tr("another window may have it").toStdString()};
}

}  // namespace

Recovery::Recovery(QString folder) : folder_(std::move(folder)), id_(new_id()) {}

QString Recovery::file(const QString& id, const char* ending) const {
  return QDir(folder_).filePath(id + QLatin1String(ending));
}

// Null where another window that lives holds it.
Recovery::Lock Recovery::lock(const QString& id) const {
  auto lock = std::make_unique<QLockFile>(file(id, kLock));
  lock->setStaleLockTime(0);  // however old, only a process that is gone frees it
  return lock->tryLock(0) ? std::move(lock) : nullptr;
}

std::optional<Problem> Recovery::keep(SideFile side) {
  if (!is_on()) return std::nullopt;
  QDir().mkpath(folder_);
  if (!lock_) lock_ = lock(id_);
  side.crashes = crashes_;
  return safe_write(file(id_, kSide), write_side_file(side));
}

void Recovery::drop() {
  crashes_ = 0;
  if (!lock_) return;
  QFile::remove(file(id_, kSide));
  lock_.reset();
}

std::vector<LeftSide> Recovery::left() {
  put_aside_.clear();
  std::vector<LeftSide> found;
  if (!is_on()) return found;
  remove_litter(folder_);
  for (const QString& name : QDir(folder_).entryList({QStringLiteral("*.side")}, QDir::Files)) {
    const QString id = name.chopped(static_cast<qsizetype>(sizeof kSide) - 1);
    if (id == id_) continue;
    const Lock held = lock(id);
    if (!held) continue;
    if (auto side = read(id)) found.push_back({id, *std::move(side)});
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const LeftSide& a, const LeftSide& b) { return a.side.time > b.side.time; });
  return found;
}

std::optional<SideFile> Recovery::read(const QString& id) {
  QFile opened(file(id, kSide));
  if (!opened.open(QIODevice::ReadOnly)) return std::nullopt;
  const auto side = read_side_file(opened.read(kLargestSideFile));
  if (side) return *side;
  put_aside(id);
  return std::nullopt;
}

void Recovery::put_aside(const QString& id) {
  QString name = file(id, kDamaged);
  for (int number = 2; QFileInfo::exists(name); ++number) name = file(id, kDamaged) + QString::number(number);
  if (QFile::rename(file(id, kSide), name)) put_aside_.append(name);
}

std::optional<SideFile> Recovery::take(const QString& id) {
  Lock held = lock(id);
  if (!held) return std::nullopt;
  auto side = read(id);
  if (!side) return std::nullopt;
  drop();
  id_ = id;
  lock_ = std::move(held);
  crashes_ = ++side->crashes;
  safe_write(file(id_, kSide), write_side_file(*side));  // a full disk must not keep the job from its maker
  return side;
}

Result<QString> Recovery::keep_aside(const QString& id) {
  const Lock held = lock(id);
  const auto side = held ? read(id) : std::nullopt;
  if (!side) return no_longer_there();
  const QDir kept(QDir(folder_).filePath(QStringLiteral("kept")));
  kept.mkpath(QStringLiteral("."));
  const QString path = free_name(kept, file_name(*side));
  if (const auto problem = safe_write(path, write_job(side->job))) return *problem;
  QFile::remove(file(id, kSide));
  return path;
}

}  // namespace foldyard
