#pragma once

#include <QString>

namespace foldyard {

// With a plain space for each that does not break, as one types it.
inline QString plain(QString words) { return words.replace(QChar(0xa0), QLatin1Char(' ')); }

}  // namespace foldyard
