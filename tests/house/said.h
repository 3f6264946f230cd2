#pragma once

// Whether what core and the reader of files say to a person can be said in
// another language: every literal of two words or more stands in say() or
// to_say() (core/measure/words.h).

#include "source_tree.h"

namespace foldyard::house {

// "core/a.cpp: \"no panel fits\" is not in say()", for each.
std::vector<std::string> unsaid(const Source& source);

}  // namespace foldyard::house
