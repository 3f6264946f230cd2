#include "cutting/limited_rows.h"

#include <algorithm>
#include <limits>

#if defined(__x86_64__) && defined(__GNUC__)
#define FOLDYARD_WIDE __attribute__((target("avx2")))
#define FOLDYARD_INLINE inline __attribute__((always_inline))
#else
#define FOLDYARD_WIDE
#define FOLDYARD_INLINE inline
#endif

namespace foldyard::limited {

namespace {

constexpr std::int32_t kLeast = std::numeric_limits<std::int32_t>::min();

// Each loop once; the compiler makes one of it for any processor and one for
// wide registers.
FOLDYARD_INLINE void raise_to_sum_loop(std::int32_t* __restrict to, const std::int32_t* __restrict a,
                                       const std::int32_t* __restrict b, int n) {
  for (int i = 0; i < n; ++i) to[i] = std::max(to[i], a[i] + b[i]);
}

FOLDYARD_INLINE void raise_to_loop(std::int32_t* __restrict to, const std::int32_t* __restrict from,
                                   std::int32_t extra, int n) {
  for (int i = 0; i < n; ++i) to[i] = std::max(to[i], from[i] + extra);
}

FOLDYARD_INLINE std::int32_t most_of_sum_loop(const std::int32_t* a, const std::int32_t* b, int n) {
  std::int32_t most = kLeast;
  for (int i = 0; i < n; ++i) most = std::max(most, a[i] + b[i]);
  return most;
}

FOLDYARD_INLINE std::int32_t most_of_loop(const std::int32_t* a, int n) {
  std::int32_t most = kLeast;
  for (int i = 0; i < n; ++i) most = std::max(most, a[i]);
  return most;
}

FOLDYARD_WIDE void raise_to_sum_wide(std::int32_t* to, const std::int32_t* a, const std::int32_t* b, int n) {
  raise_to_sum_loop(to, a, b, n);
}
FOLDYARD_WIDE void raise_to_wide(std::int32_t* to, const std::int32_t* from, std::int32_t extra, int n) {
  raise_to_loop(to, from, extra, n);
}
FOLDYARD_WIDE std::int32_t most_of_sum_wide(const std::int32_t* a, const std::int32_t* b, int n) {
  return most_of_sum_loop(a, b, n);
}
FOLDYARD_WIDE std::int32_t most_of_wide(const std::int32_t* a, int n) { return most_of_loop(a, n); }

#if defined(__x86_64__) && defined(__GNUC__)
const bool kIsWide = __builtin_cpu_supports("avx2") > 0;
#else
const bool kIsWide = false;
#endif

}  // namespace

void raise_to_sum(std::int32_t* to, const std::int32_t* a, const std::int32_t* b, int n) {
  kIsWide ? raise_to_sum_wide(to, a, b, n) : raise_to_sum_loop(to, a, b, n);
}

void raise_to(std::int32_t* to, const std::int32_t* from, std::int32_t extra, int n) {
  kIsWide ? raise_to_wide(to, from, extra, n) : raise_to_loop(to, from, extra, n);
}

std::int32_t most_of_sum(const std::int32_t* a, const std::int32_t* b, int n) {
  return kIsWide ? most_of_sum_wide(a, b, n) : most_of_sum_loop(a, b, n);
}

std::int32_t most_of(const std::int32_t* a, int n) {
  return kIsWide ? most_of_wide(a, n) : most_of_loop(a, n);
}

}  // namespace foldyard::limited
