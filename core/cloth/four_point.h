#pragma once

// Four-point grading of a roll by its flaws, to judge it before it is bought.
//
// Points for a flaw by its longer side: up to 3 in 1, up to 6 in 2, up to 9 in
// 3, over 9 in 4; a hole (its kind says "hole", in whatever case) up to 1 in 2,
// over 1 in 4. No yard of the roll counts more than 4. A flaw counts in the
// yard in which it begins; one longer than 9 in counts 4 in every yard that it
// runs through. The grade is the points per 100 square yards of the whole
// width. Counted in metric: 75, 150, 230 and 25 mm, by the metre, per 100 square
// metres.
//
// Source: the scale of ASTM D5430 (its text not seen), as given by
// garmentstech.com, apparelscience.com and jozwiak.eu. Up to 40 points per 100
// square yards usually count as first quality (scribd.com/document/731386482).
//
// REQUIRES length and width > 0.
//
// Example: 28 points on 150 yd × 56 in: 28 × 3600 / (150 × 56) = 12.00.

#include <cstdint>

#include "cloth/roll.h"

namespace foldyard {

enum class PointUnit { yard, metre };

struct FourPointGrade {
  std::int64_t points = 0;
  std::int64_t hundredths = 0;  // of a point per 100 square units, to nearest
  bool operator==(const FourPointGrade&) const = default;
};

std::int64_t points_of(const Flaw& flaw, PointUnit unit);
FourPointGrade four_point_grade(const Roll& roll, PointUnit unit);

}  // namespace foldyard
