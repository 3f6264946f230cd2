#include "table/board_view.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

#include "drawing/words.h"
#include "measure/index.h"
#include "table/board_colours.h"
#include "table/board_tape.h"

namespace foldyard {
namespace {

constexpr double kStep = 1.25;
constexpr double kNearest = 40;
constexpr int kGrasp = 8;  // pixels around a fold line

Length clamped(Length place, Length most) { return std::clamp(place, Length(), most); }

// A pointer is no finer than this: 1 mm, or 1/8 in.
Length pointed_length(double mm, Unit unit) {
  const Length step = unit == Unit::inch || unit == Unit::yard ? Length::inches64(8) : Length::mm(1);
  return step * std::llround(mm / step.in_mm());
}

// How far a patch lies in a direction; negative where it does not.
double distance(const QPointF& from, const QPointF& to, Qt::Key key) {
  const QPointF way = to - from;
  const bool level = key == Qt::Key_Left || key == Qt::Key_Right;
  const double ahead = level ? way.x() : way.y(), beside = level ? way.y() : way.x();
  const double forward = key == Qt::Key_Left || key == Qt::Key_Up ? -ahead : ahead;
  return forward > 1e-6 ? forward + 2 * std::abs(beside) : -1;
}

}  // namespace

BoardView::BoardView(Side side, const QString& name, QWidget* parent)
    : QGraphicsView(parent), side_(side), item_(new ClothItem(side)) {
  auto* scene = new QGraphicsScene(this);
  scene->addItem(item_);
  setScene(scene);
  setAccessibleName(name);
  setFrameShape(QFrame::NoFrame);
  setMouseTracking(true);
  viewport()->setFocusPolicy(Qt::NoFocus);
  setFocusPolicy(Qt::StrongFocus);
  setViewportUpdateMode(QGraphicsView::FullViewportUpdate);
  setTransformationAnchor(QGraphicsView::AnchorUnderMouse);
  setMinimumSize(160, 160);
}

BoardView::~BoardView() = default;

void BoardView::show_cloth(const LaidClothPtr& cloth) {
  item_->show(cloth);
  measure_.clear();
  scene()->setSceneRect(table());
  apply_zoom();
  tell(-1);
}

void BoardView::light(int patch) { item_->light(patch); }

void BoardView::set_dark(bool dark) {
  dark_ = dark;
  item_->set_dark(dark);
  viewport()->update();
}

void BoardView::set_pins(const std::vector<bool>& pins) {
  pins_ = pins;
  viewport()->update();
}

void BoardView::set_snap(Snap snap, Length at) {
  snap_ = snap;
  snapped_at_ = at;
  viewport()->update();
}

void BoardView::set_measuring(bool on) {
  measuring_ = on;
  measure_.clear();
  viewport()->setCursor(on ? Qt::CrossCursor : Qt::ArrowCursor);
  viewport()->update();
}

// The folded cloth lies on the whole table; flat cloth has only itself.
QRectF BoardView::table() const {
  const LaidClothPtr& cloth = item_->cloth();
  if (!cloth) return QRectF(0, -1000, 1000, 1000);
  const Table& top = cloth->job->table;
  const Rect shown = side_ == Side::folded ? Rect{{Length(), std::max(top.depth, cloth->folded().across.to)},
                                                  {Length(), std::max(top.length, cloth->folded().along.to)}}
                                           : cloth->flat();
  return scene_rect(shown);
}

void BoardView::zoom_in() { set_zoom(zoom_ * kStep); }
void BoardView::zoom_out() { set_zoom(zoom_ / kStep); }
void BoardView::fit() { set_zoom(1); }

void BoardView::set_zoom(double zoom) {
  zoom_ = std::clamp(zoom, 1.0, kNearest);
  if (zoom_ < 1.01) zoom_ = 1;
  apply_zoom();
}

void BoardView::apply_zoom() {
  const QRectF whole = table();
  const double room = 2 * (kTapeWidth + kTapeGap) + 8;
  const double scale = std::min((viewport()->width() - room) / whole.width(), (viewport()->height() - room) / whole.height());
  if (scale <= 0) return;
  const double shown = scale * zoom_, rim = (kTapeWidth + kTapeGap + 4) / shown;
  scene()->setSceneRect(whole.adjusted(-rim, -rim, rim, rim));
  setTransform(QTransform::fromScale(shown, shown));
  viewport()->update();
}

void BoardView::resizeEvent(QResizeEvent* event) {
  QGraphicsView::resizeEvent(event);
  apply_zoom();
}

void BoardView::showEvent(QShowEvent* event) {
  QGraphicsView::showEvent(event);
  apply_zoom();
}

void BoardView::wheelEvent(QWheelEvent* event) {
  set_zoom(zoom_ * (event->angleDelta().y() > 0 ? kStep : 1 / kStep));
  event->accept();
}

void BoardView::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  if (event->button() == Qt::MiddleButton) {
    panning_ = event->pos();
    return viewport()->setCursor(Qt::ClosedHandCursor);
  }
  if (event->button() != Qt::LeftButton) return QGraphicsView::mousePressEvent(event);
  if (measuring_) return add_measure_point(mapToScene(event->pos()));
  held_ = line_near(event->pos());
  item_->hold_line(held_);
  dragging_ = held_ >= 0;
  if (dragging_) emit line_taken(held_);
  else point_at(event->pos());
}

