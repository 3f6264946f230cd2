#pragma once

// What the verbs say of a roll of unknown length besides its plan.

#include <QJsonObject>
#include <QString>
#include <optional>

#include "job/yield_range.h"

namespace foldyard {

// Of the way of this plan; nothing where the roll's length is known, or
// the search was stopped.
std::optional<YieldRange> range_of(const Job& job, const Plan& plan, const SearchBudget& budget);

// The same in words: paragraphs and both lists, ending in an empty
// line. Empty where the roll's length is known.
QString range_words_of(const Job& job, const Plan& plan, const SearchBudget& budget = {});

// The same as fields of an answer's roll: `estimate` and `range` (docs/output.md).
QJsonObject with_range(const Job& job, const Plan& plan, QJsonObject roll,
                       const SearchBudget& budget = {});

}  // namespace foldyard
