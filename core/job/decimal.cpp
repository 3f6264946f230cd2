#include "job/decimal.h"

namespace foldyard {
namespace {

constexpr std::size_t kMostWholeDigits = 9;

bool all_digits(std::string_view text) {
  return text.find_first_not_of("0123456789") == std::string_view::npos;
}

std::int64_t number_from(std::string_view digits) {
  std::int64_t value = 0;
  for (char digit : digits) value = value * 10 + (digit - '0');
  return value;
}

}  // namespace

std::optional<std::int64_t> read_decimal(std::string_view text, int places) {
  const std::size_t point = text.find('.');
  const bool has_point = point != std::string_view::npos;
  const std::string_view whole = text.substr(0, point);
  const std::string_view rest = has_point ? text.substr(point + 1) : std::string_view();
  if (whole.empty() || whole.size() > kMostWholeDigits || (has_point && rest.empty())) return {};
  if (rest.size() > static_cast<std::size_t>(places)) return {};
  if (!all_digits(whole) || !all_digits(rest)) return {};
  std::string digits(whole);
  digits += rest;
  digits.append(static_cast<std::size_t>(places) - rest.size(), '0');
  return number_from(digits);
}

std::string write_decimal(std::int64_t value, int places) {
  std::string digits = std::to_string(value);
  const auto behind = static_cast<std::size_t>(places);
  if (digits.size() <= behind) digits = std::string(behind + 1 - digits.size(), '0') + digits;
  const std::string whole = digits.substr(0, digits.size() - behind);
  std::string rest = digits.substr(digits.size() - behind);
  rest.erase(rest.find_last_not_of('0') + 1);
  return rest.empty() ? whole : whole + '.' + rest;
}

}  // namespace foldyard
