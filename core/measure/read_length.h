#pragma once

// Reads a length as people write it, exactly.
//
// Accepted, with or without spaces between number and unit, and with the unit
// in any of its spellings:
//   45 cm · 450mm · 1.5 m · 17 3/4 in · 18" · 1 1/2 yd · 2'6" · 2 ft 6 in · ½ yd
//   1 yd 18 in
// Units: mm, cm, m; in, inch, inches, "; ft, foot, feet, '; yd, yard, yards;
// capitals and typeset marks (″ ′ ” ’) count as the same. Fractions: a/b, and
// the signs for halves, thirds, quarters and eighths.
// A decimal comma is read as a point ("1,5 m") as long as one separator stands
// in the number; "1,234.5" and "1,234 mm"-like thousands groups are refused as
// ambiguous (exactly three digits after a comma).
//
// Refused, with the reason: no unit ("45"), a sign, exponents, nan, more than
// one number that does not add up to one (the pairs are whole feet or yards,
// then inches that make less than one more), a length that is not a whole
// number of 1/320 mm (0.01 mm, 1/5 in, 1/128 in), a length over kLongest. Zero
// is read: whether zero makes sense is for the field to say.
//
// Example: read_length("17 3/4 in").value() == Length::inches64(1136).

#include <string_view>

#include "measure/length.h"
#include "measure/result.h"

namespace foldyard {

Result<Length> read_length(std::string_view text);

}  // namespace foldyard
