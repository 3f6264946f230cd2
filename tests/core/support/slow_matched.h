#pragma once

// One rectangle of cloth with a repeat, cut edge to edge at every whole unit: the
// slow and obvious check of matched tables. Sizes are small whole numbers.
//
// A rectangle begins at a phase on each axis, or at none (kLost). forgets: beyond a
// cut at a phase that no panel needs and the cloth did not begin with, the phase is
// lost; else every phase is known, and the rectangle is cut as well as can be.

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>
#include <vector>

namespace foldyard::test {

inline constexpr int kLost = -1;

struct SlowMatchedShape {
  int across = 0, along = 0;
  int phase_across = kLost, phase_along = kLost;  // kLost: needs none
  std::int64_t gain = 0;
};

struct SlowRepeat {
  int repeat = 0;  // 0: none
  std::vector<int> kept;

  int beyond(int phase, int at, bool forgets) const {
    if (repeat == 0 || phase == kLost) return kLost;
    const int there = (phase + at) % repeat;
    const bool known = !forgets || std::find(kept.begin(), kept.end(), there) != kept.end();
    return known ? there : kLost;
  }
};

class SlowMatched {
 public:
  SlowMatched(std::vector<SlowMatchedShape> shapes, SlowRepeat across, SlowRepeat along, bool forgets)
      : shapes_(std::move(shapes)), across_(std::move(across)), along_(std::move(along)),
        forgets_(forgets) {}

  std::int64_t best(int phase_x, int width, int phase_y, int height) {
    const std::array<int, 4> key{phase_x, width, phase_y, height};
    const auto found = known_.find(key);
    if (found != known_.end()) return found->second;
    std::int64_t most = taken(phase_x, width, phase_y, height);
    for (int at = 1; at < width; ++at)
      most = std::max(most, best(phase_x, at, phase_y, height) +
                                best(across_.beyond(phase_x, at, forgets_), width - at, phase_y, height));
    for (int at = 1; at < height; ++at)
      most = std::max(most, best(phase_x, width, phase_y, at) +
                                best(phase_x, width, along_.beyond(phase_y, at, forgets_), height - at));
    return known_[key] = most;
  }

 private:
  std::int64_t taken(int phase_x, int width, int phase_y, int height) const {
    std::int64_t most = 0;
    for (const SlowMatchedShape& s : shapes_)
      if (s.across == width && s.along == height &&
          (s.phase_across == kLost || s.phase_across == phase_x) &&
          (s.phase_along == kLost || s.phase_along == phase_y))
        most = std::max(most, s.gain);
    return most;
  }

  std::vector<SlowMatchedShape> shapes_;
  SlowRepeat across_, along_;
  bool forgets_;
  std::map<std::array<int, 4>, std::int64_t> known_;
};

}  // namespace foldyard::test
