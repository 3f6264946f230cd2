#pragma once

// What a roll of unknown length may be and give, in words. Lengths are in the
// job's unit; the ends of an estimate are rounded outwards to whole centimetres (or
// inches), a length from which on something holds upwards to whole millimetres (or
// sixteenths of an inch).

#include <QString>
#include <QStringList>
#include <vector>

#include "job/job.h"
#include "job/yield_range.h"

namespace foldyard {

// "31.2 to 42.11 m, most likely 36.05 m".
QString estimate_words(const LengthEstimate& estimate, Unit unit);
// "its diameters: 22 cm (± 0.5 cm) on a tube of 5 cm (± 0.1 cm), one ply 1 mm (± 0.1 mm)".
QString measure_words(const RollMeasure& measure, Unit unit);
// The estimate of a roll as one sentence, with what plans count on; empty where the
// roll's length is known.
QString estimated_words(const Job& job, const Roll& roll);

// "38 to 41 × Carrier (40 most likely) and 2 × Pouch; worth 408.00 to 452.50, 430.00
// most likely."
QString range_words(const Job& job, const YieldRange& range);
// What the list of steps leaves out, or that it leaves out nothing.
QString steps_note(const YieldRange& range);
// The order of work, before its list; and after it what it may cost and leaves out.
QString order_words(const Job& job, const YieldRange& range);
QString further_note(const YieldRange& range);

// A row of either list: from which length on, what then, and its worth.
struct RangeRow {
  QString from;
  QString what;
  QString worth;
};
std::vector<RangeRow> step_rows(const Job& job, const YieldRange& range);
std::vector<RangeRow> further_rows(const Job& job, const YieldRange& range);

}  // namespace foldyard
