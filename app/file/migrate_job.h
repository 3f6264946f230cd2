#pragma once

// Brings the fields of an older job file to the present version, one step a
// version, so that one reader knows the present version only. This is the one
// place where older versions live.
//
// Version 1 to 2: rolls gained measured, railroaded, repeat, shrinkage and
// flaws, panels at_most, grain, match and sewn. What a version 1 file says means the
// same in version 2; one that holds a newer field is refused, as ever.
//
// REQUIRES a version from 1 to kJobFileVersion. Gives the fields, with the
// present version, or the fault.

#include <QJsonObject>

#include "measure/result.h"

namespace foldyard {

inline constexpr int kJobFileVersion = 2;

Result<QJsonObject> migrate_job(QJsonObject fields, int version);

}  // namespace foldyard
