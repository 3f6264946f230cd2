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

void FirstFault::keep(std::string where, Words what, Words next) {
  if (!first_) first_ = Problem{std::move(where), std::move(what), std::move(next)};
}

void FirstFault::keep_range(const std::string& where, const Words& value, bool too_small, const Words& range) {
  keep(where, too_small ? say("%1 is too small", value) : say("%1 is too large", value), say("give %1", range));
}

void FirstFault::length(const std::string& where, Length value, const LengthLimit& limit) {
  if (limit.least <= value && value <= limit.most) return;
  keep_range(where, text_of(value), value < limit.least, say(limit.in_words.data()));
}

void FirstFault::number(const std::string& where, std::int64_t value, NumberLimit limit,
                        int places) {
  if (limit.least <= value && value <= limit.most) return;
  const auto text = [&](std::int64_t n) { return Words::number(write_decimal(n, places)); };
  keep_range(where, value < 0 ? say("a negative number") : text(value), value < limit.least,
             say("%1 to %2", text(limit.least), text(limit.most)));
}

void FirstFault::step(const std::string& where, Duration value) {
  number(where, value.ticks() / Duration::kTicksPerMs, limits::kStepMs, 3);
}

void FirstFault::count(const std::string& where, std::size_t value, std::size_t most) {
  if (value == 0) keep(where, say("the list is empty"), say("give at least one"));
  no_more(where, value, most);
}

void FirstFault::no_more(const std::string& where, std::size_t value, std::size_t most) {
  if (value <= most) return;
  keep(where, say("the list has %n entries", value), say("use at most %1", most));
}

void FirstFault::name(const std::string& where, const std::string& text, bool needed) {
  if (needed && is_blank(text)) keep(where, say("the name is empty"), say("give it one"));
  if (characters_in(text) > limits::kLongestName) {
    keep(where, say("the name has %n characters", characters_in(text)),
         say("use at most %1", limits::kLongestName));
  }
  if (has_control_character(text)) {
    keep(where, say("the name holds a line break or another control character"), say("leave it out"));
  }
}

Words FirstFault::text_of(Length length) const {
  const std::string exact = write_exact(length, unit_);
  return Words::number(exact.empty() ? write_length(length, unit_) : exact);
}

}  // namespace foldyard
