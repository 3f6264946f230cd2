#include "window/job_drop.h"

#include <QApplication>
#include <QDropEvent>
#include <QFileInfo>
#include <QUrl>

namespace foldyard {

QString dropped_job(const QMimeData& data) {
  const auto urls = data.urls();
  if (urls.size() != 1 || !urls[0].isLocalFile()) return {};
  const QFileInfo file(urls[0].toLocalFile());
  const bool is_job = file.isFile() && file.suffix().compare(QLatin1String("json"), Qt::CaseInsensitive) == 0;
  return is_job ? file.absoluteFilePath() : QString();
}

JobDrop::JobDrop(QWidget* window) : QObject(window), window_(window) {
  window->setAcceptDrops(true);
  qApp->installEventFilter(this);
}

bool JobDrop::is_ours(QObject* watched) const {
  const auto* widget = qobject_cast<QWidget*>(watched);
  return widget && widget->window() == window_;
}

// QDragEnterEvent and QDragMoveEvent are QDropEvents too.
bool JobDrop::eventFilter(QObject* watched, QEvent* event) {
  const auto type = event->type();
  if (type != QEvent::DragEnter && type != QEvent::DragMove && type != QEvent::Drop) return false;
  if (!is_ours(watched)) return false;
  auto* drop = static_cast<QDropEvent*>(event);
  if (!drop->mimeData()->hasUrls()) return false;
  const QString path = dropped_job(*drop->mimeData());
  drop->setDropAction(path.isEmpty() ? Qt::IgnoreAction : Qt::CopyAction);
  drop->setAccepted(!path.isEmpty());
  if (type == QEvent::Drop && !path.isEmpty()) emit dropped(path);
  return true;
}

}  // namespace foldyard
