#pragma once

// Words of job files and tables that both the reader and a writer know, in the order of
// their enumerations.

#include <QStringList>

namespace foldyard {

inline const QStringList kUnitWords = {"mm", "cm", "m", "in", "yd"};
inline const QStringList kNapWords = {"none", "one-way"};
inline const QStringList kSquaredWords = {"none", "free-end", "both"};
inline const QStringList kInBatchWords = {"may", "must", "never"};

// REQUIRES a value of the enumeration the words are of.
template <typename Value>
QString word_of(const QStringList& words, Value value) {
  return words[static_cast<qsizetype>(value)];
}

}  // namespace foldyard
