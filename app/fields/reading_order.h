#pragma once

// Words that run from left to right in every language, as sizes do.

#include <QString>

namespace foldyard {

// Where the window runs from right to left, a mark before the words keeps them in
// their own order: "150 cm × 18.7 m" would become "cm × 18.7 m 150". Elsewhere, and
// for empty words, they are as they were.
QString in_own_order(const QString& words);

}  // namespace foldyard
