#pragma once

// Whether each type of the program has a name of its own. Two of one name in one namespace
// are taken for the same thing by the linker, whatever they hold, and nothing warns of it.

#include "source_tree.h"

namespace foldyard::house {

// The types that a source defines for others, "foldyard::limited::Cloth": not those inside
// types, functions or a namespace without a name.
std::vector<std::string> types_in(const Source& source);

// "foldyard::Roll stands in core/a.h and core/b.h", for each.
std::vector<std::string> types_named_twice(const std::vector<Source>& sources);

}  // namespace foldyard::house
