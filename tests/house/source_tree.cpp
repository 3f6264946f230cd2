#include "source_tree.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace foldyard::house {
namespace {

namespace fs = std::filesystem;

fs::path top() { return FOLDYARD_SOURCE_DIR; }

bool is_left_out(const std::string& name) { return name[0] == '.' || starts_with(name, "build"); }

// One pass over the text, copying code and blanking the rest.
class Blanker {
 public:
  explicit Blanker(const std::string& text) : text_(text) {}

  std::string run() {
    while (at_ < text_.size()) one_step();
    return out_;
  }

 private:
  void one_step() {
    if (sees("//")) return blank_to("\n", 0);
    if (sees("/*")) return blank_to("*/", 2);
    if (sees("R\"(")) return blank_to(")\"", 2);
    if (text_[at_] == '"') return blank_literal('"');
    if (text_[at_] == '\'' && !after_digit()) return blank_literal('\'');
    out_ += text_[at_++];
  }

  bool sees(const char* mark) const { return text_.compare(at_, std::string(mark).size(), mark) == 0; }

  // A ' between digits parts thousands: 1'000.
  bool after_digit() const { return is_letter_or_digit(1) && !after_prefix(); }
  // u'x', U'x', L'x'.
  bool after_prefix() const {
    return std::string("uUL").find(text_[at_ - 1]) != std::string::npos && !is_letter_or_digit(2);
  }
  bool is_letter_or_digit(std::size_t back) const {
    return at_ >= back && std::isalnum(static_cast<unsigned char>(text_[at_ - back]));
  }

  void blank(std::size_t end) {
    for (; at_ < std::min(end, text_.size()); ++at_) out_ += text_[at_] == '\n' ? '\n' : ' ';
  }

  void blank_to(const std::string& mark, std::size_t more) {
    const auto found = text_.find(mark, at_ + 1);
    blank(found == std::string::npos ? text_.size() : found + more);
  }

  void blank_literal(char quote) {
    auto end = at_ + 1;
    while (end < text_.size() && text_[end] != quote) end += text_[end] == '\\' ? 2 : 1;
    blank(end + 1);
  }

  const std::string& text_;
  std::size_t at_ = 0;
  std::string out_;
};

}  // namespace

bool starts_with(const std::string& text, const std::string& head) { return text.rfind(head, 0) == 0; }

bool ends_with(const std::string& text, const std::string& tail) {
  return text.size() >= tail.size() && text.compare(text.size() - tail.size(), tail.size(), tail) == 0;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

std::string folder_of(const std::string& path) {
  const auto slash = path.rfind('/');
  return slash == std::string::npos ? "" : path.substr(0, slash);
}

std::string step(const std::string& path, int n) {
  std::istringstream in(path);
  std::string name;
  for (int i = 0; i <= n; ++i)
    if (!std::getline(in, name, '/')) return "";
  return name;
}

std::string read_file(const std::string& path) {
  std::ifstream in(top() / path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

bool exists(const std::string& path) { return fs::exists(top() / path); }

std::vector<std::string> names_at_top() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(top()))
    if (const auto name = entry.path().filename().string(); !is_left_out(name)) names.push_back(name);
  std::sort(names.begin(), names.end());
  return names;
}

std::vector<Source> sources_in(const std::string& folder, const std::vector<std::string>& endings) {
  std::vector<Source> found;
  auto walk = fs::recursive_directory_iterator(top() / folder);
  for (auto it = fs::begin(walk); it != fs::end(walk); ++it) {
    const auto name = it->path().filename().string();
    if (it->is_directory() && is_left_out(name)) it.disable_recursion_pending();
    const bool wanted = std::any_of(endings.begin(), endings.end(),
                                    [&](const auto& ending) { return ends_with(name, ending); });
    if (!it->is_regular_file() || name[0] == '.' || !wanted) continue;
    const auto path = it->path().lexically_normal().lexically_relative(top().lexically_normal()).generic_string();
    found.push_back({path, read_file(path)});
  }
  std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
  return found;
}

std::string code_only(const std::string& text) { return Blanker(text).run(); }

}  // namespace foldyard::house
