#pragma once

// Sums and greatest values of whole rows of 32-bit numbers, in wide registers
// where the processor has them. Internal to the limited search.
//
// The answers do not depend on the processor. Rows that are written must not
// overlap those that are read; sums must stay within 32 bits.
//
// Example: most_of_sum of {1, 5} and {4, 2} is 7.

#include <cstdint>

namespace foldyard::limited {

// to[i] = max(to[i], a[i] + b[i]) for n places.
void raise_to_sum(std::int32_t* to, const std::int32_t* a, const std::int32_t* b, int n);
// to[i] = max(to[i], from[i] + extra) for n places.
void raise_to(std::int32_t* to, const std::int32_t* from, std::int32_t extra, int n);
// The greatest a[i] + b[i], and the greatest a[i]; INT32_MIN of no places.
std::int32_t most_of_sum(const std::int32_t* a, const std::int32_t* b, int n);
std::int32_t most_of(const std::int32_t* a, int n);

}  // namespace foldyard::limited
