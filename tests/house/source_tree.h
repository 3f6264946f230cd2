#pragma once

// The tree of the project as text, for checks on how it is built.

#include <string>
#include <vector>

namespace foldyard::house {

struct Source {
  std::string path;  // from the top of the project, "core/fold/fold_map.cpp"
  std::string text;
};

// All files below `folder` whose names end in one of `endings`, by path.
// Build folders and dotfiles are left out.
std::vector<Source> sources_in(const std::string& folder, const std::vector<std::string>& endings);
std::string read_file(const std::string& path);
bool exists(const std::string& path);
std::vector<std::string> names_at_top();

bool starts_with(const std::string& text, const std::string& head);
bool ends_with(const std::string& text, const std::string& tail);
std::vector<std::string> lines_of(const std::string& text);
// "a/b/c.h" to "a/b"; "" where there is no slash.
std::string folder_of(const std::string& path);
// The n-th step of a path, from 0; "" where there is none.
std::string step(const std::string& path, int n);

// The text with comments, string and character literals blanked, line for line.
std::string code_only(const std::string& text);

}  // namespace foldyard::house
