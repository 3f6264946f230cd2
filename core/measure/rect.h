#pragma once

// Span: from one place to a later one along a line. Rect: a span across times
// a span along. Both are half-open in meaning: two that only touch do not
// overlap. A span with from == to is empty.

#include "measure/length.h"

namespace foldyard {

struct Span {
  Length from;
  Length to;

  constexpr Length size() const { return to - from; }
  constexpr bool is_empty() const { return to <= from; }
  constexpr bool covers(Span inner) const { return from <= inner.from && inner.to <= to; }
  constexpr bool overlaps(Span other) const { return from < other.to && other.from < to; }
  constexpr auto operator<=>(const Span&) const = default;
};

constexpr Span intersection(Span a, Span b) {
  return {a.from < b.from ? b.from : a.from, a.to < b.to ? a.to : b.to};
}

// On flat cloth `across` is x, from the left selvedge, and `along` is y, from
// the free end. On folded cloth they are u and v.
struct Rect {
  Span across;
  Span along;

  constexpr Area area() const { return across.size() * along.size(); }
  constexpr bool is_empty() const { return across.is_empty() || along.is_empty(); }
  constexpr bool covers(const Rect& inner) const {
    return across.covers(inner.across) && along.covers(inner.along);
  }
  constexpr bool overlaps(const Rect& other) const {
    return across.overlaps(other.across) && along.overlaps(other.along);
  }
  constexpr auto operator<=>(const Rect&) const = default;
};

}  // namespace foldyard
