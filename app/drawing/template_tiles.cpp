#include "drawing/template_tiles.h"

#include <algorithm>
#include <cmath>

namespace foldyard {

namespace {

constexpr double kShortJoin = 60;

std::int64_t tiles_along(double whole, double tile) {
  const double steps = (whole - kOverlap) / (tile - kOverlap);
  return std::max<std::int64_t>(1, static_cast<std::int64_t>(std::ceil(steps - 1e-9)));
}

TileGrid laid(const QSizeF& panel, const QSizeF& tile, bool turned) {
  TileGrid grid{turned ? panel.transposed() : panel, tile, turned};
  grid.columns = tiles_along(grid.whole().width(), tile.width());
  grid.rows = tiles_along(grid.whole().height(), tile.height());
  return grid;
}

std::vector<double> places_on(double from, double to) {
  const double length = to - from;
  if (length < kShortJoin) return {from + length / 2};
  return {from + length / 4, from + length * 3 / 4};
}

// The marks between two tiles that lap over in `strip`.
void add_join(std::vector<MatchMark>& marks, int& joins, const QRectF& strip, bool beside) {
  const QString join = QString::number(++joins);
  char16_t letter = u'a';
  const QPointF middle = strip.center();
  for (double place : beside ? places_on(strip.top(), strip.bottom())
                             : places_on(strip.left(), strip.right()))
    marks.push_back({beside ? QPointF(middle.x(), place) : QPointF(place, middle.y()),
                     join + QChar(letter++), beside});
}

}  // namespace

QRectF TileGrid::tile_rect(int row, int column) const {
  return {column * (tile.width() - kOverlap), row * (tile.height() - kOverlap), tile.width(),
          tile.height()};
}

TileGrid tile_grid(const QSizeF& panel, const QSizeF& tile) {
  const TileGrid upright = laid(panel, tile, false), turned = laid(panel, tile, true);
  return turned.tiles() < upright.tiles() ? turned : upright;
}

std::vector<MatchMark> match_marks(const TileGrid& grid) {
  std::vector<MatchMark> marks;
  int joins = 0;
  const auto shared = [&](const QRectF& a, const QRectF& b) {
    return a.intersected(b).intersected(grid.whole());
  };
  for (int row = 0; row < grid.rows; ++row)
    for (int column = 0; column < grid.columns; ++column) {
      const QRectF tile = grid.tile_rect(row, column);
      if (column + 1 < grid.columns)
        add_join(marks, joins, shared(tile, grid.tile_rect(row, column + 1)), true);
      if (row + 1 < grid.rows)
        add_join(marks, joins, shared(tile, grid.tile_rect(row + 1, column)), false);
    }
  return marks;
}

}  // namespace foldyard
