#pragma once

// Working times as they are typed, and back.
//
// "1:50" is one minute and fifty seconds; "110 s", "1.5 min"; a bare number is
// minutes. A time is kept to the millisecond; finer is refused.
//
// Example: typed_duration("1:50") is Duration::seconds(110), written "1:50".

#include <QString>

#include "measure/duration.h"
#include "measure/result.h"

namespace foldyard {

Result<Duration> typed_duration(const QString& text);
// "1:50", "0:09.5": exactly, in whole milliseconds.
QString duration_text(Duration time);
// To a tenth of a second, for reading a running watch: "0:09.5".
QString watch_text(Duration time);

}  // namespace foldyard
