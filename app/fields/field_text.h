#pragma once

// What a person types into a field, as a value of the job, and back.
//
// A length may be typed without a unit: it is then in the job's unit, and the
// field says so as soon as it is left. All else is read_length's matter.
// Problems are told in words of the window, without the names that a job file
// has for its fields.
//
// Example: typed_length("45", Unit::cm) is 450 mm.

#include <QString>

#include <cstdint>
#include <optional>

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

Result<Length> typed_length(const QString& text, Unit unit);
Result<Worth> typed_worth(const QString& text);
// A whole number; an empty text is none.
Result<std::optional<std::int64_t>> typed_limit(const QString& text);

// The length as it can be typed again, exactly: "45 cm", "17 3/4 in".
QString length_text(Length length, Unit unit);
QString worth_text(Worth worth);

// The text with places to break a line in words too long for a narrow cell.
QString breakable(const QString& text);

// "Roll “Olive canvas”, width: … ." for a problem at `rolls[0].width`.
QString problem_text(const Problem& problem, const Job& job);

}  // namespace foldyard
