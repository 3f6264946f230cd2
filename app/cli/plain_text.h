#pragma once

// Text for a terminal: no-break spaces, which keep sizes together on paper,
// become spaces, so that the answer can be searched.

#include <QString>

namespace foldyard {

inline QString plain_text(QString text) { return text.replace(QChar(0xa0), QLatin1Char(' ')); }

}  // namespace foldyard
