#pragma once

// ix: a number that counts from 0 (of a roll, a panel, a lay) as the index of a vector.
//
// REQUIRES i >= 0.
//
// Example: job.rolls[ix(plan.roll)].

#include <cstddef>
#include <cstdint>

namespace foldyard {

constexpr std::size_t ix(std::int64_t i) { return static_cast<std::size_t>(i); }

}  // namespace foldyard
