#include "sizes.h"

#include <algorithm>
#include <regex>

namespace foldyard::house {
namespace {

enum class Scope { outer, function, inner };

std::string trimmed(const std::string& text) {
  const auto from = text.find_first_not_of(" \t\n");
  if (from == std::string::npos) return "";
  return text.substr(from, text.find_last_not_of(" \t\n") - from + 1);
}

bool is_access(const std::string& head) {
  return head == "public" || head == "protected" || head == "private";
}

// What an opening brace begins, told by the text before it.
Scope scope_of(const std::string& head) {
  static const std::regex kType(R"(^(inline |export |template ?<.*> ?)*(namespace|class|struct|enum|union|extern)\b[^()]*$)");
  const auto opening = std::count(head.begin(), head.end(), '(');
  if (std::regex_search(head, kType)) return Scope::outer;
  const bool is_value = !head.empty() && head.back() == '=' && head.find("operator=") == std::string::npos;
  const bool balanced = opening == std::count(head.begin(), head.end(), ')');
  return opening > 0 && balanced && !is_value ? Scope::function : Scope::inner;
}

// Walks over blanked code and notes each function outside of functions.
class Walker {
 public:
  explicit Walker(const Source& source) : path_(source.path), code_(code_only(source.text)) {}

  std::vector<Function> run() {
    for (const char c : code_) {
      if (c == '#' && trimmed(head_).empty()) in_directive_ = true;
      if (c == '\n') end_line();
      if (!in_directive_) take(c);
      last_ = c;
    }
    return found_;
  }

 private:
  void end_line() {
    ++line_;
    if (last_ != '\\') in_directive_ = false;
  }

  void take(char c) {
    if (c == '{') return open();
    if (c == '}') return close();
    if (c == ';' || (c == ':' && is_access(trimmed(head_)))) return begin_head();
    if (trimmed(head_).empty()) head_line_ = line_;
    head_ += c == '\n' ? ' ' : c;
  }

  void open() {
    const auto head = trimmed(head_);
    const bool inside = !scopes_.empty() && scopes_.back() != Scope::outer;
    scopes_.push_back(inside ? Scope::inner : scope_of(head));
    if (scopes_.back() == Scope::function) begin_function(head);
    begin_head();
  }

  // A head that goes on after a braced member initializer is the same function.
  void begin_function(const std::string& head) {
    if (!found_.empty() && !head.empty() && head[0] == ',') return;
    found_.push_back({path_ + ":" + std::to_string(head_line_), head, 0});
    from_ = head_line_;
  }

  void close() {
    if (!scopes_.empty()) {
      if (scopes_.back() == Scope::function) found_.back().lines = line_ - from_ + 1;
      scopes_.pop_back();
    }
    begin_head();
  }

  void begin_head() {
    head_.clear();
    head_line_ = line_;
  }

  std::string path_;
  std::string code_;
  std::vector<Function> found_;
  std::vector<Scope> scopes_;
  std::string head_;
  int line_ = 1;
  int head_line_ = 1;
  int from_ = 1;
  char last_ = 0;
  bool in_directive_ = false;
};

}  // namespace

std::vector<Function> functions_in(const Source& source) { return Walker(source).run(); }

std::vector<std::string> long_functions(const Source& source) {
  std::vector<std::string> faults;
  for (const auto& function : functions_in(source))
    if (function.lines > kLongestFunction)
      faults.push_back(function.where + ": " + std::to_string(function.lines) + " lines: " + function.head);
  return faults;
}

std::vector<std::string> long_file(const Source& source) {
  const int lines = static_cast<int>(lines_of(source.text).size());
  const bool core_header = ends_with(source.path, ".h") && starts_with(source.path, "core/");
  const int limit = core_header ? kLongestCoreHeader : kLongestSource;
  if (lines <= limit) return {};
  return {source.path + " has " + std::to_string(lines) + " lines, more than " + std::to_string(limit)};
}

int median_lines(std::vector<Function> functions) {
  if (functions.empty()) return 0;
  const auto middle = functions.begin() + static_cast<std::ptrdiff_t>(functions.size() / 2);
  std::nth_element(functions.begin(), middle, functions.end(),
                   [](const auto& a, const auto& b) { return a.lines < b.lines; });
  return middle->lines;
}

}  // namespace foldyard::house