void BoardView::mouseMoveEvent(QMouseEvent* event) {
  if (panning_) return pan_to(event->pos());
  if (dragging_) {
    emit line_moved(held_, clamped(across_at(mapToScene(event->pos())), cloth()->fabric().width));
    return;
  }
  if (measuring_) return viewport()->update();
  viewport()->setCursor(line_near(event->pos()) >= 0 ? Qt::SplitHCursor : Qt::ArrowCursor);
  point_at(event->pos());
}

void BoardView::mouseReleaseEvent(QMouseEvent* event) {
  if (panning_) viewport()->setCursor(Qt::ArrowCursor);
  panning_.reset();
  if (!dragging_) return QGraphicsView::mouseReleaseEvent(event);
  dragging_ = false;
  emit line_left(held_);
}

void BoardView::leaveEvent(QEvent* event) {
  QGraphicsView::leaveEvent(event);
  if (!dragging_) emit pointed(-1, {}, {});
}

void BoardView::pan_to(const QPoint& pixel) {
  const QPoint way = pixel - *panning_;
  panning_ = pixel;
  horizontalScrollBar()->setValue(horizontalScrollBar()->value() - way.x());
  verticalScrollBar()->setValue(verticalScrollBar()->value() - way.y());
}

int BoardView::line_near(const QPoint& pixel) const {
  if (!lines_movable_ || side_ != Side::flat || !cloth()) return -1;
  const std::vector<Length>& lines = cloth()->cloth().fold.lines;
  int nearest = -1, least = kGrasp + 1;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const int away = std::abs(mapFromScene(QPointF(lines[i].in_mm(), 0)).x() - pixel.x());
    if (away < least) std::tie(nearest, least) = std::pair(static_cast<int>(i), away);
  }
  return nearest;
}

int BoardView::patch_near(const QPoint& pixel) const {
  if (!cloth()) return -1;
  const QPointF place = mapToScene(pixel);
  const Length across = across_at(place), along = along_at(place);
  return side_ == Side::folded ? cloth()->patch_at(across, along) : cloth()->patch_at_flat(across, along);
}

void BoardView::point_at(const QPoint& pixel) {
  if (!cloth()) return;
  const QPointF place = mapToScene(pixel);
  const int patch = patch_near(pixel);
  tell(patch);
  emit pointed(patch, across_at(place), along_at(place));
}

// By keyboard it is asked for what is held or lit.
void BoardView::contextMenuEvent(QContextMenuEvent* event) {
  const bool by_key = event->reason() == QContextMenuEvent::Keyboard;
  emit menu_wanted(by_key ? held_ : line_near(event->pos()), by_key ? lit() : patch_near(event->pos()),
                   by_key ? mapToGlobal(viewport()->rect().center()) : event->globalPos());
}

void BoardView::tell(int patch) {
  if (!cloth()) return;
  const bool is_patch = patch >= 0 && patch < static_cast<int>(cloth()->patches.size());
  const QString words = is_patch ? patch_words(*cloth(), cloth()->patches[ix(patch)]) : QString();
  setAccessibleDescription(words);
  viewport()->setToolTip(words);
}

void BoardView::keyPressEvent(QKeyEvent* event) {
  const auto key = static_cast<Qt::Key>(event->key());
  const bool level = key == Qt::Key_Left || key == Qt::Key_Right;
  if (level && event->modifiers() & Qt::ControlModifier) return step_line(key == Qt::Key_Left ? -1 : 1);
  if (level || key == Qt::Key_Up || key == Qt::Key_Down) return step_patch(key);
  if (key == Qt::Key_Plus || key == Qt::Key_Equal) return zoom_in();
  if (key == Qt::Key_Minus) return zoom_out();
  if (key == Qt::Key_0) return fit();
  if (key == Qt::Key_F && has_lines()) {
    held_ = (held_ + 1) % static_cast<int>(cloth()->cloth().fold.lines.size());
    return item_->hold_line(held_);
  }
  if (key == Qt::Key_P && has_lines()) return emit pin_toggled(hold_some_line());
  QGraphicsView::keyPressEvent(event);
}

// The line that is held, or the first one.
int BoardView::hold_some_line() {
  held_ = std::clamp(held_, 0, static_cast<int>(cloth()->cloth().fold.lines.size()) - 1);
  item_->hold_line(held_);
  return held_;
}

void BoardView::step_line(int steps) {
  if (has_lines()) emit line_stepped(hold_some_line(), steps);
}

