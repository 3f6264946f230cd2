#pragma once

// A pattern with so many takes left uncut that it gives no more of any panel
// than it may; and what a pattern gives.

#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

// As a number of copies: as many as are cut.
inline constexpr std::int64_t kNoLimit = std::numeric_limits<std::int64_t>::max();

// By panel: what one length gives; at_most of each panel, or kNoLimit.
std::vector<std::int64_t> copies_in(const Pattern& pattern, std::size_t panels);
std::vector<std::int64_t> limits_of(const Job& job);
bool is_within(const std::vector<std::int64_t>& copies, const std::vector<std::int64_t>& most);

// All plies of a take are cut together, so a take is cut or left as a whole:
// those of the most copies are kept first. Cuts between rests that are all left
// are not made. None where nothing is left to take.
// Example: three takes of two carriers each, five allowed: two takes stay.
std::optional<Pattern> cut_back(const Job& job, const Roll& roll, const Pattern& pattern,
                                const std::vector<std::int64_t>& most);

}  // namespace foldyard
