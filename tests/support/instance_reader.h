#pragma once

// Published instances of cutting one rectangle edge to edge, as they stand in
// tests/data/guillotine (the format is in tests/data/README.md). Sizes are
// whole numbers of no unit.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace foldyard::test {

struct InstancePanel {
  int across = 0;
  int along = 0;
  std::int64_t value = 0;
  std::int64_t most = 0;  // copies; 0: any number
};

// The best value known and proved: panels as they lie, turned too, and as they
// lie with one copy of each at most.
struct Instance {
  std::string name;
  int width = 0;
  int length = 0;
  std::vector<InstancePanel> panels;
  std::optional<std::int64_t> straight;
  std::optional<std::int64_t> turned;
  std::optional<std::int64_t> single;

  bool is_limited() const { return !panels.empty() && panels.front().most > 0; }
};

// Throws std::runtime_error, naming the line, where one cannot be read.
Instance read_instance_text(const std::string& name, const std::string& text);
Instance read_instance(const std::string& name);
// All there are, sorted.
std::vector<std::string> instance_names();

}  // namespace foldyard::test
