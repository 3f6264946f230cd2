#pragma once

// Settings: the few things the program remembers between starts.
//
// Kept in one file; with an empty name only as long as the program runs. A
// file that is broken or cannot be written costs nothing but the settings:
// each then has the value it had at the first start. Two windows that run at
// the same time see each other's recent files.

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <QVariant>

#include <memory>
#include <optional>

QT_FORWARD_DECLARE_CLASS(QSettings)

namespace foldyard {

class Settings {
 public:
  static constexpr int kMostRecent = 10;

  explicit Settings(const QString& path = {});
  ~Settings();

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
  // Whether the table of panels shows the columns that few jobs need.
  bool shows_more_columns() const;
  void set_more_columns(bool shown);
  // Whether the first steps were done or sent away.
  bool is_guide_closed() const;
  void set_guide_closed(bool closed);

 private:
  QVariant value(const char* key) const;
  void set(const char* key, const QVariant& value);

  std::unique_ptr<QSettings> file_;
  mutable QVariantMap here_;
};

}  // namespace foldyard
