#pragma once

// BoardView: cloth seen from above, to scale, on the real table (folded) or as
// it comes off the roll (flat). Near end at the bottom.
//
// Zoom with the wheel, + and −, back to the whole with 0; move with the middle
// button or scroll bars. Pointing at a panel lights it up; with the keyboard
// the arrow keys go from patch to patch. In measuring mode two clicks give the
// distance between two points.
// On flat cloth a fold line can be dragged, or moved with Ctrl + left / right
// once chosen with F: then line_moved tells where to; nothing moves by itself. P
// asks for its pin to be put in or taken out. A context menu is asked for, too.

#include <QGraphicsView>

#include <optional>

#include "table/cloth_item.h"
#include "table/pin_marks.h"

namespace foldyard {

class BoardView : public QGraphicsView {
  Q_OBJECT

 public:
  BoardView(Side side, const QString& name, QWidget* parent = nullptr);
  ~BoardView() override;

  void show_cloth(const LaidClothPtr& cloth);
  void light(int patch);
  void set_dark(bool dark);
  void set_measuring(bool on);
  void set_line_movable(bool on) { lines_movable_ = on; }
  const LaidClothPtr& cloth() const { return item_->cloth(); }
  int lit() const { return item_->lit(); }
  double zoom() const { return zoom_; }
  int held_line() const { return held_; }
  // By fold line of the flat cloth: whether it is pinned.
  void set_pins(const std::vector<bool>& pins);
  const std::vector<bool>& pins() const { return pins_; }
  // Where a moved line came to rest, and why there; a tick on the tape.
  void set_snap(Snap snap, Length at);
  Snap snap() const { return snap_; }
  // The distance just measured, in words; empty when there is none.
  QString measured() const;

 public slots:
  void zoom_in();
  void zoom_out();
  void fit();

 signals:
  // patch −1: nowhere. The place is on this side's cloth.
  void pointed(int patch, foldyard::Length across, foldyard::Length along);
  void line_taken(int line);
  // While the hand moves it: where the pointer is.
  void line_moved(int line, foldyard::Length to);
  void line_left(int line);
  // By keyboard: one step to the left (−1) or right (+1).
  void line_stepped(int line, int steps);
  void pin_toggled(int line);
  // line, patch: what it is asked for, −1 for none.
  void menu_wanted(int line, int patch, const QPoint& global);

 protected:
  void drawBackground(QPainter* painter, const QRectF& rect) override;
  void drawForeground(QPainter* painter, const QRectF& rect) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  QRectF table() const;
  void set_zoom(double zoom);
  void apply_zoom();
  void point_at(const QPoint& pixel);
  int line_near(const QPoint& pixel) const;
  void pan_to(const QPoint& pixel);
  void step_patch(Qt::Key key);
  void step_line(int steps);
  bool has_lines() const { return lines_movable_ && cloth() && !cloth()->cloth().fold.lines.empty(); }
  int hold_some_line();
  int patch_near(const QPoint& pixel) const;
  void tell(int patch);
  void add_measure_point(const QPointF& scene);
  void paint_measure(QPainter& painter) const;
  void paint_tapes(QPainter& painter) const;
  void paint_pins(QPainter& painter) const;

  Side side_;
  ClothItem* item_;
  double zoom_ = 1;
  bool dark_ = false;
  bool measuring_ = false;
  bool lines_movable_ = false;
  int held_ = -1;
  std::vector<bool> pins_;
  Snap snap_ = Snap::none;
  Length snapped_at_;
  bool dragging_ = false;
  std::optional<QPoint> panning_;
  std::vector<QPointF> measure_;
};

}  // namespace foldyard
