#pragma once

// Lengths and areas as exact whole numbers.
//
// Length counts units of 1/320 mm, so that 0.1 mm (32 units) and 1/64 in
// (127 units) are both whole: 1 mm = 320, 1 in = 8128, 1 yd = 292 608 units.
// Source: 1 yd = 0.9144 m exactly (international yard and pound, 1959).
//
// Length × Length is an Area; a Length never turns into a number, nor a number
// into a Length, by itself. Arithmetic is unchecked: values from a file or a
// person are held to kLongest before they get here (see read_length).
//
// Example: Length::mm(450) + Length::inches64(64) == Length::units(152128).

#include <compare>
#include <cstdint>

namespace foldyard {

class Area;

class Length {
 public:
  static constexpr std::int64_t kUnitsPerMm = 320;
  static constexpr std::int64_t kUnitsPerInch = 8128;
  static constexpr std::int64_t kUnitsPerYard = 292608;

  constexpr Length() = default;
  static constexpr Length units(std::int64_t n) { return Length(n); }
  static constexpr Length mm(std::int64_t n) { return Length(n * kUnitsPerMm); }
  static constexpr Length inches64(std::int64_t n) { return Length(n * 127); }

  constexpr std::int64_t units() const { return units_; }
  constexpr double in_mm() const { return static_cast<double>(units_) / kUnitsPerMm; }
  constexpr bool is_zero() const { return units_ == 0; }
  constexpr bool is_even() const { return units_ % 2 == 0; }

  constexpr auto operator<=>(const Length&) const = default;
  constexpr Length operator-() const { return Length(-units_); }
  constexpr Length& operator+=(Length b) { units_ += b.units_; return *this; }
  constexpr Length& operator-=(Length b) { units_ -= b.units_; return *this; }
  friend constexpr Length operator+(Length a, Length b) { return Length(a.units_ + b.units_); }
  friend constexpr Length operator-(Length a, Length b) { return Length(a.units_ - b.units_); }
  friend constexpr Length operator*(Length a, std::int64_t n) { return Length(a.units_ * n); }
  friend constexpr Length operator*(std::int64_t n, Length a) { return a * n; }
  // Both divisions round towards zero.
  friend constexpr Length operator/(Length a, std::int64_t n) { return Length(a.units_ / n); }
  friend constexpr std::int64_t operator/(Length a, Length b) { return a.units_ / b.units_; }
  friend constexpr Area operator*(Length a, Length b);

 private:
  constexpr explicit Length(std::int64_t n) : units_(n) {}
  std::int64_t units_ = 0;
};

// The longest length a job may hold: 1 km. 1 km × 3 m is 3.1e14 square units.
inline constexpr Length kLongest = Length::mm(1'000'000);

class Area {
 public:
  constexpr Area() = default;
  static constexpr Area square_units(std::int64_t n) { return Area(n); }
  constexpr std::int64_t square_units() const { return square_units_; }
  constexpr double in_square_metres() const {
    return static_cast<double>(square_units_) / (320e3 * 320e3);
  }

  constexpr auto operator<=>(const Area&) const = default;
  constexpr Area& operator+=(Area b) { square_units_ += b.square_units_; return *this; }
  constexpr Area& operator-=(Area b) { square_units_ -= b.square_units_; return *this; }
  friend constexpr Area operator+(Area a, Area b) { return Area(a.square_units_ + b.square_units_); }
  friend constexpr Area operator-(Area a, Area b) { return Area(a.square_units_ - b.square_units_); }
  friend constexpr Area operator*(Area a, std::int64_t n) { return Area(a.square_units_ * n); }
  friend constexpr Area operator*(Length a, Length b) { return Area(a.units() * b.units()); }

 private:
  constexpr explicit Area(std::int64_t n) : square_units_(n) {}
  std::int64_t square_units_ = 0;
};

}  // namespace foldyard
