#pragma once

// Writes a length for people, exactly where the unit can and else rounded to
// the nearest shown step (half a step rounds away from zero).
//
//   mm, cm, m: to 0.1 mm, no trailing zeros ("450 mm", "45.05 cm", "1.5 m")
//   in: whole and fraction in 64ths, lowest terms ("17 3/4 in")
//   yd: whole yards and inches ("1 yd 18 in"); as a number alone, decimal to
//       1/10000 yd ("1.5")
//
// write_exact gives text that read_length reads back to the same length; it
// is used for job files. It keeps to the preferred unit where that unit can be
// exact, else goes to inches or to mm with up to six decimals ("2.05 mm"), so
// that every length a job may hold can be saved. Below zero or over kLongest it
// gives an empty text.
//
// Example: write_length(Length::mm(451), Unit::cm) == "45.1 cm".

#include <string>

#include "measure/length.h"

namespace foldyard {

enum class Unit { mm, cm, m, inch, yard };

// Of inches, else of metres.
constexpr bool is_imperial(Unit unit) { return unit == Unit::inch || unit == Unit::yard; }

std::string write_length(Length length, Unit unit);
// The number alone, for a table or a tape whose heading names the unit.
std::string write_number(Length length, Unit unit);
std::string write_exact(Length length, Unit preferred);
std::string unit_name(Unit unit);

}  // namespace foldyard
