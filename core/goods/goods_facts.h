#pragma once

// What a maker needs to know of goods beside their sizes: the box they become,
// where corners and handles go, the webbing.
//
// box_units: width × depth × height in cubic units of Length (1/320 mm); 0 for
// goods without depth. Up to 10 m × 10 m × 1 km it fits 128 bits with room.
//
// Example: a bag 15 × 4 in and 14 in high: 840 cubic inches, 13.77 litres.
// Source: 1 litre = 1 dm³ exactly (SI brochure, 9th edition, table 8).

#include <cstdint>
#include <vector>

#include "goods/sewn.h"
#include "measure/wide.h"

namespace foldyard {

Wide box_units(const Goods& goods);
// In hundredths of a litre, rounded to the nearest, halves up.
std::int64_t centilitres(const Goods& goods);

// From the tip of a flattened bottom corner to the line stitched across it:
// half the depth. 0 where no corner is boxed.
Length corner_line(const Goods& goods);
// The side of the square that is cut out instead, measured from the raw edges
// of a seam: half the depth and the seam.
Length corner_square(const Goods& goods);

// Where handles sit: the quarter points of the body's width, from its left raw
// edge; of a wrap-round bag those of each face, between the seam lines. None
// without handles. Rounded down to a whole unit.
// Example: a panel 18 in wide: at 4 1/2 and 13 1/2 in.
std::vector<Length> handle_marks(const Goods& goods);

// Webbing for one piece: handles times their length.
Length webbing(const Goods& goods);

// The length to cut a handle that hangs `drop` above the bag's edge, with
// `over` for the hand or the shoulder and `fixed` sewn down at each end.
// Example: drop 8 in, 2 in over the shoulder, 1 in at each end: 20 in.
Length handle_for_drop(Length drop, Length over, Length fixed);

}  // namespace foldyard
