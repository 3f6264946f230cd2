#pragma once

// Lengths as they are measured: so many millimetres, give or take.

#include "cloth/roll_measure.h"

namespace foldyard::test {

inline MeasuredLength about(std::int64_t mm, std::int64_t give = 0) { return {Length::mm(mm), Length::mm(give)}; }
inline MeasuredLength exact(Length value) { return {value, Length()}; }

}  // namespace foldyard::test
