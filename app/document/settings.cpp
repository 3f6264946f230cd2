#include "document/settings.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSettings>

namespace foldyard {
namespace {

std::unique_ptr<QSettings> settings_file(const QString& path) {
  auto file = std::make_unique<QSettings>(path, QSettings::IniFormat);
  if (file->status() != QSettings::FormatError) return file;
  file.reset();
  QFile::remove(path);
  return std::make_unique<QSettings>(path, QSettings::IniFormat);
}

}  // namespace

Settings::Settings(const QString& path) : file_(path.isEmpty() ? nullptr : settings_file(path)) {}
Settings::~Settings() = default;

QVariant Settings::value(const char* key) const {
  const QString name = QString::fromLatin1(key);
  return file_ ? file_->value(name) : here_.value(name);
}

void Settings::set(const char* key, const QVariant& value) {
  const QString name = QString::fromLatin1(key);
  if (!file_) return void(here_.insert(name, value));
  file_->setValue(name, value);
  file_->sync();
}

QStringList Settings::recent() const {
  if (file_) file_->sync();
  QStringList paths;
  for (const QString& path : value("recent").toStringList())
    if (QDir::isAbsolutePath(path) && !paths.contains(path) && paths.size() < kMostRecent) paths.append(path);
  return paths;
}

void Settings::add_recent(const QString& path) {
  const QString absolute = QFileInfo(path).absoluteFilePath();
  auto paths = recent();
  paths.removeAll(absolute);
  paths.prepend(absolute);
  set("recent", QStringList(paths.mid(0, kMostRecent)));
}

void Settings::take_recent(const QString& path) {
  auto paths = recent();
  paths.removeAll(path);
  set("recent", paths);
}

void Settings::clear_recent() { set("recent", QStringList()); }

QByteArray Settings::geometry() const { return value("geometry").toByteArray(); }
void Settings::set_geometry(const QByteArray& geometry) { set("geometry", geometry); }

std::optional<bool> Settings::is_dark() const {
  const auto words = value("colours").toString();
  if (words != QLatin1String("dark") && words != QLatin1String("light")) return std::nullopt;
  return words == QLatin1String("dark");
}

void Settings::set_dark(bool dark) { set("colours", dark ? QStringLiteral("dark") : QStringLiteral("light")); }

bool Settings::is_guide_closed() const { return value("guide").toString() == QLatin1String("closed"); }
void Settings::set_guide_closed(bool closed) { set("guide", closed ? QStringLiteral("closed") : QStringLiteral("open")); }

bool Settings::shows_more_columns() const { return value("panel_columns").toString() == QLatin1String("all"); }
void Settings::set_more_columns(bool shown) { set("panel_columns", shown ? QStringLiteral("all") : QStringLiteral("usual")); }

}  // namespace foldyard
