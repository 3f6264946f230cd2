#include "measure/write_length.h"

#include <cstdint>
#include <numeric>

namespace foldyard {
namespace {

constexpr std::int64_t kUnitsPerTenth = Length::kUnitsPerMm / 10;
constexpr std::int64_t kUnitsPer64th = Length::kUnitsPerInch / 64;

// REQUIRES n ≥ 0.
std::int64_t nearest(std::int64_t n, std::int64_t step) { return (2 * n + step) / (2 * step); }

// n / 10^decimals, with a point and no trailing zeros. REQUIRES n ≥ 0.
std::string decimal(std::int64_t n, std::size_t decimals) {
  std::string digits = std::to_string(n);
  if (digits.size() <= decimals) digits.insert(0, decimals + 1 - digits.size(), '0');
  digits.insert(digits.size() - decimals, 1, '.');
  digits.erase(digits.find_last_not_of('0') + 1);
  if (digits.back() == '.') digits.pop_back();
  return digits;
}

std::string fraction_of_64(std::int64_t n) {
  const std::int64_t common = std::gcd(n, std::int64_t{64});
  return std::to_string(n / common) + "/" + std::to_string(64 / common);
}

std::string inches(std::int64_t sixty_fourths) {
  const std::int64_t whole = sixty_fourths / 64, rest = sixty_fourths % 64;
  if (rest == 0) return std::to_string(whole);
  return (whole > 0 ? std::to_string(whole) + " " : "") + fraction_of_64(rest);
}

std::string yards_and_inches(std::int64_t sixty_fourths) {
  constexpr std::int64_t kYard = 36 * 64;
  const std::int64_t yards = sixty_fourths / kYard, rest = sixty_fourths % kYard;
  if (rest == 0) return std::to_string(yards) + " yd";
  return (yards > 0 ? std::to_string(yards) + " yd " : "") + inches(rest) + " in";
}

// REQUIRES n ≥ 0, a count of units.
std::string number_of(std::int64_t n, Unit unit) {
  switch (unit) {
    case Unit::mm: return decimal(nearest(n, kUnitsPerTenth), 1);
    case Unit::cm: return decimal(nearest(n, kUnitsPerTenth), 2);
    case Unit::m: return decimal(nearest(n, kUnitsPerTenth), 4);
    case Unit::inch: return inches(nearest(n, kUnitsPer64th));
    case Unit::yard: return decimal(nearest(n * 10000, Length::kUnitsPerYard), 4);
  }
  return {};
}

// REQUIRES n ≥ 0, a count of units.
std::string text_of(std::int64_t n, Unit unit) {
  if (unit == Unit::yard) return yards_and_inches(nearest(n, kUnitsPer64th));
  return number_of(n, unit) + " " + unit_name(unit);
}

std::string signed_text(Length length, Unit unit, std::string (*write)(std::int64_t, Unit)) {
  if (length >= Length()) return write(length.units(), unit);
  const std::string text = write(-length.units(), unit);
  // What rounds to nothing has no sign.
  return text == write(0, unit) ? text : "-" + text;
}

}  // namespace

std::string write_length(Length length, Unit unit) { return signed_text(length, unit, text_of); }

std::string write_number(Length length, Unit unit) { return signed_text(length, unit, number_of); }

std::string write_exact(Length length, Unit preferred) {
  if (length < Length() || length > kLongest) return {};
  const bool in_tenths = length.units() % kUnitsPerTenth == 0;
  const bool in_64ths = length.units() % kUnitsPer64th == 0;
  if (is_imperial(preferred) ? in_64ths : in_tenths) return write_length(length, preferred);
  if (in_64ths) return write_length(length, Unit::inch);
  // One unit is 0.003125 mm.
  return decimal(length.units() * 3125, 6) + " mm";
}

std::string unit_name(Unit unit) {
  switch (unit) {
    case Unit::mm: return "mm";
    case Unit::cm: return "cm";
    case Unit::m: return "m";
    case Unit::inch: return "in";
    case Unit::yard: return "yd";
  }
  return {};
}

}  // namespace foldyard
