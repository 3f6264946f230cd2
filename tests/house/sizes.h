#pragma once

// How long functions and files are.

#include <string>
#include <vector>

#include "source_tree.h"

namespace foldyard::house {

struct Function {
  std::string where;  // path:line
  std::string head;   // what stands before its brace
  int lines = 0;      // from its head to its closing brace
};

// Functions defined in a source, methods included; lambdas count as lines of
// the function they stand in.
std::vector<Function> functions_in(const Source& source);

inline constexpr int kLongestFunction = 60;
inline constexpr int kLongestSource = 500;
inline constexpr int kLongestCoreHeader = 350;

std::vector<std::string> long_functions(const Source& source);
std::vector<std::string> long_file(const Source& source);
int median_lines(std::vector<Function> functions);

}  // namespace foldyard::house
