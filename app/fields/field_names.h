#pragma once

// The fields of a job file, as the window calls them.
//
// Example: field_words("flaws[1].from") is "flaws 2, from": people count from 1.

#include <QString>

namespace foldyard {

// In the language that is spoken; a field without a name of its own there is called
// by its key, with spaces.
QString field_words(const QString& field);

}  // namespace foldyard
