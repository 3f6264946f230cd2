#pragma once

// A paragraph broken into lines of at most 78 characters, its last one ended. The
// first line starts with `first`, later ones with `indent`.

#include <QString>

namespace foldyard {

QString wrapped(const QString& paragraph, const QString& indent, const QString& first = {});

}  // namespace foldyard
