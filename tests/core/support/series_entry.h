#pragma once

// Entries of a series of lengths, in bare units.

#include "batch/series.h"

namespace foldyard::test {

inline SeriesEntry entry(int size, std::int64_t gain, std::int64_t cost = 0) {
  return {Length::units(size), gain, cost};
}

}  // namespace foldyard::test
