#pragma once

// Settings: the few things the program remembers between starts.
//
// Kept in one JSON file, written safely (file/safe_write.h); with an empty name
// only as long as the program runs. A file that is broken costs nothing but the
// settings: each then has the value it had at the first start. What cannot be
// written holds as long as the program runs, and is written with the next setting
// that can be. Two windows that run at the same time see each other's recent files.

#include <QByteArray>
#include <QJsonObject>
#include <QString>
#include <QStringList>

#include <optional>
#include <utility>

namespace foldyard {

class Settings {
 public:
  static constexpr int kMostRecent = 10;

  explicit Settings(QString path = {}) : path_(std::move(path)) {}

  // Whether every setting of this run is on the disk; without a file none is.
  bool is_written() const { return unwritten_.isEmpty(); }

  // Job files, the last one first: absolute paths, none twice. A file may be
  // gone since.
  QStringList recent() const;
  void add_recent(const QString& path);
  void take_recent(const QString& path);
  void clear_recent();

  // As the window gave it (QWidget::saveGeometry); empty at the first start.
  QByteArray geometry() const;
  void set_geometry(const QByteArray& geometry);
  // Nothing as long as nobody chose: then the desktop's colours decide.
  std::optional<bool> is_dark() const;
  void set_dark(bool dark);
  // The code of a language; empty as long as nobody chose: then the system decides.
  QString language() const;
  void set_language(const QString& code);
  // Whether the table of panels shows the columns that few jobs need.
  bool shows_more_columns() const;
  void set_more_columns(bool shown);
  // Whether the first steps were done or sent away.
  bool is_guide_closed() const;
  void set_guide_closed(bool closed);

 private:
  QJsonValue value(const char* key) const;
  void set(const char* key, const QJsonValue& value);

  QString path_;
  QJsonObject unwritten_;
};

}  // namespace foldyard
