#pragma once

// LaidStrips: the strips of one folded length that are cut for panels, from side to side, as
// a cut tree: the slits between them first, then each strip.
//
// Example: a strip of 40 cm from the near rim and one of 30 cm from the far rim of 1 m: a cut
// at 40 cm, one at 70 cm, and what lies between them is left.

#include <functional>
#include <vector>

#include "cutting/tree_builder.h"

namespace foldyard {

class LaidStrips {
 public:
  // Cuts what a node holds; flip: it lies mirrored.
  using Fill = std::function<void(TreeBuilder&, int node, bool flip)>;

  explicit LaidStrips(Length whole) : whole_(whole) {}

  // From the place towards the far rim, or from_far towards the near one, and then flipped.
  // REQUIRES strips from near to far that do not overlap.
  void add(Length from, Length size, bool from_far, Fill fill);
  void mirror();
  CutTree tree(Length height, TreeBuilder builder = TreeBuilder()) const;

 private:
  struct Strip {
    Span span;
    bool flip;
    Fill fill;
  };

  Length whole_;
  std::vector<Strip> strips_;
};

}  // namespace foldyard
