#pragma once

// The flat cloth of one length, face up, with the panels of every ply, the
// fold lines, the selvedges, and what is left over.

#include <QMarginsF>

#include "drawing/cloth_frame.h"
#include "drawing/pattern_data.h"

namespace foldyard {

// The room it needs around the cloth at a scale.
QMarginsF flat_margins(const PatternData& data, const Scale& scale);
void draw_flat(QPainter& painter, const ClothFrame& frame, const PatternData& data);

// A panel as every picture shows it: fill, hatch, outline.
void draw_panel_ground(QPainter& painter, const QRectF& rect, int panel);
// Cloth that ends in no panel: hatched in grey, a remnant in the cloth's tone.
void draw_rest_ground(QPainter& painter, const QRectF& rect, RestKind kind, const Fabric& fabric);

}  // namespace foldyard
