#pragma once

// What the drawings say in words: one place for every sentence, so that the
// sheet and the window speak alike. Lengths are in the job's unit.

#include <QString>
#include <QStringList>

#include "fold/plies.h"
#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

QString length_words(Length length, Unit unit);
// The number alone, for a table or a tape whose heading names the unit; yards with their unit.
QString number_words(Length length, Unit unit);
// "31 × 148 cm": across first. No line breaks inside it.
QString size_words(Length across, Length along, Unit unit);
QString size_words(const Rect& rect, Unit unit);
// What a panel measures as it lies on this cloth, across first: "45 × 97 cm";
// where the cloth shrinks, "cut 46.4 × 100 cm, finishes 45 × 97 cm".
QString panel_size_words(const Job& job, const Fabric& fabric, int panel, bool turned);
// "nap away from you", "nap to the right": as seen from the near end.
QString nap_words(const Ply& ply, const Fabric& fabric);
// "centimetres"; yards are written with inches.
QString unit_words(Unit unit);
QString worth_words(Worth worth);
QString minutes_words(Duration time);
// "92.4 %", rounded to a tenth; 0 % of nothing.
QString use_words(Area used, Area cloth);
double use_percent(Area used, Area cloth);
// "left and right"; of more, "left and middle and right".
QString and_joined(const QStringList& words);

QString pattern_letter(int pattern);  // A … Z, AA …
QString panel_code(int panel);        // P1, P2 …

// "41 × Carrier and 6 × Pouch": panels of which there are none left out; set
// apart by semicolons where a name has a comma.
QString yield_words(const Job& job, const std::vector<std::int64_t>& yield);
std::vector<std::int64_t> pattern_yield(const Job& job, const Pattern& pattern);

std::int64_t lengths_of(const Plan& plan, int pattern);
// How many plies lie under the blade where most lie.
QString plies_words(const Plan& plan, int pattern);
// "7 lays of 2", "6 lays of 2 and 1 of 1"; by pattern.
QString lays_words(const Plan& plan, int pattern);

QString roll_words(const Job& job, const Plan& plan);
// The answer: panels, fold, lengths, lays and cuts, use, what is left.
QString answer_words(const Job& job, const Plan& plan);
QString proof_words(const Plan& plan);
// " Limits: carrier 24 of at most 24; pouch 3 of at most 12." Empty without limits.
QString limit_words(const Job& job, const Plan& plan);

// How to fold one length, and where each fold line lies.
QString folding_words(const Pattern& pattern);
QStringList fold_line_words(const Pattern& pattern, Length width, Unit unit);

}  // namespace foldyard
