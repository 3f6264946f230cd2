#pragma once

// The most gain of an open rectangle with holes, by every cut at every whole
// unit: the slow check of cutting around flaws.

#include <algorithm>
#include <array>
#include <map>
#include <vector>

#include "core/support/slow_rectangle.h"
#include "measure/rect.h"

namespace foldyard::test {

class SlowHoles {
 public:
  SlowHoles(std::vector<SlowShape> shapes, std::vector<Rect> holes)
      : shapes_(std::move(shapes)), holes_(std::move(holes)) {}

  std::int64_t best(int x0, int x1, int y0, int y1) {
    const std::array<int, 4> key{x0, x1, y0, y1};
    const auto known = known_.find(key);
    if (known != known_.end()) return known->second;
    std::int64_t best = taken(x0, x1, y0, y1);
    for (int x = x0 + 1; x < x1; ++x) best = std::max(best, this->best(x0, x, y0, y1) + this->best(x, x1, y0, y1));
    for (int y = y0 + 1; y < y1; ++y) best = std::max(best, this->best(x0, x1, y0, y) + this->best(x0, x1, y, y1));
    return known_[key] = best;
  }

 private:
  std::int64_t taken(int x0, int x1, int y0, int y1) const {
    const Rect rect{{Length::units(x0), Length::units(x1)}, {Length::units(y0), Length::units(y1)}};
    for (const Rect& hole : holes_)
      if (hole.overlaps(rect)) return 0;
    std::int64_t best = 0;
    for (const SlowShape& s : shapes_)
      if (s.across == x1 - x0 && s.along == y1 - y0) best = std::max(best, s.gain);
    return best;
  }

  std::vector<SlowShape> shapes_;
  std::vector<Rect> holes_;
  std::map<std::array<int, 4>, std::int64_t> known_;
};

}  // namespace foldyard::test
