#pragma once

// What else goes into goods besides cloth and webbing: thread and labels.
//
// Thread: a seam takes `thread_tenths` tenths of its length in thread; it comes on
// reels. What is bought is whole reels and single labels.

#include <cstdint>

#include "measure/length.h"
#include "measure/worth.h"

namespace foldyard {

struct Notions {
  std::int64_t thread_tenths = 0;
  Length reel;
  Worth reel_price;
  Worth label_price;
  bool operator==(const Notions&) const = default;
};

}  // namespace foldyard
