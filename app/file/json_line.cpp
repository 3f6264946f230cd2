#include "file/json_line.h"

#include "file/exact_length.h"
#include "job/decimal.h"

namespace foldyard {

std::string quoted(const std::string& text) {
  static const char* const kHex = "0123456789abcdef";
  std::string out = "\"";
  for (char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') out += '\\';
    if (byte < 0x20) (out += "\\u00") += {kHex[byte / 16], kHex[byte % 16]};
    else out += c;
  }
  return out + '"';
}

JsonLine& JsonLine::raw(const std::string& key, const std::string& value) {
  text_ += (text_.empty() ? "\"" : ", \"");
  text_ += key;
  text_ += "\": ";
  text_ += value;
  return *this;
}

JsonLine& JsonLine::text(const std::string& key, const std::string& value) {
  return raw(key, quoted(value));
}

JsonLine& JsonLine::texts(const std::string& key, const std::vector<std::string>& values) {
  std::string list;
  for (const std::string& value : values) list += (list.empty() ? "" : ", ") + quoted(value);
  return raw(key, '[' + list + ']');
}

JsonLine& JsonLine::lengths(const std::string& key, const std::vector<Length>& values) {
  std::vector<std::string> exact;
  for (const Length value : values) exact.push_back(exact_length(value, unit_));
  return texts(key, exact);
}

JsonLine& JsonLine::length(const std::string& key, Length value) {
  return text(key, exact_length(value, unit_));
}

JsonLine& JsonLine::flag(const std::string& key, bool value) {
  return raw(key, value ? "true" : "false");
}

JsonLine& JsonLine::whole(const std::string& key, std::int64_t value) {
  return raw(key, std::to_string(value));
}

JsonLine& JsonLine::decimal(const std::string& key, std::int64_t value, int places) {
  return raw(key, write_decimal(value, places));
}

JsonLine& JsonLine::worth(const std::string& key, Worth value) {
  return text(key, write_decimal(value.parts(), 4));
}

JsonLine& JsonLine::seconds(const std::string& key, Duration value) {
  return decimal(key, value.ticks() / Duration::kTicksPerMs, 3);
}

}  // namespace foldyard
