#pragma once

// What core says (core/measure/words.h), in the language that is spoken: each
// pattern as its catalogue has it, numbers with the decimal sign of the
// language, names and fields as they are. A pattern that has no translation
// stays English.
//
// Example, in German: spoken(say("%1 is too large", Words::number("12.5 cm"))) is
// "12,5 cm ist zu groß".

#include <QString>
#include <string_view>

#include "measure/result.h"

namespace foldyard {

QString spoken(const Words& words);
// A pattern without places, kept by to_say(); its literal ends with a null.
QString spoken(std::string_view pattern);
// For a name that a job keeps, whatever language is spoken later.
std::string spoken_text(const Words& words);
// "rolls[2].width: 0 mm ist keine Breite; mehr als null angeben."
QString spoken(const Problem& problem);

}  // namespace foldyard
