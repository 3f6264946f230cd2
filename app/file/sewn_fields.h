#pragma once

// The object `sewn` of a panel in a job file (docs/job-file.md): what the panel
// is sewn into.
//
// Either the finished width and height are given, and the panel's size follows
// unless it stands there too; or the panel's size is given, and the finished
// size follows from the body. Whether both agree is for check_job to say.

#include <string>

#include "file/field_reader.h"
#include "goods/panel.h"
#include "measure/write_length.h"

namespace foldyard {

// Puts sewn, and the sizes that follow, into the panel. has_size: its across
// and along were given. REQUIRES that the panel has the field.
void read_sewn(FieldReader& panel_fields, bool has_size, Panel& panel);

// {"kind": "one-piece-bag", "width": …}
std::string sewn_text(const Sewn& sewn, Unit unit);

}  // namespace foldyard
