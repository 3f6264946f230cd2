#pragma once

// The best cutting with limited copies by trying every cut at every whole unit
// and every way to share the copies out: the slow and obvious check of the
// limited search. Sizes are units of length; REQUIRES them tiny.

#include <algorithm>
#include <cstdint>
#include <vector>

#include "cutting/limited_problem.h"

namespace foldyard::test {

class LimitedWitness {
 public:
  explicit LimitedWitness(const LimitedProblem& problem)
      : problem_(problem), width_(units(problem.width)), height_(units(problem.height)) {
    for (const std::int64_t limit : problem.limits) {
      steps_.push_back(codes_);
      codes_ *= limit + 1;
    }
    for (std::int64_t code = 0; code < codes_; ++code) shares_.push_back(shares_of(code));
    known_.assign(static_cast<std::size_t>((width_ + 1) * (height_ + 1) * 2 * codes_), -1);
  }

  std::int64_t best() { return best(width_, height_, problem_.joint, codes_ - 1); }

 private:
  static std::int64_t units(Length length) { return length.units(); }

  // Of each panel, the copies that a code stands for.
  std::int64_t copies(std::int64_t code, std::size_t panel) const {
    return code / steps_[panel] % (problem_.limits[panel] + 1);
  }

  // Every code that has no more of any panel.
  std::vector<std::int64_t> shares_of(std::int64_t code) const {
    std::vector<std::int64_t> shares;
    for (std::int64_t share = 0; share <= code; ++share) {
      bool fits = true;
      for (std::size_t p = 0; p < steps_.size(); ++p)
        fits = fits && copies(share, p) <= copies(code, p);
      if (fits) shares.push_back(share);
    }
    return shares;
  }

  std::int64_t best(std::int64_t w, std::int64_t h, bool joint, std::int64_t code) {
    const std::int64_t at = ((w * (height_ + 1) + h) * 2 + joint) * codes_ + code;
    if (known_[static_cast<std::size_t>(at)] >= 0) return known_[static_cast<std::size_t>(at)];
    std::int64_t most = taken(w, h, joint, code);
    const std::int64_t nearest = joint ? std::max<std::int64_t>(units(problem_.fold_trim), 1) : 1;
    for (const std::int64_t share : shares_[static_cast<std::size_t>(code)]) {
      for (std::int64_t u = nearest; u < w; ++u)
        most = std::max(most, best(u, h, joint, share) + best(w - u, h, false, code - share));
      for (std::int64_t v = 1; v < h; ++v)
        most = std::max(most, best(w, v, joint, share) + best(w, h - v, joint, code - share));
    }
    return known_[static_cast<std::size_t>(at)] = most;
  }

  std::int64_t taken(std::int64_t w, std::int64_t h, bool joint, std::int64_t code) const {
    std::int64_t most = 0;
    for (const LimitedShape& s : problem_.shapes)
      if (units(s.across) == w && units(s.along) == h && s.at_joint == joint &&
          copies(code, static_cast<std::size_t>(s.panel)) >= s.uses)
        most = std::max(most, s.gain);
    return most;
  }

  const LimitedProblem& problem_;
  std::int64_t width_, height_;
  std::int64_t codes_ = 1;
  std::vector<std::int64_t> steps_;                // what one copy adds to a code
  std::vector<std::vector<std::int64_t>> shares_;  // by code
  std::vector<std::int64_t> known_;
};

}  // namespace foldyard::test
