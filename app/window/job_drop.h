#pragma once

// Takes a job file that is dropped anywhere on a window.
//
// One file whose name ends in .json is taken; other files, several of them, a
// folder or something from the web are refused while they hover, before any
// field can take their names for text. What carries no files is left alone.

#include <QMimeData>
#include <QObject>
#include <QString>
#include <QWidget>

namespace foldyard {

// The file's path; empty where it is refused.
QString dropped_job(const QMimeData& data);

class JobDrop : public QObject {
  Q_OBJECT

 public:
  // Watches the window and all that is in it.
  explicit JobDrop(QWidget* window);

 signals:
  void dropped(const QString& path);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  bool is_ours(QObject* watched) const;

  QWidget* window_;
};

}  // namespace foldyard
