#pragma once

// The sections that foldyard_frames prints, each with its heading.

#include <string>

#include "bench/markdown.h"

namespace foldyard::frames {

inline constexpr const char* kBegin = "<!-- frames: begin -->\n";
inline constexpr const char* kEnd = "<!-- frames: end -->\n";

// Each painting of the cutting table.
std::string frames_section();
// How long the window does not answer while it works.
std::string blocks_section();

}  // namespace foldyard::frames
