#include "cutting/row_ops.h"

// Where the compiler can, each loop is made twice and the machine takes the one
// for its width of registers; both give the same numbers.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && !defined(__SANITIZE_ADDRESS__)
#define FOLDYARD_BY_MACHINE __attribute__((target_clones("avx2", "default")))
#else
#define FOLDYARD_BY_MACHINE
#endif

namespace foldyard::rows {

namespace {

using Row = std::int64_t* __restrict;
using From = const std::int64_t* __restrict;

}  // namespace

FOLDYARD_BY_MACHINE
void raise_to(Row to, From a, std::int64_t more, int n) {
  for (int i = 0; i < n; ++i) {
    const std::int64_t sum = a[i] + more;
    to[i] = sum > to[i] ? sum : to[i];
  }
}

FOLDYARD_BY_MACHINE
void raise_to_sum(Row to, From a, From b, From c, int n) {
  for (int i = 0; i < n; ++i) {
    const std::int64_t sum = a[i] + b[i] + c[i];
    to[i] = sum > to[i] ? sum : to[i];
  }
}

FOLDYARD_BY_MACHINE
void raise_to_sums(Row to, const Sum<std::int64_t>* sums, int count, int n) {
  int s = 0;
  for (; s + 4 <= count; s += 4) {
    const From a0 = sums[s].a, b0 = sums[s].b, a1 = sums[s + 1].a, b1 = sums[s + 1].b;
    const From a2 = sums[s + 2].a, b2 = sums[s + 2].b, a3 = sums[s + 3].a, b3 = sums[s + 3].b;
    const std::int64_t m0 = sums[s].more, m1 = sums[s + 1].more, m2 = sums[s + 2].more, m3 = sums[s + 3].more;
    for (int i = 0; i < n; ++i) {
      const std::int64_t s0 = a0[i] + b0[i] + m0, s1 = a1[i] + b1[i] + m1;
      const std::int64_t s2 = a2[i] + b2[i] + m2, s3 = a3[i] + b3[i] + m3;
      const std::int64_t t0 = s0 > s1 ? s0 : s1, t1 = s2 > s3 ? s2 : s3;
      const std::int64_t best = t0 > t1 ? t0 : t1;
      to[i] = best > to[i] ? best : to[i];
    }
  }
  for (; s < count; ++s) {
    const From a = sums[s].a, b = sums[s].b;
    const std::int64_t more = sums[s].more;
    for (int i = 0; i < n; ++i) {
      const std::int64_t sum = a[i] + b[i] + more;
      to[i] = sum > to[i] ? sum : to[i];
    }
  }
}

}  // namespace foldyard::rows
