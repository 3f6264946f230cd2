#pragma once

// Decimal numbers in text, kept exact as a whole number of the last place.
//
// read_decimal("7.5", 4) is 75000: digits, at most one point, at most `places`
// digits behind it and nine before it. No sign, no exponent, no comma, no
// space; anything else gives nothing. write_decimal is its inverse and leaves
// trailing zeros out: write_decimal(75000, 4) == "7.5".

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace foldyard {

std::optional<std::int64_t> read_decimal(std::string_view text, int places);
// REQUIRES value ≥ 0.
std::string write_decimal(std::int64_t value, int places);

}  // namespace foldyard
