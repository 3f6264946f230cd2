#include "job/first_fault.h"

#include <algorithm>

#include "job/decimal.h"

namespace foldyard {
namespace {

std::size_t characters_in(const std::string& utf8) {
  return static_cast<std::size_t>(
      std::count_if(utf8.begin(), utf8.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

bool has_control_character(const std::string& text) {
  return std::any_of(text.begin(), text.end(), [](char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7F;
  });
}

bool is_blank(const std::string& text) { return text.find_first_not_of(' ') == std::string::npos; }

}  // namespace

void FirstFault::keep(std::string where, std::string what, std::string next) {
  if (!first_) first_ = Problem{std::move(where), std::move(what), std::move(next)};
}

void FirstFault::length(const std::string& where, Length value, const LengthLimit& limit) {
  if (limit.least <= value && value <= limit.most) return;
  keep(where, text_of(value) + (value < limit.least ? " is too small" : " is too large"),
       "give " + std::string(limit.in_words));
}

void FirstFault::number(const std::string& where, std::int64_t value, NumberLimit limit,
                        int places) {
  if (limit.least <= value && value <= limit.most) return;
  const std::string text = value < 0 ? "a negative number" : write_decimal(value, places);
  keep(where, text + (value < limit.least ? " is too small" : " is too large"),
       "give " + write_decimal(limit.least, places) + " to " + write_decimal(limit.most, places));
}

void FirstFault::step(const std::string& where, Duration value) {
  number(where, value.ticks() / Duration::kTicksPerMs, limits::kStepMs, 3);
}

void FirstFault::count(const std::string& where, std::size_t value, std::size_t most) {
  if (value == 0) keep(where, "the list is empty", "give at least one");
  no_more(where, value, most);
}

void FirstFault::no_more(const std::string& where, std::size_t value, std::size_t most) {
  if (value <= most) return;
  keep(where, "the list has " + std::to_string(value) + " entries",
       "use at most " + std::to_string(most));
}

void FirstFault::name(const std::string& where, const std::string& text, bool needed) {
  if (needed && is_blank(text)) keep(where, "the name is empty", "give it one");
  if (characters_in(text) > limits::kLongestName) {
    keep(where, "the name has " + std::to_string(characters_in(text)) + " characters",
         "use at most " + std::to_string(limits::kLongestName));
  }
  if (has_control_character(text)) {
    keep(where, "the name holds a line break or another control character", "leave it out");
  }
}

std::string FirstFault::text_of(Length length) const {
  const std::string exact = write_exact(length, unit_);
  return exact.empty() ? write_length(length, unit_) : exact;
}

}  // namespace foldyard
