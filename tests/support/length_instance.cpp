#include "support/length_instance.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace foldyard::test {
namespace {

void read_line(LengthInstance& instance, const std::string& name, const std::string& line) {
  std::istringstream words(line);
  std::string word;
  std::int64_t length = 0, count = 0;
  words >> word;
  if (word == "roll") words >> instance.roll;
  else if (word == "fewest") words >> instance.fewest;
  else if (word == "want") words >> length >> count;
  else words.setstate(std::ios::failbit);
  if (words.fail()) throw std::runtime_error(name + ": cannot read \"" + line + "\"");
  if (word == "want") instance.wanted.push_back({length, count});
}

}  // namespace

LengthInstance read_length_instance(const std::string& name) {
  std::ifstream file(std::string(FOLDYARD_SOURCE_DIR "/tests/data/cutting-1d/") + name + ".txt");
  if (!file) throw std::runtime_error(name + ": no such instance");
  LengthInstance instance;
  for (std::string line; std::getline(file, line);) {
    if (!line.empty() && line[0] != '#') read_line(instance, name, line);
  }
  return instance;
}

}  // namespace foldyard::test
