#include "type_names.h"

#include <map>
#include <regex>

namespace foldyard::house {
namespace {

// What stands before an opening brace: a namespace, with its name or without, or anything else.
struct Brace {
  bool is_namespace = false;
  std::string name;
};

bool is_for_others(const std::vector<Brace>& open) {
  for (const Brace& brace : open)
    if (!brace.is_namespace || brace.name.empty()) return false;
  return true;
}

std::string qualified(const std::vector<Brace>& open, const std::string& name) {
  std::string text;
  for (const Brace& brace : open) text += brace.name + "::";
  return text + name;
}

}  // namespace

std::vector<std::string> types_in(const Source& source) {
  static const std::regex kStep(
      R"(namespace\s*([\w:]*)\s*\{|\b(?:struct|class|union|enum(?:\s+class)?)\s+(\w+)(?:\s+final)?\s*(?::(?!:)[^;{}()]*)?\{|[{}])");
  const std::string code = code_only(source.text);
  std::vector<std::string> types;
  std::vector<Brace> open;
  for (std::sregex_iterator at(code.begin(), code.end(), kStep), end; at != end; ++at) {
    if (at->str() == "}") {
      if (!open.empty()) open.pop_back();
      continue;
    }
    if ((*at)[2].matched && is_for_others(open)) types.push_back(qualified(open, (*at)[2]));
    open.push_back({starts_with(at->str(), "namespace"), (*at)[1]});
  }
  return types;
}

std::vector<std::string> types_named_twice(const std::vector<Source>& sources) {
  std::map<std::string, std::string> places;
  std::vector<std::string> twice;
  for (const Source& source : sources)
    for (const std::string& type : types_in(source)) {
      const auto [place, is_new] = places.emplace(type, source.path);
      if (!is_new) twice.push_back(type + " stands in " + place->second + " and " + source.path);
    }
  return twice;
}

}  // namespace foldyard::house
