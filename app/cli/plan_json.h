#pragma once

// Plans and comparisons as JSON, as docs/output.md describes them: lengths as
// exact text, worths as decimal text, areas in square metres, times in seconds.

#include <QJsonObject>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

inline constexpr int kAnswerVersion = 1;

// Exact, with a minus where it is less than nothing.
QString exact_worth(Worth worth);
// To a millisecond.
double seconds(Duration time);
QJsonObject plan_json(const Job& job, const Plan& plan);
QJsonObject comparison_json(const Job& job, const Comparison& comparison);
// A roll of which no way can be planned.
QJsonObject refused_json(const Job& job, int roll, const QString& reason);

// The whole answer: {"foldyard_answer": 1, "verb": …, "aim": …, "rolls": […]}.
QString answer_text(const QString& verb, Aim aim, const QJsonArray& rolls);

}  // namespace foldyard
