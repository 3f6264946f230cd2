#pragma once

// How long a roll is that nobody has unrolled, as a range.
//
//   ByDiameters  L = π (D² − d²) / (4 t)              the ring of cloth, t thick
//   ByTurns      L = π n (D + d) / 2                  n turns of the mean girth
//   ByWeight     L = (roll − tube) / (g per m² × width)
//
// Every figure may be off by its give, so the length lies between those of the
// two worst corners of that box: each formula only rises or only falls with each
// figure. least is rounded down to a whole unit, most up, with π between two
// fractions of 18 decimals; likely is the length for the figures as given, to
// the nearest unit. No true diameter, count or weight is below zero, so a give
// may reach under zero where zero is no contradiction (a tube).
//
// Refused, `where` naming the field as in a job file (outer, tube, thickness,
// turns, roll, per_square_metre): a figure or give below zero or beyond what can
// be counted; what is zero or, with its give, could be: thickness, turns, grams
// per square metre; a tube that is, or could be, as wide or as heavy as its
// roll; a length that could be over kLongest.
//
// How true the ring is: cloth wound as a spiral of Archimedes is longer than the
// formula by less than t ln(D/d) / 4π, far less than one thickness. But a spiral
// is not round: a calliper across it reads up to 1.5 t off the mean diameter,
// more or less as the free end lies. So an outer diameter deserves a give of at
// least 1.5 t. The same give covers ByTurns.
//
// Example: D 220 mm, d 50 mm, t 1.0 mm: 36.050 m. With gives of 5, 1 and
// 0.1 mm: 31.1 to 42.1 m.
// Sources: formulas by diameters and turns: Math Forum, "Ask Dr. Math", 24 Nov
// 2003, mathforum.org/library/drmath/view/67031.html; by weight:
// sayid.net/basic_paper_calculations.php. The bounds are our own.

#include "cloth/roll_measure.h"
#include "measure/length.h"
#include "measure/result.h"

namespace foldyard {

struct LengthEstimate {
  Length least;
  Length likely;
  Length most;
  bool operator==(const LengthEstimate&) const = default;
};

// width: of the cloth, selvedge to selvedge; only ByWeight looks at it.
// REQUIRES 0 < width ≤ kLongest.
Result<LengthEstimate> estimate(const RollMeasure& measure, Length width);

// A roll that was of known length when it was full, by diameters alone:
// L = L0 (D² − d²) / (D0² − d²). No thickness is needed.
// Refused as above; also where the roll is, or could be, larger than when full.
//
// Example: 520 m on 260 mm, tube 83 mm, now 200 mm: 283.601 m.
// Source: a sample output of briandunning.com/cf/2523.
Result<LengthEstimate> estimate_of_rest(MeasuredLength full_length, MeasuredLength full_outer,
                                        MeasuredLength outer, MeasuredLength tube);

}  // namespace foldyard
