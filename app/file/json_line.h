#pragma once

// JsonLine: one JSON object on one line, its fields in the order they are
// added: {"name": "Oak", "width": "140 cm"}. Lengths are exact, in the job's
// unit where they can be. quoted: a text as JSON has it.

#include <string>
#include <vector>

#include "measure/duration.h"
#include "measure/worth.h"
#include "measure/write_length.h"

namespace foldyard {

std::string quoted(const std::string& text);

// A list, each entry on a line of its own; write(entry, unit) gives its text.
template <class List, class Writer>
std::string list_text(const List& list, Unit unit, Writer write) {
  std::string out;
  for (const auto& entry : list) {
    out += (out.empty() ? "[\n    " : ",\n    ") + write(entry, unit);
  }
  return out.empty() ? "[]" : out + "\n  ]";
}

class JsonLine {
 public:
  explicit JsonLine(Unit unit) : unit_(unit) {}

  JsonLine& raw(const std::string& key, const std::string& value);
  JsonLine& text(const std::string& key, const std::string& value);
  JsonLine& texts(const std::string& key, const std::vector<std::string>& values);
  JsonLine& lengths(const std::string& key, const std::vector<Length>& values);
  JsonLine& length(const std::string& key, Length value);
  JsonLine& flag(const std::string& key, bool value);
  JsonLine& whole(const std::string& key, std::int64_t value);
  // value: in the last of `places` decimals.
  JsonLine& decimal(const std::string& key, std::int64_t value, int places);
  JsonLine& worth(const std::string& key, Worth value);
  JsonLine& seconds(const std::string& key, Duration value);

  bool is_empty() const { return text_.empty(); }
  std::string object() const { return '{' + text_ + '}'; }

 private:
  Unit unit_;
  std::string text_;
};

}  // namespace foldyard
