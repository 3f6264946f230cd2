#pragma once

// What a plan does with the flaws of its roll, in words: for the command line,
// the sheet and the lists beside patterns.

#include <QString>
#include <QStringList>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

// "stain"; "flaw" where the maker gave it no name.
QString flaw_name(const Flaw& flaw);
// "3 flaws cost 2 × Carrier, cut but lost, and 12 cm of the roll, cut out." Empty
// where the roll has none.
QString flaws_words(const Job& job, const Plan& plan);
// A line for each flaw: where it lies, and what becomes of it.
QStringList flaw_lines(const Job& job, const Plan& plan);
// The same for the lengths of one pattern, measured from the start of each:
// "length 5: stain at 32 – 38 cm, 40 – 55 cm from the left: 1 × Carrier is lost".
QStringList flaw_lines_of(const Job& job, const Plan& plan, int pattern);
// "28 points: 12 per 100 square yards"; by the yard in yards and inches, else by
// the metre. Empty where the roll has no flaws.
QString grade_words(const Job& job, const Roll& roll);

// A flaw under a length: which one, and where it lies flat in its pattern.
struct FlawUnder {
  int length = 0;
  int flaw = 0;
  Rect flat;
};
// In the order of lengths, then flaws.
std::vector<FlawUnder> flaws_under(const Job& job, const Plan& plan, int pattern);

}  // namespace foldyard
