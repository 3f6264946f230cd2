#pragma once

// Marks for flaws, and for panels lost to them, on every picture of cloth.
//
// A flaw is a white field, crosshatched in ink, with a heavy outline: never
// smaller than kLeastFlaw, however small it is to scale, so that it is told
// from a panel's hatch without any colour. Its words stand beside it on paper
// ground, inside `room`. A lost panel is crossed out from corner to corner.

#include <QRectF>
#include <QString>
#include <vector>

#include "fold/fold_map.h"

class QPainter;

namespace foldyard {

inline constexpr double kLeastFlaw = 1.5;  // mm of paper

void draw_flaw(QPainter& painter, const QRectF& rect, const QString& words, const QRectF& room);
void draw_lost(QPainter& painter, const QRectF& panel);

// Where a place of the flat cloth lies folded: a rectangle for each ply it is on.
std::vector<Rect> folded_places(const FoldMap& map, const Rect& flat);

}  // namespace foldyard
