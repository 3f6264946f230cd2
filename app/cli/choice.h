#pragma once

// Which rolls and which way of folding a call is about.

#include <vector>

#include "cli/call.h"
#include "job/job.h"

namespace foldyard {

// What is wrong with the roll or the way that a call names, if anything.
std::optional<Problem> wrong_choice(const Job& job, const Call& call);

// Indices into job.rolls: the named one, or all. REQUIRES no wrong choice.
std::vector<int> chosen_rolls(const Job& job, const Call& call);

// Index into comparison.ways: of the named way, or of the best one; −1 where
// no way can be planned. REQUIRES no wrong choice.
int chosen_way(const Comparison& comparison, const Call& call);

// Why no way of a roll can be planned: each reason once.
// in_english: as the JSON answers have it.
QString refusal_words(const Comparison& comparison, bool in_english = false);

}  // namespace foldyard
