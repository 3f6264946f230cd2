#pragma once

// Words that run from left to right in every language, as sizes do.

#include <QString>

namespace foldyard {

// Where the window runs from right to left, marks before and behind the words keep
// them in their own order: "150 cm × 18.7 m" would become "cm × 18.7 m 150", and
// "94.4 %" would become "% 94.4". Elsewhere, and for empty words, they are as they
// were.
QString in_own_order(const QString& words);

}  // namespace foldyard
