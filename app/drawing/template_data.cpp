#include "drawing/template_data.h"

#include "cutting/shape.h"
#include "drawing/front_page.h"
#include "drawing/words.h"
#include "goods/cut_size.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr double kTileHead = 5.5;

// As the panel's across and along go, which may be the goods' either way round.
Turnings turnings_of_panel(const Panel& panel) {
  if (!panel.sewn) return {};
  const Result<CutSize> size = cut_size(*panel.sewn);
  const Turnings turnings = turnings_of(*panel.sewn);
  const bool as_cut = size && size->across == panel.across && size->along == panel.along;
  return as_cut ? turnings : turned(turnings);
}

Turning before(const Turning& turning, std::int64_t hundredths) {
  return {before_shrinking(turning.depth, hundredths), turning.is_seam};
}

Turnings on_cloth(const Panel& panel, const Fabric& fabric) {
  Turnings lie = turnings_of_panel(panel);
  if (lies_sideways(panel, fabric, false)) lie = turned(lie);
  const Shrinkage& shrinks = fabric.shrinkage;
  return {before(lie.left, shrinks.across), before(lie.right, shrinks.across),
          before(lie.near, shrinks.along), before(lie.far, shrinks.along)};
}

}  // namespace

QPointF TemplateData::at(double from_left, double from_far) const {
  if (!grid.turned) return grid.panel_rect().topLeft() + QPointF(from_left, from_far);
  // Turned to the right: what was up, the far edge, is at the right.
  return grid.panel_rect().topRight() + QPointF(-from_far, from_left);
}

QSizeF tile_size(Paper paper, bool landscape) {
  const QRectF area = text_area(paper_size_mm(paper, landscape));
  return {area.width(), area.height() - kTileHead};
}

TemplateData template_data(const Job& job, const Fabric& fabric, int panel, const QSizeF& tile) {
  const Panel& kind = job.panels[ix(panel)];
  const SizeOnCloth cut = size_on_cloth(kind, fabric, false);
  return {panel, cut.across, cut.along, on_cloth(kind, fabric),
          tile_grid(QSizeF(cut.across.in_mm(), cut.along.in_mm()), tile)};
}

std::int64_t template_page_count(const Job& job, const Fabric& fabric, int panel,
                                 const SheetOptions& options) {
  return template_data(job, fabric, panel, tile_size(options.paper, options.landscape))
      .grid.pages();
}

std::optional<Problem> template_problem(const Job& job, const Fabric& fabric, int panel,
                                        const SheetOptions& options) {
  const std::int64_t pages = template_page_count(job, fabric, panel, options);
  if (pages <= kMostTemplatePages) return {};
  return Problem{"",
                 say("a template of %1 takes %2 pages of %3, and %4 is the most",
                     job.panels[ix(panel)].name, pages,
                     paper_name(options.paper).toStdString(), kMostTemplatePages),
                 say("take larger paper, or leave this template out")};
}

}  // namespace foldyard
