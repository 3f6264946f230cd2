#pragma once

// Kinds of cloth to start a roll from, each with starting values and what they
// rest on. No roll is like its kind: measure the cloth and put your own
// figures in place of these.
//
// key: for command lines, "velvet". grams: of a square metre, in tenths of a
// gram; 0 where none is commonly named.
//
// Example: "duck-10", cotton duck No. 10: 499.3 g/m², 0.8 mm thick.

#include <string_view>
#include <vector>

#include "cloth/roll.h"

namespace foldyard {

struct ClothKind {
  std::string_view key;
  std::string_view name;
  Fabric fabric;
  std::int64_t grams = 0;
  std::string_view basis;
};

// In alphabetical order of their keys.
const std::vector<ClothKind>& cloth_kinds();
// Null where there is no such kind.
const ClothKind* cloth_kind(std::string_view key);

}  // namespace foldyard
