#pragma once

// Numbers as the language writes them.
//
// Core, files and tables for other programs know the decimal point alone; what a
// person reads has the sign of the language, and what a person types may have
// either. Whole numbers are written without signs between their thousands.
//
// Example, in German: local_numbers("12.5 cm × 1.8 m") is "12,5 cm × 1,8 m".

#include <QString>

namespace foldyard {

// The words with the language's sign in place of each point that stands between
// two digits. For numbers and their units, not for words that hold names.
QString local_numbers(const QString& words);

// What was typed, with points where the language's sign stands between two
// digits; a point stays a point.
QString plain_numbers(const QString& typed);

// A number with so many places, as QString::number writes it, in the language's signs.
QString local_number(double value, int places);

}  // namespace foldyard
