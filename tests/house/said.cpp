#include "said.h"

#include <cctype>

namespace foldyard::house {
namespace {

constexpr char kSaid = '\1', kOther = '\2';  // stand for literals in the code

// Walks over the text; the code before a literal tells whether it is said.
class Walk {
 public:
  explicit Walk(const std::string& text) : text_(text) {}

  std::vector<std::string> run() {
    while (at_ < text_.size()) one_step();
    return unsaid_;
  }

 private:
  void one_step() {
    const char c = text_[at_];
    if (text_.compare(at_, 2, "//") == 0) at_ = text_.find('\n', at_);
    else if (c == '"') literal();
    else if (c == '\'' && !std::isdigit(static_cast<unsigned char>(code_.back()))) skip('\'');
    else take(c);
    if (at_ == std::string::npos) at_ = text_.size();
  }

  void take(char c) {
    if (!std::isspace(static_cast<unsigned char>(c))) code_ += c;
    ++at_;
  }

  // To behind the closing quote; gives what stands between.
  std::string skip(char quote) {
    const std::size_t from = ++at_;
    while (at_ < text_.size() && text_[at_] != quote) at_ += text_[at_] == '\\' ? 2 : 1;
    return text_.substr(from, at_++ - from);
  }

  void literal() {
    const std::string words = skip('"');
    const bool is_said = ends_with(code_, "say(") || code_.back() == kSaid;
    if (!is_said && has_two_words(words)) unsaid_.push_back(words);
    code_ += is_said ? kSaid : kOther;
  }

  static bool has_two_words(const std::string& words) {
    const auto letter = [&](std::size_t i) { return std::isalpha(static_cast<unsigned char>(words[i])) != 0; };
    for (std::size_t i = 2; i + 2 < words.size(); ++i)
      if (words[i] == ' ' && letter(i - 1) && letter(i - 2) && letter(i + 1) && letter(i + 2)) return true;
    return false;
  }

  const std::string& text_;
  std::size_t at_ = 0;
  std::string code_ = " ";
  std::vector<std::string> unsaid_;
};

}  // namespace

std::vector<std::string> unsaid(const Source& source) {
  std::vector<std::string> faults;
  for (const std::string& words : Walk(source.text).run())
    faults.push_back(source.path + ": \"" + words + "\" is not in say()");
  return faults;
}

}  // namespace foldyard::house
