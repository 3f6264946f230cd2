#pragma once

// A linear model with whole unknowns ≥ 0, made greatest by GLPK, a general
// solver (https://www.gnu.org/software/glpk/). It says nothing while it works.

#include <cstdint>
#include <utility>
#include <vector>

namespace foldyard::test {

using Terms = std::vector<std::pair<int, int>>;  // row, how much of it

class IntegerModel {
 public:
  // A sum that must be at least `least`; gives its number.
  int add_row(int least);
  // An unknown of this worth for each one.
  void add_unknown(std::int64_t worth, const Terms& terms);

  int unknowns() const { return static_cast<int>(columns_.size()); }
  // The most worth, proved; throws where the solver gives up.
  std::int64_t most() const;

 private:
  struct Column {
    std::int64_t worth;
    Terms terms;
  };
  std::vector<int> least_;
  std::vector<Column> columns_;
};

}  // namespace foldyard::test
