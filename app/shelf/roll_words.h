#pragma once

// What the shelf says of a roll: its size as it is known, what is special of it,
// and the whole as one text for a reader and for the search.
//
// An estimated length is "about 22.4 m (21.3 to 23.9 m)": the likely one to the
// nearest 10 cm (a quarter of a yard), its range outwards to the same step.
// Lengths of rolls are in metres or yards, all else in the job's unit.

#include <QString>

#include <vector>

#include "cloth/roll.h"
#include "measure/write_length.h"

namespace foldyard {

enum class RollMark { nap, railroaded, repeat, shrinkage, flaws };

// Metres or yards.
Unit roll_unit(Unit unit);
// Of its width, its selvedges and its repeat.
inline Unit size_unit(Unit unit) { return unit; }
inline Unit thickness_unit(Unit) { return Unit::mm; }

// The length as a field shows it: an estimated one down to a whole centimetre or inch.
Length shown_length(const Roll& roll, Unit unit);

QString roll_length_words(const Roll& roll, Unit unit);
// "150 cm × 18.7 m".
QString roll_size_words(const Roll& roll, Unit unit);

// In the order in which they stand on the shelf.
std::vector<RollMark> roll_marks(const Roll& roll);
// "one-way nap", "2 flaws", "repeats every 32 cm along".
QString mark_words(const Roll& roll, RollMark mark, Unit unit);

// All of it as sentences, one after the other.
QString roll_text(const Roll& roll, Unit unit, bool on_table);

// Whether every word that was typed stands somewhere in the text, in whatever case.
bool has_words(const QString& text, const QString& typed);

}  // namespace foldyard
