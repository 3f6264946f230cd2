#pragma once

// sort_unique: what is in the list, ascending, each once.
//
// Example: 3 cm, 1 cm, 3 cm become 1 cm, 3 cm.

#include <algorithm>
#include <vector>

namespace foldyard {

template <typename Value>
void sort_unique(std::vector<Value>& values) {
  std::sort(values.begin(), values.end());
  values.erase(std::unique(values.begin(), values.end()), values.end());
}

}  // namespace foldyard
