#pragma once

// Short ways to write lengths, and the spans and rects of them, as people measure them.

#include <vector>

#include "measure/rect.h"

namespace foldyard::test {

constexpr Length mm(std::int64_t n) { return Length::mm(n); }
constexpr Span mm(std::int64_t from, std::int64_t to) { return {mm(from), mm(to)}; }
constexpr Rect mm_rect(std::int64_t x0, std::int64_t x1, std::int64_t y0, std::int64_t y1) {
  return {mm(x0, x1), mm(y0, y1)};
}
constexpr Length cm(std::int64_t n) { return mm(n * 10); }
constexpr Length tenths(std::int64_t n) { return Length::units(n * 32); }  // of a millimetre

constexpr Length inches(std::int64_t n) { return Length::inches64(n * 64); }
constexpr Length sixteenths(std::int64_t n) { return Length::inches64(n * 4); }  // of an inch

// In bare units, for small cases.
constexpr Length u(std::int64_t n) { return Length::units(n); }
constexpr Span u(std::int64_t from, std::int64_t to) { return {u(from), u(to)}; }
constexpr Rect u_rect(std::int64_t x0, std::int64_t x1, std::int64_t y0, std::int64_t y1) {
  return {u(x0, x1), u(y0, y1)};
}
inline constexpr Length kUnit = u(1);
constexpr int units_of(Length length) { return static_cast<int>(length.units()); }
inline std::vector<Length> lengths(const std::vector<int>& units) {
  std::vector<Length> list;
  for (const int n : units) list.push_back(u(n));
  return list;
}

}  // namespace foldyard::test
