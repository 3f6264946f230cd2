#pragma once

// Strictness beyond the JSON library: the library takes some texts that are no
// JSON, and lets the last of two equal fields win in silence.
//
// check_json lets pass only one object by RFC 8259 in valid UTF-8, nothing
// after it, no two fields of one name in one object, no half of a surrogate
// pair, at most 16 levels deep. Field names are written without escapes.
// The fault is placed by line and column, both from 1.

#include <QByteArray>
#include <optional>

#include "measure/result.h"

namespace foldyard {

std::optional<Problem> check_json(const QByteArray& bytes);

}  // namespace foldyard
