#pragma once

// How a template in full size is laid over pages.
//
// The template is a panel with a rim around it. Tiles of one size cover it row
// by row from its top left corner; each laps over its neighbours by kOverlap.
// It lies upright or turned by a quarter, whichever takes fewer pages; upright
// where that is equal. All sizes are in millimetres.
//
// Match marks stand in the middle of each overlap, so that both pages show the
// same cross at the same place of the template: two for each join, one where
// the join is short.
//
// Properties (tested): the tiles cover the template; a mark lies, with its arms,
// in both tiles that it joins.
//
// Example: a panel of 450 × 900 on tiles of 186 × 260: 3 columns, 4 rows.

#include <QPointF>
#include <QRectF>
#include <QString>
#include <cstdint>
#include <vector>

namespace foldyard {

inline constexpr double kOverlap = 10;
inline constexpr double kRim = 4;
inline constexpr double kMarkArm = 3.5;
inline constexpr std::int64_t kMostTemplatePages = 60;

struct TileGrid {
  QSizeF panel;  // as it lies on the pages
  QSizeF tile;
  bool turned = false;
  std::int64_t columns = 1;
  std::int64_t rows = 1;

  std::int64_t tiles() const { return columns * rows; }
  std::int64_t pages() const { return 1 + tiles(); }  // and the first page
  // On the template, from the top left corner of its rim.
  QRectF whole() const { return {0, 0, panel.width() + 2 * kRim, panel.height() + 2 * kRim}; }
  QRectF panel_rect() const { return {QPointF(kRim, kRim), panel}; }
  QRectF tile_rect(int row, int column) const;
};

struct MatchMark {
  QPointF at;    // on the template
  QString name;  // "3a": the first mark of join 3, like no name of a panel
  bool beside;   // the pages lie side by side, else one above the other
};

// REQUIRES a panel larger than nothing and tiles larger than 2 × kOverlap.
TileGrid tile_grid(const QSizeF& panel, const QSizeF& tile);
std::vector<MatchMark> match_marks(const TileGrid& grid);

}  // namespace foldyard
