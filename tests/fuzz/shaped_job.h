#pragma once

// A legal job of one small roll, chosen by bytes: where they end, zeros follow.
// Kept small, so that thousands can be planned: sizes in steps of 5 mm, at most
// three panels and 4 m of cloth.

#include <cstddef>
#include <cstdint>

#include "job/job.h"

namespace foldyard::fuzz {

Job shaped_job(const std::uint8_t* bytes, std::size_t size);

}  // namespace foldyard::fuzz
