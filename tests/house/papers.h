#pragma once

// What surrounds the code: tests that mirror units, the top of the project,
// package names, links between documents.

#include <functional>
#include <string>
#include <vector>

#include "source_tree.h"

namespace foldyard::house {

using Exists = std::function<bool(const std::string& path)>;

// Core units without a test of their path and name.
std::vector<std::string> units_without_test(const std::vector<Source>& core, const Exists& exists);
// Macros that pass silently outside of the Qt test runner.
std::vector<std::string> silent_macros(const Source& test);
// What stands at the top besides, or is missing from, what belongs there.
std::vector<std::string> wrong_at_top(std::vector<std::string> names);
// Distinctive package names (with a dash) of a package list.
std::vector<std::string> package_names(const std::string& list);
std::vector<std::string> packages_named(const Source& source, const std::vector<std::string>& names);
// Relative links of a Markdown document that lead nowhere.
std::vector<std::string> broken_links(const Source& document, const Exists& exists);
// Paths of the project between backticks, like `core/job/job.h` or `core/job/job`, that are
// not there.
std::vector<std::string> missing_paths(const Source& document, const Exists& exists);

// Faults of tests/mutations/list.txt that could not be put into their files, or are not whole.
// read: gives the text of a path.
std::vector<std::string> stale_mutations(const std::string& list,
                                         const std::function<std::string(const std::string& path)>& read);

}  // namespace foldyard::house
