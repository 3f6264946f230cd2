#pragma once

// The list of rolls: choosing with the arrow keys or a click; Enter or a double
// click puts the chosen one on the table. A roll can be dragged to another place
// of the list, or out of it to whatever takes rolls (table/roll_drop.h).
//
// Everything a drag does has its menu entry and keys as well (shelf/shelf.h).

#include <QListView>

#include <functional>
#include <optional>

#include "shelf/roll_model.h"

class QDrag;
class QDropEvent;

namespace foldyard {

class RollList : public QListView {
  Q_OBJECT

 public:
  using Starter = std::function<Qt::DropAction(QDrag*, Qt::DropActions)>;

  explicit RollList(RollFilter* rolls, QWidget* parent = nullptr);

  // Runs the drag; for tests, which have no pointer to hold it.
  void set_drag_starter(Starter starter) { starter_ = std::move(starter); }
  RollFilter* filter() const { return filter_; }
  // Starts a drag of the chosen roll; for the mouse, and for tests.
  void startDrag(Qt::DropActions actions) override;
  // Before which row a roll lands that is let go there: 0 … rows shown.
  int gap_at(const QPoint& place) const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  // Enter or a double click.
  void wanted(int roll);
  // before: the place in the job; the number of rolls for the end.
  void dropped(int roll, int before);

 protected:
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragMoveEvent(QDragMoveEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  // The chosen roll stays in sight.
  void resizeEvent(QResizeEvent* event) override;

 private:
  int row_height() const;
  void show_gap(std::optional<int> gap);
  int roll_before(int gap) const;

  RollFilter* filter_;
  Starter starter_;
  std::optional<int> gap_;
};

}  // namespace foldyard
