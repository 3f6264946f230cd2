#pragma once

// The drawings on a screen, fitted to an area in the painter's own unit.
//
// The painter may be at any scale: strokes and words keep their size on the
// device (a stroke of 0.25 mm is 1 pixel at 96 dots an inch), and the cloth is
// fitted to the area. The ground is painted as white paper, also where the
// window is dark. An area too small to hold anything stays plain paper.
//
// REQUIRES 0 ≤ pattern < plan.patterns.size().

#include <QRectF>

#include "job/job.h"
#include "job/plan.h"

class QPainter;

namespace foldyard {

// Flat cloth, folded cloth and section of one pattern.
void paint_pattern(QPainter& painter, const Job& job, const Plan& plan, int pattern,
                   const QRectF& area);
// The roll with its cross-cuts, broken into as many rows as the area wants.
void paint_roll(QPainter& painter, const Job& job, const Plan& plan, const QRectF& area);
// The folded cloth of the plan's first pattern: panels, cuts, fold edges, no
// words. For a list of plans; nothing but paper if the plan has no pattern.
void paint_thumbnail(QPainter& painter, const Job& job, const Plan& plan, const QRectF& area);

}  // namespace foldyard
