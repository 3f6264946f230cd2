#pragma once

// A length as text that read_length reads back to the same length, whatever
// the length: write_exact where it can (0.1 mm, 1/64 in), else millimetres
// with all their decimals. Lengths may be negative in no file.
//
// Example: exact_length(Length::units(1), Unit::cm) == "0.003125 mm".

#include <string>

#include "measure/write_length.h"

namespace foldyard {

// REQUIRES length ≥ 0.
std::string exact_length(Length length, Unit preferred);

}  // namespace foldyard
