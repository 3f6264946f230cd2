#pragma once

// ClothItem: the cloth of one length in a scene whose unit is a millimetre of
// cloth: folded as it lies on the table, or flat as it comes off the roll.
// x runs across from the left edge, y downwards from the near end's opposite:
// a place v along lies at −v, so that the near end is at the bottom.
//
// One item for all panels, so that ten thousand draw in a frame; words and
// outlines go first where they become too small (cloth_strokes.h).

#include <QGraphicsItem>

#include <span>

#include "table/cloth_strokes.h"
#include "table/laid_cloth.h"

namespace foldyard {

enum class Side { folded, flat };

// A place of the cloth in the scene, and back (to the nearest unit).
QRectF scene_rect(const Rect& cloth);
Length across_at(const QPointF& scene);
Length along_at(const QPointF& scene);

// The rectangles that a patch has on this side of the picture, inside the patch.
std::span<const Rect> rects_of(const Patch& patch, Side side);
// "Log carrier, 52 × 96 cm, × 4, 2 on the fold"; "offcut, 31 × 12 cm".
QString patch_words(const LaidCloth& cloth, const Patch& patch);

class ClothItem : public QGraphicsItem {
 public:
  explicit ClothItem(Side side) : side_(side) {}

  void show(LaidClothPtr cloth);
  void light(int patch);
  void set_dark(bool dark);
  // The fold line of the flat cloth that the hand holds; −1: none.
  void hold_line(int line);
  const LaidClothPtr& cloth() const { return cloth_; }
  int lit() const { return lit_; }

  QRectF boundingRect() const override;
  void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

 private:
  void paint_patches(QPainter& painter, const QTransform& to_screen, const QRectF& shown) const;
  void paint_patch(QPainter& painter, const QRectF& box, const Patch& patch, const ClothLook& look, bool lit) const;
  void paint_edges(QPainter& painter, const QTransform& to_screen) const;
  void paint_selvedges(QPainter& painter, const QTransform& to_screen) const;

  Side side_;
  LaidClothPtr cloth_;
  int lit_ = -1;
  int held_ = -1;
  bool dark_ = false;
};

}  // namespace foldyard
