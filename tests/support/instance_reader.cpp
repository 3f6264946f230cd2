#include "support/instance_reader.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace foldyard::test {

namespace {

const std::filesystem::path kFolder =
    std::filesystem::path(FOLDYARD_SOURCE_DIR) / "tests/data/guillotine";

[[noreturn]] void refuse(const std::string& name, const std::string& line) {
  throw std::runtime_error(name + ": cannot read \"" + line + "\"");
}

InstancePanel read_panel(std::istream& words) {
  InstancePanel panel;
  words >> panel.across >> panel.along >> panel.value;
  if (words >> std::ws; words && words.peek() != std::istream::traits_type::eof())
    words >> panel.most;
  else
    words.clear();
  return panel;
}

std::int64_t read_number(std::istream& words) {
  std::int64_t number = 0;
  words >> number;
  return number;
}

void read_line(Instance& instance, const std::string& line) {
  std::istringstream words(line);
  std::string word;
  words >> word;
  if (word == "cloth") words >> instance.width >> instance.length;
  else if (word == "straight") instance.straight = read_number(words);
  else if (word == "turned") instance.turned = read_number(words);
  else if (word == "single") instance.single = read_number(words);
  else if (word == "panel") instance.panels.push_back(read_panel(words));
  else refuse(instance.name, line);
  std::string rest;
  if (words.fail() || words >> rest) refuse(instance.name, line);
}

void check(const Instance& instance) {
  if (instance.width <= 0 || instance.length <= 0 || instance.panels.empty())
    refuse(instance.name, "no cloth or no panel");
  for (const InstancePanel& p : instance.panels)
    if (p.across <= 0 || p.along <= 0 || p.value <= 0 || (p.most > 0) != instance.is_limited())
      refuse(instance.name, "panel " + std::to_string(p.across) + " " + std::to_string(p.along));
}

}  // namespace

Instance read_instance_text(const std::string& name, const std::string& text) {
  Instance instance;
  instance.name = name;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);)
    if (!line.empty() && line[0] != '#') read_line(instance, line);
  check(instance);
  return instance;
}

Instance read_instance(const std::string& name) {
  std::ifstream file(kFolder / (name + ".txt"));
  if (!file) throw std::runtime_error(name + ": no such instance");
  std::ostringstream text;
  text << file.rdbuf();
  return read_instance_text(name, text.str());
}

std::vector<std::string> instance_names() {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(kFolder))
    if (entry.path().extension() == ".txt") names.push_back(entry.path().stem().string());
  std::sort(names.begin(), names.end());
  return names;
}

}  // namespace foldyard::test
