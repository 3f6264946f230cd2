#pragma once

// Builds by the panels they hold: of those with the same panels on the same rim
// only the smallest are worth keeping. Internal to the limited search.

#include <vector>

#include "cutting/limited_builds.h"

namespace foldyard::limited {

class KnownBuilds {
 public:
  KnownBuilds(const Builds& builds, const Counting& counting)
      : builds_(builds), counting_(counting), first_(1 << 10, -1) {}

  // Whether a build kept here has the same panels, no less gain, and the same size
  // or less; else those of which b is that are given up.
  bool has_as_good(const Build& b);
  // Keeps builds[index]. REQUIRES that nothing here is as good.
  void add(int index);
  // Whether builds[index], once kept, was given up.
  bool is_given_up(int index) const { return given_up_[index]; }

 private:
  std::size_t hash(const Build& b) const;
  bool has_same_panels(const Build& a, const Build& b) const;
  // The slot of those with b's panels, or the empty one where they belong.
  std::size_t slot_of(const Build& b) const;
  void grow();

  const Builds& builds_;
  const Counting& counting_;
  std::vector<int> first_;  // by slot: one of those with the same panels, or −1
  std::vector<int> next_;   // by build: another of them, or −1
  std::vector<char> given_up_;
  std::size_t used_ = 0;    // slots
};

}  // namespace foldyard::limited
