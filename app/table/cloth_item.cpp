#include "table/cloth_item.h"

#include <QPainter>
#include <QStyleOptionGraphicsItem>

#include <algorithm>
#include <cmath>

#include "drawing/words.h"
#include "language/tr.h"
#include "measure/index.h"
#include "table/board_colours.h"

namespace foldyard {
namespace {

ClothLook look_of(const LaidCloth& cloth, bool dark) {
  const QColor colour = cloth_colour(cloth.fabric().colour);
  return {colour, chalk_on(colour), dark};
}

QLineF line_at(const QTransform& to_screen, Length across, Length along) {
  const double x = across.in_mm();
  return to_screen.map(QLineF(x, 0, x, -along.in_mm()));
}

bool is_remnant(const LaidCloth& cloth, const Rect& rect) {
  return rect.across.size() >= cloth.job->losses.keep_across && rect.along.size() >= cloth.job->losses.keep_along;
}

// Another ply lies over this end of the leg.
bool is_covered(const AxisMap& axis, const Leg& leg, Length at) {
  return std::any_of(axis.legs().begin(), axis.legs().end(), [&](const Leg& other) {
    return other.level > leg.level && other.folded.from < at && at < other.folded.to;
  });
}

// Where a selvedge lies on the folded cloth; empty where it is out of sight.
Span folded_selvedge(const AxisMap& axis, Span flat) {
  const Leg& leg = flat.from.is_zero() ? axis.legs().front() : axis.legs().back();
  const Length a = axis.fold(flat.from), b = axis.fold(flat.to);
  const Span lies{std::min(a, b), std::max(a, b)};
  return is_covered(axis, leg, flat.from.is_zero() ? a : b) ? Span{} : lies;
}

QString copies_words(const Patch& patch) {
  QString words = QStringLiteral("× %1").arg(patch.copies);
  if (patch.on_fold == 0) return words;
  return patch.on_fold == patch.copies ? tr("%1 on the fold").arg(words)
                                       : tr("%1, %2 on the fold").arg(words).arg(patch.on_fold);
}

}  // namespace

QRectF scene_rect(const Rect& cloth) {
  return QRectF(QPointF(cloth.across.from.in_mm(), -cloth.along.to.in_mm()),
                QPointF(cloth.across.to.in_mm(), -cloth.along.from.in_mm()));
}

Length across_at(const QPointF& scene) { return Length::units(std::llround(scene.x() * 320)); }
Length along_at(const QPointF& scene) { return Length::units(std::llround(-scene.y() * 320)); }

std::span<const Rect> rects_of(const Patch& patch, Side side) {
  return side == Side::folded ? std::span<const Rect>(&patch.folded, 1) : std::span<const Rect>(patch.flats);
}

QString patch_words(const LaidCloth& cloth, const Patch& patch) {
  const Unit unit = cloth.job->unit;
  if (patch.is_rest())
    return (is_remnant(cloth, patch.folded) ? tr("remnant, %1") : tr("offcut, %1"))
        .arg(size_words(patch.folded, unit));
  const Panel& panel = cloth.job->panels[ix(patch.panel)];
  const QString size = patch.flats.empty() ? QString() : size_words(patch.flats.front(), unit);
  return QString::fromStdString(panel.name) + QStringLiteral(", ") + size + QStringLiteral(", ") +
         copies_words(patch);
}

void ClothItem::show(LaidClothPtr cloth) {
  prepareGeometryChange();
  cloth_ = std::move(cloth);
  lit_ = -1;
  update();
}

void ClothItem::light(int patch) {
  if (patch == lit_) return;
  lit_ = patch;
  update();
}

void ClothItem::set_dark(bool dark) {
  dark_ = dark;
  update();
}

void ClothItem::hold_line(int line) {
  held_ = line;
  update();
}

// The shadow and the turned edges stand out a little.
QRectF ClothItem::boundingRect() const {
  if (!cloth_) return {};
  const QRectF cloth = scene_rect(side_ == Side::folded ? cloth_->folded() : cloth_->flat());
  const double rim = 30 + std::max(cloth.width(), cloth.height()) / 50;
  return cloth.adjusted(-rim, -rim, rim, rim);
}

void ClothItem::paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget*) {
  if (!cloth_) return;
  const QTransform to_screen = painter->worldTransform();
  const QRectF cloth = to_screen.mapRect(scene_rect(side_ == Side::folded ? cloth_->folded() : cloth_->flat()));
  painter->save();
  painter->setWorldTransform(QTransform());
  painter->setRenderHint(QPainter::Antialiasing, false);
  paint_shadow(*painter, cloth);
  paint_weave(*painter, cloth, to_screen.mapRect(option->exposedRect), look_of(*cloth_, dark_));
  paint_patches(*painter, to_screen, option->exposedRect);
  paint_selvedges(*painter, to_screen);
  painter->setRenderHint(QPainter::Antialiasing, true);
  paint_edges(*painter, to_screen);
  painter->restore();
}

