#pragma once

// Writes a file so that after any fault the old file or the new one is there,
// whole: a temporary file in the same folder, written, forced to the disk,
// then put in the place of the old one, and the folder forced too.
//
// Keeps the permissions of a file that was there; follows a link to its file.
// Refused, with nothing changed: a folder, a device or a pipe as target, a
// link to nothing, a write-protected file, a missing folder. Gives nothing, or
// what went wrong and what to do; is_in_place tells the one fault after which the
// new file stands there: it could not be forced to the disk with its folder.
//
// A write that is killed leaves its temporary file behind; remove_litter takes away
// those of an hour ago or longer, and every safe_write does so in its folder.

#include <QByteArray>
#include <QString>
#include <optional>

#include "measure/result.h"

namespace foldyard {

std::optional<Problem> safe_write(const QString& path, const QByteArray& bytes);
bool is_in_place(const Problem& problem);

void remove_litter(const QString& folder);

}  // namespace foldyard
