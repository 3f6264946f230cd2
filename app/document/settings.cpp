#include "document/settings.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QLockFile>

#include "file/safe_write.h"

namespace foldyard {
namespace {

constexpr qint64 kLargestFile = 64 * 1024;
constexpr int kWaitMs = 200;  // for another window that is writing

// Empty where it is not there, too large or no JSON object.
QJsonObject settings_in(const QString& path) {
  QFile file(path);
  if (!QFileInfo(path).isFile() || file.size() > kLargestFile || !file.open(QIODevice::ReadOnly)) return {};
  return QJsonDocument::fromJson(file.read(kLargestFile)).object();
}

QString text(bool chosen, const char* yes, const char* no) { return QLatin1String(chosen ? yes : no); }

}  // namespace

QJsonValue Settings::value(const char* key) const {
  const QLatin1String name(key);
  if (unwritten_.contains(name) || path_.isEmpty()) return unwritten_.value(name);
  return settings_in(path_).value(name);
}

// Without the lock, too: at worst one of two settings made at the same moment is lost.
void Settings::set(const char* key, const QJsonValue& value) {
  unwritten_.insert(QLatin1String(key), value);
  if (path_.isEmpty()) return;
  QDir().mkpath(QFileInfo(path_).path());
  QLockFile lock(path_ + QLatin1String(".lock"));
  lock.tryLock(kWaitMs);
  QJsonObject all = settings_in(path_);
  for (auto each = unwritten_.begin(); each != unwritten_.end(); ++each) all.insert(each.key(), each.value());
  const auto problem = safe_write(path_, QJsonDocument(all).toJson());
  if (!problem || is_in_place(*problem)) unwritten_ = {};
}

QStringList Settings::recent() const {
  QStringList paths;
  for (const QJsonValue& each : value("recent").toArray()) {
    const QString path = each.toString();
    if (QDir::isAbsolutePath(path) && !paths.contains(path) && paths.size() < kMostRecent) paths.append(path);
  }
  return paths;
}

void Settings::add_recent(const QString& path) {
  const QString absolute = QFileInfo(path).absoluteFilePath();
  auto paths = recent();
  paths.removeAll(absolute);
  paths.prepend(absolute);
  set("recent", QJsonArray::fromStringList(paths.mid(0, kMostRecent)));
}

void Settings::take_recent(const QString& path) {
  auto paths = recent();
  paths.removeAll(path);
  set("recent", QJsonArray::fromStringList(paths));
}

void Settings::clear_recent() { set("recent", QJsonArray()); }

QByteArray Settings::geometry() const { return QByteArray::fromBase64(value("geometry").toString().toLatin1()); }
void Settings::set_geometry(const QByteArray& geometry) { set("geometry", QString::fromLatin1(geometry.toBase64())); }

std::optional<bool> Settings::is_dark() const {
  const auto words = value("colours").toString();
  if (words != QLatin1String("dark") && words != QLatin1String("light")) return std::nullopt;
  return words == QLatin1String("dark");
}

void Settings::set_dark(bool dark) { set("colours", text(dark, "dark", "light")); }

QString Settings::language() const { return value("language").toString(); }
void Settings::set_language(const QString& code) { set("language", code); }

bool Settings::is_guide_closed() const { return value("guide").toString() == QLatin1String("closed"); }
void Settings::set_guide_closed(bool closed) { set("guide", text(closed, "closed", "open")); }

bool Settings::shows_more_columns() const { return value("panel_columns").toString() == QLatin1String("all"); }
void Settings::set_more_columns(bool shown) { set("panel_columns", text(shown, "all", "usual")); }

}  // namespace foldyard