void ClothItem::paint_patches(QPainter& painter, const QTransform& to_screen, const QRectF& shown) const {
  const ClothLook look = look_of(*cloth_, dark_);
  SmallPatches small;
  for (std::size_t i = 0; i < cloth_->patches.size(); ++i) {
    const Patch& patch = cloth_->patches[i];
    const bool lit = static_cast<int>(i) == lit_;
    for (const Rect& rect : rects_of(patch, side_)) {
      const QRectF place = scene_rect(rect);
      if (!place.intersects(shown)) continue;
      const QRectF box = to_screen.mapRect(place);
      if (lit || !small.takes(box, patch.is_rest())) paint_patch(painter, box, patch, look, lit);
    }
  }
  small.paint(painter, look);
}

void ClothItem::paint_patch(QPainter& painter, const QRectF& box, const Patch& patch, const ClothLook& look,
                            bool lit) const {
  if (patch.is_rest()) {
    const bool remnant = is_remnant(*cloth_, patch.folded);
    return paint_rest(painter, box, look, size_words(patch.folded, cloth_->job->unit), remnant, lit);
  }
  if (!has_words(box)) return paint_panel(painter, box, look, patch.panel, {}, lit);
  const Panel& panel = cloth_->job->panels[ix(patch.panel)];
  const QString detail = side_ == Side::folded ? copies_words(patch)
                                               : size_words(patch.flats.front(), cloth_->job->unit);
  paint_panel(painter, box, look, patch.panel, {QString::fromStdString(panel.name), detail}, lit);
}

void ClothItem::paint_edges(QPainter& painter, const QTransform& to_screen) const {
  const ClothLook look = look_of(*cloth_, dark_);
  const Pattern& pattern = cloth_->cloth();
  if (side_ == Side::flat) {
    for (std::size_t i = 0; i < pattern.fold.lines.size(); ++i)
      paint_fold_line(painter, line_at(to_screen, pattern.fold.lines[i], pattern.length), look,
                      static_cast<int>(i) == held_);
    return;
  }
  for (const FoldEdge& edge : cloth_->map.across.edges())
    paint_fold_edge(painter, line_at(to_screen, edge.at, pattern.folded_along),
                    QPointF(edge.cloth_after ? 1 : -1, 0), look);
  for (const FoldEdge& edge : cloth_->map.along.edges()) {
    const double y = -edge.at.in_mm();
    paint_fold_edge(painter, to_screen.map(QLineF(0, y, pattern.folded_across.in_mm(), y)),
                    QPointF(0, edge.cloth_after ? -1 : 1), look);
  }
}

void ClothItem::paint_selvedges(QPainter& painter, const QTransform& to_screen) const {
  const Length selvedge = cloth_->fabric().selvedge, width = cloth_->fabric().width;
  for (const Span flat : {Span{Length(), selvedge}, Span{width - selvedge, width}}) {
    if (flat.is_empty()) continue;
    const Span shown = side_ == Side::flat ? flat : folded_selvedge(cloth_->map.across, flat);
    if (shown.is_empty()) continue;
    const Length along = side_ == Side::folded ? cloth_->cloth().folded_along : cloth_->cloth().length;
    paint_selvedge(painter, to_screen.mapRect(scene_rect({shown, {Length(), along}})),
                   look_of(*cloth_, dark_));
  }
}

}  // namespace foldyard
