#pragma once

// Published instances of cutting lengths from the fewest rolls, as they stand in
// tests/data/cutting-1d (the format is in tests/data/README.md).

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace foldyard::test {

struct LengthInstance {
  std::int64_t roll = 0;
  std::int64_t fewest = 0;
  std::vector<std::pair<std::int64_t, std::int64_t>> wanted;  // length, how many
};

// Throws std::runtime_error, naming the line, where it cannot be read.
LengthInstance read_length_instance(const std::string& name);

}  // namespace foldyard::test
