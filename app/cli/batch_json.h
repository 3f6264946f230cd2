#pragma once

// A planned batch as JSON, as docs/output.md describes it.

#include <QString>

#include "drawing/batch_tables.h"

namespace foldyard {

QString batch_json_text(const BatchAnswer& answer);

}  // namespace foldyard
