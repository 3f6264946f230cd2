#pragma once

// What a template of a panel shows, ready to draw.
//
// A template is the panel as it is cut from the roll of the plan, seams, hems
// and shrinkage included, with the roll running up the page (or to the right,
// where the template lies turned). Lines inside it, where the panel is sewn into
// goods with turnings: the seams and hems, as deep as they are in cloth that
// has not shrunk yet.
//
// template_problem: why a panel gets no template on this paper, if it gets none:
// it would take more than kMostTemplatePages.

#include <QMarginsF>
#include <optional>

#include "drawing/sheet.h"
#include "drawing/template_tiles.h"
#include "goods/turnings.h"
#include "measure/result.h"

namespace foldyard {

struct TemplateData {
  int panel = 0;
  Length across, along;  // cut size, along the roll upwards
  Turnings turnings;     // as it lies on the cloth, before shrinking
  TileGrid grid;

  // A place inside the panel, by its distances from the left and the far edge
  // of the cloth, on the template.
  QPointF at(double from_left, double from_far) const;
};

// The room for tiles on this paper.
QSizeF tile_size(Paper paper, bool landscape);

// REQUIRES 0 ≤ panel < job.panels.size().
TemplateData template_data(const Job& job, const Fabric& fabric, int panel, const QSizeF& tile);
std::optional<Problem> template_problem(const Job& job, const Fabric& fabric, int panel,
                                        const SheetOptions& options);
// How many pages the template takes on this paper, its first page included.
std::int64_t template_page_count(const Job& job, const Fabric& fabric, int panel,
                                 const SheetOptions& options);

}  // namespace foldyard
