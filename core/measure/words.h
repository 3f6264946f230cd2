#pragma once

// Words: what core says to a person, in English, and from what it is made, so
// that a program can say it in another language. Core speaks English only and
// knows no other.
//
// - plain text stands as it is in every language: a name that a person gave, a
//   field such as `rolls[2].width`
// - a number ("12.5 cm") has a point as its decimal sign, which another
//   language may write as a comma
// - what say() makes has a pattern, an English clause with the places %1 to %9,
//   and a part for each place; parts are Words again. %n is the place of the
//   first part where that is a count: another language may have a form for one.
//
// A pattern is a literal inside say() or, where it is kept for later, to_say():
// resources/languages/refresh finds patterns by these two names, and
// tests/house wants each of them in every catalogue.
//
// Example: say("%1 is longer than a full roll of \"%2\"", Words::number("60 m"), name)
// is in English "60 m is longer than a full roll of "braid"".

#include <concepts>
#include <memory>
#include <ostream>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace foldyard {

class Words {
 public:
  Words() = default;
  Words(std::string text) : english_(std::move(text)) {}
  Words(std::string_view text) : english_(text) {}
  Words(const char* text) : english_(text) {}

  static Words number(std::string text);
  // pattern: of static life.
  static Words made(const char* pattern, std::vector<Words> parts);

  const std::string& english() const { return english_; }
  operator const std::string&() const { return english_; }
  bool empty() const { return english_.empty(); }
  std::size_t find(std::string_view text) const { return english_.find(text); }
  std::string substr(std::size_t from, std::size_t count = std::string::npos) const {
    return english_.substr(from, count);
  }

  bool is_number() const { return is_number_; }
  // Null for plain text and numbers.
  const char* pattern() const { return made_ ? made_->pattern : nullptr; }
  const std::vector<Words>& parts() const;

  // By their English.
  friend bool operator==(const Words& a, const Words& b) { return a.english_ == b.english_; }
  template <class Text>
    requires std::convertible_to<const Text&, std::string_view>
  friend bool operator==(const Words& words, const Text& text) {
    return words.english_ == std::string_view(text);
  }
  // What is joined is plain text: it has no pattern.
  friend std::string operator+(const Words& words, std::string_view text) {
    return std::string(words.english_).append(text);
  }
  friend std::string operator+(std::string_view text, const Words& words) {
    return std::string(text).append(words.english_);
  }
  friend std::ostream& operator<<(std::ostream& out, const Words& words) {
    return out << words.english_;
  }

 private:
  struct Made {
    const char* pattern;
    std::vector<Words> parts;
  };
  std::string english_;
  bool is_number_ = false;
  std::shared_ptr<const Made> made_;
};

namespace detail {

inline Words part(const Words& words) { return words; }
template <std::integral Whole>
Words part(Whole whole) {
  return Words::number(std::to_string(whole));
}

}  // namespace detail

// Marks a pattern that is said later.
constexpr const char* to_say(const char* pattern) { return pattern; }

// parts: Words, texts or whole numbers.
template <class... Parts>
Words say(const char* pattern, const Parts&... parts) {
  return Words::made(pattern, {detail::part(parts)...});
}

}  // namespace foldyard