void BoardView::step_patch(Qt::Key key) {
  if (!cloth() || cloth()->patches.empty()) return;
  const auto centre = [&](int patch) {
    const std::span<const Rect> rects = rects_of(cloth()->patches[ix(patch)], side_);
    return rects.empty() ? QPointF() : scene_rect(rects.front()).center();
  };
  int next = lit() < 0 ? 0 : lit();
  double least = -1;
  for (int i = 0; lit() >= 0 && i < static_cast<int>(cloth()->patches.size()); ++i) {
    const double away = distance(centre(lit()), centre(i), key);
    if (away >= 0 && (least < 0 || away < least)) std::tie(next, least) = std::pair(i, away);
  }
  const QPointF place = centre(next);
  tell(next);
  ensureVisible(QRectF(place, QSizeF(1, 1)), 60, 60);
  emit pointed(next, across_at(place), along_at(place));
}

void BoardView::add_measure_point(const QPointF& scene) {
  if (measure_.size() >= 2) measure_.clear();
  measure_.push_back(scene);
  viewport()->update();
}

QString BoardView::measured() const {
  if (measure_.size() < 2 || !cloth()) return {};
  const QPointF way = measure_[1] - measure_[0];
  const Unit unit = cloth()->job->unit;
  const auto words = [&](double mm) { return length_words(pointed_length(std::abs(mm), unit), unit); };
  return tr("%1 (%2 across, %3 along)").arg(words(std::hypot(way.x(), way.y())), words(way.x()), words(way.y()));
}

void BoardView::drawBackground(QPainter* painter, const QRectF&) {
  const BoardColours& colours = board_colours(dark_);
  painter->save();
  const QRectF top = painter->worldTransform().mapRect(table());
  painter->setWorldTransform(QTransform());
  painter->fillRect(viewport()->rect(), colours.rim);
  if (side_ == Side::folded) {
    const double rim = kTapeWidth + kTapeGap;
    const QRectF whole = top.adjusted(-rim, 0, 0, rim);  // the tapes lie on it
    painter->fillRect(whole.translated(3, 4), colours.shadow);
    painter->fillRect(whole, colours.board);
    painter->setPen(QPen(colours.grain, 1));
    for (double y = top.top() + 13; y < top.bottom(); y += 26) painter->drawLine(QLineF(top.left(), y, top.right(), y));
  }
  painter->restore();
}

void BoardView::drawForeground(QPainter* painter, const QRectF&) {
  painter->save();
  painter->setWorldTransform(QTransform());
  if (cloth()) paint_tapes(*painter);
  if (cloth() && side_ == Side::flat) paint_pins(*painter);
  paint_measure(*painter);
  if (hasFocus()) {
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter->drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
  }
  painter->restore();
}

void BoardView::paint_tapes(QPainter& painter) const {
  const QTransform to_screen = viewportTransform();
  const QRectF top = to_screen.mapRect(table()), view = viewport()->rect();
  QFont small = font();
  small.setPointSizeF(std::max(7.0, small.pointSizeF() * 0.85));
  painter.setFont(small);
  paint_tape_across(painter, to_screen, top, view, cloth()->job->unit);
  paint_tape_along(painter, to_screen, top, view, cloth()->job->unit);
}

void BoardView::paint_pins(QPainter& painter) const {
  const BoardColours& colours = board_colours(dark_);
  const QTransform to_screen = viewportTransform();
  const QRectF cloth_box = to_screen.mapRect(table()), view = viewport()->rect();
  const auto x_of = [&](Length at) { return to_screen.map(QPointF(at.in_mm(), 0)).x(); };
  const std::vector<Length>& lines = cloth()->cloth().fold.lines;
  for (std::size_t i = 0; i < lines.size() && i < pins_.size(); ++i)
    if (pins_[i])
      paint_pin(painter, {x_of(lines[i]), std::max(cloth_box.top(), view.top()) + 14}, length_words(lines[i], cloth()->job->unit),
                view.right() - 2, colours);
  paint_tick(painter, {x_of(snapped_at_), std::min(cloth_box.bottom() + kTapeGap, view.bottom() - kTapeWidth)}, snap_, colours);
}

void BoardView::paint_measure(QPainter& painter) const {
  if (measure_.empty()) return;
  const BoardColours& colours = board_colours(dark_);
  const QPointF a = mapFromScene(measure_.front());
  const QPointF b = measure_.size() > 1 ? QPointF(mapFromScene(measure_[1]))
                                        : QPointF(viewport()->mapFromGlobal(QCursor::pos()));
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(colours.tag, 4));
  painter.drawLine(a, b);
  painter.setPen(QPen(colours.pointed, 2));
  painter.drawLine(a, b);
  for (const QPointF& end : {a, b}) painter.drawEllipse(end, 4, 4);
  const QString words = measured();
  if (words.isEmpty()) return;
  const QFontMetricsF metrics(painter.font());
  QRectF tag(0, 0, metrics.horizontalAdvance(words) + 14, metrics.height() + 8);
  tag.moveCenter((a + b) / 2 - QPointF(0, 22));
  tag.moveLeft(std::clamp(tag.left(), 2.0, std::max(2.0, viewport()->width() - tag.width() - 2)));
  painter.setPen(QPen(colours.on_tag, 1));
  painter.setBrush(colours.tag);
  painter.drawRoundedRect(tag, 3, 3);
  painter.drawText(tag, Qt::AlignCenter, words);
}

}  // namespace foldyard
