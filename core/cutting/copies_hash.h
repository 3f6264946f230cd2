#pragma once

// A hash of packed copies, for tables by number of copies.

#include "cutting/limited_builds.h"

namespace foldyard {

struct CopiesHash {
  std::size_t operator()(const limited::Copies& copies) const {
    std::uint64_t h = 0x9e3779b97f4a7c15;
    for (const std::uint64_t word : copies) {
      h = (h ^ word) * 0xff51afd7ed558ccd;
      h ^= h >> 32;
    }
    return static_cast<std::size_t>(h);
  }
};

}  // namespace foldyard
