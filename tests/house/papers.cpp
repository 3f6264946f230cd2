#include "papers.h"

#include <algorithm>
#include <filesystem>
#include <map>
#include <regex>
#include <sstream>

namespace foldyard::house {
namespace {

const std::vector<std::string> kTop = {"CMakeLists.txt", "DEVELOPERS.md", "README.md", "app",
                                       "core",           "docs",          "resources", "tests"};

bool is_part_of_name(char c) { return std::isalnum(static_cast<unsigned char>(c)) || c == '-' || c == '+'; }

bool names_whole(const std::string& text, const std::string& name) {
  for (auto at = text.find(name); at != std::string::npos; at = text.find(name, at + 1)) {
    const bool before = at > 0 && is_part_of_name(text[at - 1]);
    const auto end = at + name.size();
    const bool after = end < text.size() && is_part_of_name(text[end]);
    if (!before && !after) return true;
  }
  return false;
}

bool is_outside(const std::string& link) {
  return link.find("://") != std::string::npos || starts_with(link, "mailto:") || link[0] == '#';
}

std::string resolved(const std::string& document, const std::string& link) {
  const std::filesystem::path folder = folder_of(document);
  return (folder / link.substr(0, link.find('#'))).lexically_normal().generic_string();
}

}  // namespace

std::vector<std::string> units_without_test(const std::vector<Source>& core, const Exists& exists) {
  std::vector<std::string> faults;
  for (const auto& source : core) {
    if (!ends_with(source.path, ".cpp")) continue;
    const auto test = "tests/" + source.path.substr(0, source.path.size() - 4) + "_test.cpp";
    if (!exists(test)) faults.push_back(source.path + " has no " + test);
  }
  return faults;
}

std::vector<std::string> silent_macros(const Source& test) {
  static const std::regex kSilent(R"(\b(QVERIFY\w*|QCOMPARE\w*|QTRY_\w+|QFAIL)\b)");
  const auto code = code_only(test.text);
  std::vector<std::string> faults;
  for (std::sregex_iterator it(code.begin(), code.end(), kSilent), end; it != end; ++it)
    faults.push_back(test.path + " uses " + it->str() + ", which cannot fail here");
  return faults;
}

std::vector<std::string> wrong_at_top(std::vector<std::string> names) {
  std::sort(names.begin(), names.end());
  std::vector<std::string> faults;
  std::set_symmetric_difference(names.begin(), names.end(), kTop.begin(), kTop.end(),
                                std::back_inserter(faults));
  return faults;
}

std::vector<std::string> package_names(const std::string& list) {
  static const std::regex kName(R"([a-z0-9][a-z0-9+.]*(-[a-z0-9+.]+)+)");
  std::vector<std::string> names;
  for (const auto& line : lines_of(list)) {
    if (starts_with(line, "#")) continue;
    std::sregex_token_iterator found(line.begin(), line.end(), kName), none;
    names.insert(names.end(), found, none);
  }
  return names;
}

std::vector<std::string> packages_named(const Source& source, const std::vector<std::string>& names) {
  std::vector<std::string> faults;
  for (const auto& name : names)
    if (names_whole(source.text, name)) faults.push_back(source.path + " names the package " + name);
  return faults;
}

std::vector<std::string> broken_links(const Source& document, const Exists& exists) {
  static const std::regex kLink(R"(\]\(([^)\s]+)\))");
  std::vector<std::string> faults;
  const auto& text = document.text;
  for (std::sregex_iterator it(text.begin(), text.end(), kLink), end; it != end; ++it) {
    const std::string link = (*it)[1];
    if (!is_outside(link) && !exists(resolved(document.path, link)))
      faults.push_back(document.path + " links " + link + ", which is not there");
  }
  return faults;
}

std::vector<std::string> missing_paths(const Source& document, const Exists& exists) {
  static const std::regex kPath(R"(`((app|core|docs|resources|tests)/[\w./-]*\w)[ `])");
  std::vector<std::string> faults;
  const auto& text = document.text;
  for (std::sregex_iterator it(text.begin(), text.end(), kPath), end; it != end; ++it)
    if (!exists((*it)[1]) && !exists((*it)[1].str() + ".h")) faults.push_back(document.path + " names " + (*it)[1].str() + ", which is not there");
  return faults;
}

std::vector<std::string> stale_mutations(const std::string& list,
                                         const std::function<std::string(const std::string& path)>& read) {
  std::vector<std::string> faults;
  std::map<std::string, std::string> fields;
  const auto check = [&] {
    const std::string &name = fields["name"], &from = fields["from"];
    const auto text = fields["file"].empty() || from.empty() ? "" : read(fields["file"]);
    const auto first = text.find(from);
    const bool once = !text.empty() && first != std::string::npos && text.find(from, first + 1) == std::string::npos;
    if (!once || name.empty() || fields["to"].empty() || fields["tests"].empty() || from == fields["to"])
      faults.push_back("the mutation " + name + " does not apply to " + fields["file"]);
    fields.clear();
  };
  for (const auto& line : lines_of(list)) {
    if (line.empty() && !fields.empty()) check();
    const auto colon = line.find(": ");
    if (!starts_with(line, "#") && colon != std::string::npos) fields[line.substr(0, colon)] = line.substr(colon + 2);
  }
  if (!fields.empty()) check();
  return faults;
}

}  // namespace foldyard::house
