#include "window/batch_drag.h"

#include <QCoreApplication>
#include <QDropEvent>
#include <QMimeData>

#include "batch/batch_page.h"
#include "shelf/shelf.h"
#include "table/roll_drop.h"

namespace foldyard {
namespace {

const QString kRollOut = QStringLiteral("application/x-foldyard-roll-of-batch");

// Nothing of another program's batch.
int roll_in(const QMimeData& dragged) {
  const QList<QByteArray> words = dragged.data(kRollOut).split(' ');
  return words.size() == 2 && words[0].toLongLong() == QCoreApplication::applicationPid() ? words[1].toInt() : -1;
}

}  // namespace

BatchDrag::BatchDrag(Shelf* shelf, BatchPage* page) : QObject(page), shelf_(shelf), page_(page) {
  auto* in = new RollDrop(page->view());
  in->hint()->setText(tr("Let go to let the batch cut from the roll"));
  connect(in, &RollDrop::dropped, page, [page](int roll) { page->set_in_batch(roll, InBatch::may); });
  page->view()->table()->setDragEnabled(true);
  page->view()->model()->set_dragger([page](int row) -> QMimeData* {
    return page->view()->chosen_roll() < 0 ? nullptr : roll_out(row);
  });
  shelf_->list()->viewport()->installEventFilter(this);
}

QMimeData* BatchDrag::roll_out(int roll) {
  auto* dragged = new QMimeData;
  dragged->setData(kRollOut, QByteArray::number(QCoreApplication::applicationPid()) + ' ' + QByteArray::number(roll));
  return dragged;
}

bool BatchDrag::eventFilter(QObject* watched, QEvent* event) {
  switch (event->type()) {
    case QEvent::DragEnter:
    case QEvent::DragMove: return take(*static_cast<QDropEvent*>(event), false);
    case QEvent::Drop: return take(*static_cast<QDropEvent*>(event), true);
    default: return QObject::eventFilter(watched, event);
  }
}

// What is no roll of the batch goes on to the shelf.
bool BatchDrag::take(QDropEvent& event, bool let_go) {
  const int roll = roll_in(*event.mimeData());
  if (roll < 0) return false;
  event.setDropAction(Qt::CopyAction);
  event.accept();
  if (let_go) page_->set_in_batch(roll, InBatch::never);
  return true;
}

}  // namespace foldyard
