#pragma once

// The heading of a column, named inside a sentence.

#include <QString>

namespace foldyard {

// In small letters, except in German, whose nouns keep their capital.
// Example: "change “at most” of “Carrier”", „Carrier“: „Höchstens“ ändern.
QString heading_words(const QString& heading);

}  // namespace foldyard
