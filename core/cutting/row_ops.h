#pragma once

// The inner loops of the tables, over rows of values. Internal to the tables.
// Rows do not overlap.

#include <algorithm>
#include <cstdint>

#include "measure/wide.h"

namespace foldyard::rows {

// Two rows to be added up, with a number on top.
template <class V>
struct Sum {
  const V* a;
  const V* b;
  V more;
};

// to[i] = max(to[i], a[i] + more)
void raise_to(std::int64_t* to, const std::int64_t* a, std::int64_t more, int n);
// to[i] = max(to[i], a[i] + b[i] + c[i]), with any of them
void raise_to_sum(std::int64_t* to, const std::int64_t* a, const std::int64_t* b, const std::int64_t* c,
                  int n);
// to[i] = max(to[i], the sums' i-th)
void raise_to_sums(std::int64_t* to, const Sum<std::int64_t>* sums, int count, int n);

// The same for values that need 128 bits.
inline void raise_to(Wide* to, const Wide* a, Wide more, int n) {
  for (int i = 0; i < n; ++i) to[i] = std::max(to[i], a[i] + more);
}
inline void raise_to_sum(Wide* to, const Wide* a, const Wide* b, const Wide* c, int n) {
  for (int i = 0; i < n; ++i) to[i] = std::max(to[i], a[i] + b[i] + c[i]);
}
inline void raise_to_sums(Wide* to, const Sum<Wide>* sums, int count, int n) {
  for (int s = 0; s < count; ++s)
    for (int i = 0; i < n; ++i) to[i] = std::max(to[i], sums[s].a[i] + sums[s].b[i] + sums[s].more);
}

}  // namespace foldyard::rows
