#pragma once

// Rolls that are dragged between the shelf and the batch: from the shelf onto the answer
// of the batch, which may cut from them then; from its table of rolls onto the shelf,
// which leaves them out. Ticks and the menu do the same.

#include <QObject>

class QDropEvent;
class QMimeData;

namespace foldyard {

class BatchPage;
class Shelf;

class BatchDrag : public QObject {
  Q_OBJECT

 public:
  // Both outlive it.
  BatchDrag(Shelf* shelf, BatchPage* page);

  // A roll of the batch's table, by its place in the job.
  static QMimeData* roll_out(int roll);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  bool take(QDropEvent& event, bool let_go);

  Shelf* shelf_;
  BatchPage* page_;
};

}  // namespace foldyard
