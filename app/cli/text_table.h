#pragma once

// A table in plain text: columns two spaces apart, the first to the left, the
// others to the right, as wide as their widest cell in characters.
//
// Example: {{"way", "cuts"}, {"open", "8"}} gives "way   cuts\nopen     8\n".

#include <QStringList>
#include <vector>

namespace foldyard {

// REQUIRES rows of equal size.
QString text_table(const std::vector<QStringList>& rows);

}  // namespace foldyard
