#pragma once

// Which cloth a roll is of, and whether an order's word names it.
//
// Example: a roll "Moss 2" with cloth "Canvas, moss" and marks {"plain"}:
// cloth_of is "Canvas, moss"; it answers to "Canvas, moss" and to "plain", not to
// "Moss 2". Without a cloth it would answer to its name.

#include <algorithm>
#include <string>

#include "cloth/roll.h"

namespace foldyard {

inline const std::string& cloth_of(const Roll& roll) { return roll.cloth.empty() ? roll.name : roll.cloth; }

// word: a cloth or a mark.
inline bool answers_to(const Roll& roll, const std::string& word) {
  return cloth_of(roll) == word || std::find(roll.marks.begin(), roll.marks.end(), word) != roll.marks.end();
}

// Whether the roll answers to one of the words; no words: any roll does.
inline bool answers_to_any(const Roll& roll, const std::vector<std::string>& words) {
  return words.empty() ||
         std::any_of(words.begin(), words.end(), [&](const std::string& word) { return answers_to(roll, word); });
}

}  // namespace foldyard
