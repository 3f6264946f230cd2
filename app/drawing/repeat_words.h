#pragma once

// What lists and sheets say about a pattern repeat, and where repeats begin on the
// cloth of one pattern. Empty where the cloth does not repeat.

#include <QString>
#include <vector>

#include "drawing/pattern_data.h"

namespace foldyard {

// "The pattern repeats every 64 cm along the roll, the first from 10 cm from its
// free end …"
QString repeat_words(const Job& job, const Plan& plan);
// What matching costs against the same way where nothing need match, and the cloth
// skipped; empty where no panel must match.
QString matching_words(const Job& job, const Plan& plan);
// Where the first repeat begins on each length of the pattern.
QString phase_words(const PatternData& data);

// Where repeats begin, flat, ascending: from the left edge; from the near end,
// where that is the same on all lengths of the pattern, else none.
std::vector<Length> repeats_across(const PatternData& data);
std::vector<Length> repeats_along(const PatternData& data);

}  // namespace foldyard
