#pragma once

// Rolls and lengths as they are measured: so many millimetres, give or take.

#include "cloth/roll_measure.h"

namespace foldyard::test {

inline MeasuredLength about(std::int64_t mm, std::int64_t give = 0) { return {Length::mm(mm), Length::mm(give)}; }
inline MeasuredLength exact(Length value) { return {value, Length()}; }

// Outer 22 cm, tube 5 cm, 1 mm thick: about 36 m (length_estimate.h).
inline ByDiameters some_diameters() { return {about(220, 5), about(50, 1), {Length::mm(1), Length::units(32)}}; }
// 85 turns of a mean girth of 424 mm: about 36 m.
inline ByTurns some_turns() { return {{85, 1}, about(220, 5), about(50, 1)}; }
// 18 kg of cloth of 350 g, 1.4 m wide: about 36.7 m.
inline ByWeight some_weight() { return {{19'000, 50}, {1'000, 50}, {3'500, 100}}; }

}  // namespace foldyard::test
