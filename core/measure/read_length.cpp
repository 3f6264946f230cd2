#include "measure/read_length.h"

#include <cstdint>
#include <string>

namespace foldyard {
namespace {

// whole + above / below its fraction line.
struct Number {
  std::int64_t whole = 0;
  std::int64_t above = 0;
  std::int64_t below = 1;
};

struct UnitSpelling {
  std::string_view text;
  std::int64_t units;
};

constexpr std::int64_t kFoot = 12 * Length::kUnitsPerInch;
constexpr UnitSpelling kUnits[] = {
    {"mm", Length::kUnitsPerMm},     {"cm", 10 * Length::kUnitsPerMm},
    {"m", 1000 * Length::kUnitsPerMm}, {"in", Length::kUnitsPerInch},
    {"inch", Length::kUnitsPerInch}, {"inches", Length::kUnitsPerInch},
    {"\"", Length::kUnitsPerInch},   {"″", Length::kUnitsPerInch},
    {"”", Length::kUnitsPerInch},    {"ft", kFoot},
    {"foot", kFoot},                 {"feet", kFoot},
    {"'", kFoot},                    {"′", kFoot},
    {"’", kFoot},                    {"yd", Length::kUnitsPerYard},
    {"yard", Length::kUnitsPerYard}, {"yards", Length::kUnitsPerYard},
};

struct FractionSign {
  std::string_view text;
  std::int64_t above;
  std::int64_t below;
};

constexpr FractionSign kFractions[] = {
    {"½", 1, 2}, {"¼", 1, 4}, {"¾", 3, 4}, {"⅓", 1, 3}, {"⅔", 2, 3},
    {"⅛", 1, 8}, {"⅜", 3, 8}, {"⅝", 5, 8}, {"⅞", 7, 8},
};

constexpr std::string_view kBlanks[] = {" ", "\t", "\u00a0", "\u2009", "\u202f"};
constexpr std::string_view kSigns[] = {"-", "+", "\u2212", "\u2013"};

// 9 999 999 mm is past kLongest and 320 000 units a metre hold no more than
// nine decimals (2⁹ divides 320 000), so neither cap refuses a good length.
constexpr std::size_t kMostDigits = 7;
constexpr std::size_t kMostDecimals = 9;

Problem problem(Words what, Words next = {}) {
  return {"", std::move(what), std::move(next)};
}

Problem too_long() { return problem(say("it is longer than 1 km"), say("give a shorter length")); }

Problem not_exact() {
  return problem(say("it is not a whole number of 1/320 mm"),
                 say("round it to 0.1 mm or to 1/64 in"));
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }
char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
bool is_letter(char c) { return lower(c) >= 'a' && lower(c) <= 'z'; }

bool take(std::string_view& rest, std::string_view token) {
  if (!rest.starts_with(token)) return false;
  rest.remove_prefix(token.size());
  return true;
}

template <std::size_t N>
bool take_any(std::string_view& rest, const std::string_view (&tokens)[N]) {
  for (std::string_view token : tokens) {
    if (take(rest, token)) return true;
  }
  return false;
}

void skip_blanks(std::string_view& rest) {
  while (take_any(rest, kBlanks)) {}
}

template <class Test>
std::string_view take_while(std::string_view& rest, Test test) {
  std::size_t n = 0;
  while (n < rest.size() && test(rest[n])) ++n;
  const std::string_view taken = rest.substr(0, n);
  rest.remove_prefix(n);
  return taken;
}

// REQUIRES few enough digits for 64 bits.
std::int64_t number_of(std::string_view digits) {
  std::int64_t n = 0;
  for (char c : digits) n = n * 10 + (c - '0');
  return n;
}

std::string_view without_leading_zeros(std::string_view digits) {
  while (digits.starts_with('0')) digits.remove_prefix(1);
  return digits;
}

Result<std::int64_t> whole_number(std::string_view digits) {
  digits = without_leading_zeros(digits);
  if (digits.size() > kMostDigits) return too_long();
  return number_of(digits);
}

bool takes_separator(std::string_view& rest) { return take(rest, ".") || take(rest, ","); }

// What follows a decimal point or comma.
Result<Number> read_decimals(std::string_view& rest, std::int64_t whole, bool comma) {
  std::string_view digits = take_while(rest, is_digit);
  if (digits.empty()) return problem(say("a digit is missing after the decimal point"));
  if (takes_separator(rest)) {
    return problem(say("it has more than one point or comma in a number"),
                   say("write one point for the decimals and no thousands marks"));
  }
  if (comma && digits.size() == 3) {
    return problem(say("three digits after a comma may be thousands or decimals"),
                   say("write a point for decimals, or the number without a comma"));
  }
  while (digits.ends_with('0')) digits.remove_suffix(1);
  if (digits.size() > kMostDecimals) return not_exact();
  Number number{whole, number_of(digits), 1};
  for (std::size_t i = 0; i < digits.size(); ++i) number.below *= 10;
  return number;
}

bool take_fraction_sign(std::string_view& rest, Number& number) {
  for (const FractionSign& sign : kFractions) {
    if (!take(rest, sign.text)) continue;
    number.above = sign.above;
    number.below = sign.below;
    return true;
  }
  return false;
}

// The rest of a fraction after its upper number.
Result<Number> read_fraction(std::string_view& rest, std::int64_t whole, std::string_view upper) {
  const Result<std::int64_t> above = whole_number(upper);
  const std::string_view lower_digits = take_while(rest, is_digit);
  if (lower_digits.empty()) return problem(say("a number is missing under the fraction line"));
  const Result<std::int64_t> below = whole_number(lower_digits);
  if (!above || !below) return not_exact();
  if (*below == 0) return problem(say("a fraction cannot have 0 below its line"));
  if (whole > 0 && *above >= *below) {
    return problem(say("a fraction after a whole number must be less than one"));
  }
  return Number{whole, *above, *below};
}

// A fraction that may follow a whole number: "17 3/4", "17¾".
Result<Number> read_after_whole(std::string_view& rest, std::int64_t whole) {
  std::string_view ahead = rest;
  skip_blanks(ahead);
  Number number{whole, 0, 1};
  if (take_fraction_sign(ahead, number)) return rest = ahead, number;
  const std::string_view upper = take_while(ahead, is_digit);
  if (upper.empty() || !take(ahead, "/")) return number;
  rest = ahead;
  return read_fraction(rest, whole, upper);
}

Result<Number> read_number(std::string_view& rest) {
  if (take_any(rest, kSigns)) {
    return problem(say("it has a sign"), say("give a length of zero or more, without a sign"));
  }
  Number number;
  if (take_fraction_sign(rest, number)) return number;
  const std::string_view digits = take_while(rest, is_digit);
  const bool comma = rest.starts_with(',');
  if (digits.empty() && !rest.starts_with('.')) {
    return problem(say("it does not start with a number"), say("write it as 45 cm or 17 3/4 in"));
  }
  if (take(rest, "/")) return read_fraction(rest, 0, digits);
  const Result<std::int64_t> whole = whole_number(digits);
  if (!whole) return whole.problem();
  return takes_separator(rest) ? read_decimals(rest, *whole, comma)
                               : read_after_whole(rest, *whole);
}

bool is_spelled(std::string_view token, std::string_view unit) {
  if (token.size() != unit.size()) return false;
  for (std::size_t i = 0; i < token.size(); ++i) {
    if (lower(token[i]) != unit[i]) return false;
  }
  return true;
}

Problem no_such_unit(std::string_view token) {
  const bool is_short = token.size() <= 12;
  return problem(is_short ? say("there is no such unit as \"%1\"", token) : say("there is no such unit"),
                 say("use mm, cm, m, in, ft or yd"));
}

Result<std::int64_t> read_unit(std::string_view& rest) {
  const std::string_view word = take_while(rest, is_letter);
  for (const UnitSpelling& unit : kUnits) {
    if (word.empty() ? take(rest, unit.text) : is_spelled(word, unit.text)) return unit.units;
  }
  if (!word.empty()) return no_such_unit(word);
  if (!rest.empty() && is_digit(rest[0])) {
    return problem(say("it has two numbers with no unit between them"), say("give one number and its unit"));
  }
  return problem(say("a number has no unit"), say("write mm, cm, m, in, ft or yd after it"));
}

Result<Length> length_of(const Number& number, std::int64_t unit) {
  const std::int64_t above = number.above * unit;
  if (above % number.below != 0) return not_exact();
  const Length length = Length::units(number.whole * unit + above / number.below);
  if (length > kLongest) return too_long();
  return length;
}

struct Measure {
  Length length;
  std::int64_t unit = 0;
};

// One number with its unit, and the blanks after it.
Result<Measure> read_measure(std::string_view& rest) {
  const Result<Number> number = read_number(rest);
  if (!number) return number.problem();
  skip_blanks(rest);
  const Result<std::int64_t> unit = read_unit(rest);
  if (!unit) return unit.problem();
  skip_blanks(rest);
  const Result<Length> length = length_of(*number, *unit);
  if (!length) return length.problem();
  return Measure{*length, *unit};
}

// "2 ft 6 in", "1 yd 18 in": a whole number of the larger unit, then inches
// that make less than one more of it.
Result<Length> add_inches(const Measure& first, const Measure& inches) {
  const bool is_pair = (first.unit == kFoot || first.unit == Length::kUnitsPerYard) &&
                       inches.unit == Length::kUnitsPerInch;
  if (!is_pair) {
    return problem(say("only feet or yards and then inches make one length of two"),
                   say("give one number and its unit"));
  }
  if (first.length.units() % first.unit != 0) {
    return problem(say("feet or yards with inches after them must be whole"));
  }
  if (inches.length.units() >= first.unit) {
    return problem(say("the inches make another whole foot or yard"), say("carry them over"));
  }
  if (first.length + inches.length > kLongest) return too_long();
  return first.length + inches.length;
}

Result<Length> read_measures(std::string_view rest) {
  skip_blanks(rest);
  if (rest.empty()) return problem(say("it is empty"), say("write it as 45 cm or 17 3/4 in"));
  const Result<Measure> first = read_measure(rest);
  if (!first) return first.problem();
  if (rest.empty()) return first->length;
  const Result<Measure> second = read_measure(rest);
  if (!second) return second.problem();
  if (!rest.empty()) return problem(say("something follows the length"), say("give the length alone"));
  return add_inches(*first, *second);
}

// The text itself, unless it is too long or not fit to be shown.
Words quoted(std::string_view text) {
  if (text.size() > 40) return say("this text");
  for (char c : text) {
    if (static_cast<unsigned char>(c) < ' ') return say("this text");
  }
  return std::string("\"").append(text).append("\"");
}

}  // namespace

Result<Length> read_length(std::string_view text) {
  Result<Length> length = read_measures(text);
  if (length) return length;
  Problem reason = length.problem();
  reason.what = say("%1 is not a length: %2", quoted(text), reason.what);
  return reason;
}

}  // namespace foldyard
